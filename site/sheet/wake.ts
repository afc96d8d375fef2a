import { LATE_MS, pageAnswers, pageFailed } from '../opening/answering.ts';
import { didNotCome } from '../opening/load-failure.ts';
import { watchLengths } from '../opening/preferences.ts';
import { onSigns } from '../opening/signs.ts';
import { keepDeeds } from '../opening/while-coming.ts';
import { hasWork, ifCopied } from './has-work.ts';
import { holdHeight } from './held-height.ts';

/** When another tab, or the way back to this one, may have brought something to show. */
const CHANGES = ['storage', 'hashchange', 'pageshow', 'focus'] as const;

/**
 * Opens the list of files while the script is on its way: a browser does so only at the press itself. The file
 * that is chosen waits in its box.
 */
function pickFile(place: HTMLElement, signal: AbortSignal): () => void {
  const picker = place.querySelector<HTMLInputElement>('.picker')!;
  place.addEventListener(
    'click',
    (event) => {
      if (!(event.target instanceof Element) || !event.target.closest('[data-picks]')) return;
      event.stopImmediatePropagation();
      picker.click();
    },
    { capture: true, signal },
  );
  return () => {
    if (picker.files!.length > 0) picker.dispatchEvent(new Event('change', { bubbles: true }));
  };
}

/**
 * Fetches the sheet and takes it into use: at once where it has something of the reader’s to show, else at
 * the first sign of life. What is pressed meanwhile is kept and then done.
 */
function wakeWhenNeeded(place: HTMLElement): void {
  const [begun, come] = [new AbortController(), new AbortController()];
  const { signal } = begun;
  const takeFile = pickFile(place, come.signal);
  const doDeeds = keepDeeds(place, come.signal);
  const begin = (): void => {
    if (signal.aborted) return;
    begun.abort();
    holdHeight(place);
    place.setAttribute('aria-busy', 'true');
    const late = setTimeout(pageFailed, LATE_MS);
    import('./mount.ts')
      .then(async ({ mount }) => {
        // What the reader does next is let in between reading the scripts and drawing.
        await new Promise((go) => {
          setTimeout(go);
        });
        come.abort();
        mount(place);
        takeFile();
        await doDeeds();
      })
      .catch((error: unknown) => {
        place.style.minHeight = '';
        if (didNotCome(error)) pageFailed();
        else reportError(error);
      })
      .finally(() => {
        clearTimeout(late);
        place.removeAttribute('aria-busy');
      });
  };
  const ifWork = (): void => {
    if (hasWork()) begin();
  };
  onSigns(begin, signal);
  place.addEventListener('focusin', begin, { signal });
  for (const type of CHANGES) addEventListener(type, ifWork, { signal });
  signal.addEventListener('abort', watchLengths(ifWork));
  ifWork();
  void ifCopied(begin);
  // Nothing stands in its way until it is asked for.
  if (!signal.aborted) pageAnswers();
}

wakeWhenNeeded(document.querySelector<HTMLElement>('[data-sheet]')!);
