import type { Texts } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { keptWork } from '../offline/kept-work.ts';

const loaders = import.meta.glob<{ default: AnyCalculator }>('../../calculators/*/calculator.tsx');

/** Fetches what a calculator on the page needs to answer. */
async function mount(place: HTMLElement, kept: Texts | undefined): Promise<void> {
  const { calculator: slug } = place.dataset;
  const load = loaders[`../../calculators/${slug}/calculator.tsx`];
  if (!load) throw new Error(`No calculator named ${slug}`);
  const [ready, { default: calculator }] = await Promise.all([
    // Said at once what is taken from it, the bundler needs no object of all that the file gives.
    import('./wake.ts').then((wake) => wake.ready),
    load(),
  ]);
  ready(place, calculator, kept);
}

/** Says under a calculator that could not be fetched that its figures stand still. */
function sayAsleep(place: HTMLElement): void {
  const note = document.createElement('p');
  note.className = 'field-problem';
  note.setAttribute('role', 'alert');
  note.textContent =
    'This calculator could not be fetched: its figures stand still. Check the connection and try again.';
  place.after(note);
}

/** Calls back once, when a place is within a screen of being seen, or is entered. */
function whenNear(place: HTMLElement, near: () => void): void {
  const once = new AbortController();
  const come = (): void => {
    observer.disconnect();
    once.abort();
    near();
  };
  const observer = new IntersectionObserver(
    (entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) come();
    },
    { rootMargin: '100% 0px' },
  );
  observer.observe(place);
  place.addEventListener('focusin', come, { signal: once.signal });
}

const kept = keptWork();
document.querySelectorAll<HTMLElement>('[data-calculator]').forEach((place, index) => {
  const start = (): void => void mount(place, kept[index]).catch(() => sayAsleep(place));
  // The page's own calculator, and one with work in it, at once; others when the reader comes near.
  if (place.dataset.owns === 'true' || kept[index]) start();
  else whenNear(place, start);
});
