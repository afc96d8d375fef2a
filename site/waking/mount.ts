import type { Texts } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { keepWork, keptWork } from '../opening/kept-work.ts';
import { LATE_MS, pageAnswers, pageFailed } from '../opening/answering.ts';
import { didNotCome } from '../opening/load-failure.ts';
import { rememberedLengths, rememberLengths, watchLengths } from '../opening/preferences.ts';
import { isAtWork } from '../opening/typed-before.ts';
import { selectOnTap } from './select-on-tap.ts';
import { whenStirred } from './when-stirred.ts';
import { keepDeeds, whenSetAbout } from '../opening/while-coming.ts';

const loaders = import.meta.glob<{ default: AnyCalculator }>(
  '../../calculators/*/*/calculator.tsx',
);

const loaderOf = (slug: string) =>
  Object.entries(loaders).find(([path]) => path.endsWith(`/${slug}/calculator.tsx`))?.[1];

// Each in a function of its own: of two imports in one expression the bundler has both fetched. Said at
// once what is taken from it, it needs no object of all that the file gives.
const ofPage = () => import('./wake.ts').then((wake) => wake.ready);
const ofFigure = () => import('./wake-figure.ts').then((wake) => wake.ready);

/**
 * Fetches what a calculator on the page needs to answer.
 *
 * @param stirred Whether the reader has given a sign of life that it is fetched for.
 */
async function mount(place: HTMLElement, kept: Texts | undefined, stirred: boolean): Promise<void> {
  const { calculator: slug, owns } = place.dataset;
  const load = loaderOf(slug!);
  if (!load) throw new Error(`No calculator named ${slug}`);
  const [ready, { default: calculator }] = await Promise.all([
    owns === 'true' ? ofPage() : ofFigure(),
    load(),
  ]);
  ready(place, calculator, kept, stirred);
}

const NOT_FETCHED =
  'This calculator could not be fetched: its figures stand still. Check the connection, then: ';
const AT_FAULT =
  'This calculator has a fault and does not answer: its figures stand still. The fault is the site’s, not yours.';

/** Loads the page again, as guard.ts has it. */
function againButton(): HTMLButtonElement {
  const again = document.createElement('button');
  again.type = 'button';
  again.dataset.reload = '';
  again.textContent = 'Try again';
  return again;
}

/** Says under a calculator that does not answer that its figures stand still, and why. */
function sayAsleep(place: HTMLElement, error: unknown): void {
  const missing = didNotCome(error);
  place.dataset.failed = '';
  if (!missing) reportError(error);
  if (place.dataset.owns === 'true' && missing) {
    pageFailed();
    return;
  }
  const note = document.createElement('p');
  note.className = 'field-problem';
  note.setAttribute('role', 'alert');
  note.append(...(missing ? [NOT_FETCHED, againButton()] : [AT_FAULT]));
  place.after(note);
}

/** Calls back when a place is within a screen of being seen. */
function whenNear(place: HTMLElement, near: () => void): void {
  const observer = new IntersectionObserver(
    (entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      observer.disconnect();
      near();
    },
    { rootMargin: '100% 0px' },
  );
  observer.observe(place);
}

/** Calls back when a figure of an article is needed. */
function whenFigureNeeded(place: HTMLElement, begin: () => void, signal: AbortSignal): void {
  whenSetAbout(place, begin, signal);
  // On a slow connection a figure is typed before anything listens; by pageshow, a browser has put one back.
  const ifAtWork = (): void => {
    if (isAtWork(place)) begin();
  };
  ifAtWork();
  addEventListener('pageshow', ifAtWork, { signal });
  // What the server rendered is in millimetres: for a reader in inches it comes by itself.
  const asChosen = (lengths: string): void => {
    if (lengths === 'in') whenNear(place, begin);
  };
  asChosen(rememberedLengths());
  signal.addEventListener('abort', watchLengths(asChosen));
}

/** Fetches a calculator once it is needed, and has it do what was done to it meanwhile. */
function onDemand(place: HTMLElement, fetched: (stirred: boolean) => Promise<boolean>): void {
  const ofPage = place.dataset.owns === 'true';
  const [begun, come] = [new AbortController(), new AbortController()];
  const doDeeds = keepDeeds(place, come.signal);
  // What the form cannot keep: lengths are the reader's, not the calculation's.
  place.addEventListener(
    'change',
    ({ target }) => {
      const { name, value } = target as HTMLInputElement;
      if (name === `${place.dataset.prefix ?? ''}lengths`)
        rememberLengths(value === 'in' ? 'in' : 'mm');
    },
    { signal: come.signal },
  );
  const begin = (stirred: boolean): void => {
    if (begun.signal.aborted) return;
    begun.abort();
    place.setAttribute('aria-busy', 'true');
    const late = ofPage ? setTimeout(pageFailed, LATE_MS) : undefined;
    void fetched(stirred).then((answers) => {
      clearTimeout(late);
      come.abort();
      place.removeAttribute('aria-busy');
      if (answers) void doDeeds();
    });
  };
  if (!ofPage) {
    whenFigureNeeded(place, () => begin(false), begun.signal);
    return;
  }
  whenStirred(place, begin, begun.signal);
  // Nothing stands in its way until it is asked for.
  if (!begun.signal.aborted) pageAnswers();
}

selectOnTap();
const kept = keptWork();
// Whichever button loads the page again, before guard.ts does: what came from the load before and has
// gone into no calculator yet is kept once more.
document.addEventListener('click', ({ target }) => {
  if (target instanceof Element && target.closest('[data-reload]')) keepWork(kept);
});
document.querySelectorAll<HTMLElement>('[data-calculator]').forEach((place, index) => {
  const fetched = (stirred: boolean): Promise<boolean> =>
    mount(place, kept[index], stirred).then(
      () => true,
      (error: unknown) => {
        sayAsleep(place, error);
        return false;
      },
    );
  // One with work in it, at once.
  if (kept[index]) void fetched(false);
  else onDemand(place, fetched);
});
