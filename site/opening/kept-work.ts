import type { Texts } from '../../calculators/frame/evaluate.ts';
import { typedBefore } from './typed-before.ts';

/** Where it is kept. The page's guard keeps it there too, before any script has come. */
export const KEY = 'gudgeon.typed';

interface Work {
  readonly page: string;
  /** One for each calculator on the page, in order. */
  readonly texts: readonly Texts[];
}

/**
 * Keeps what is typed in the calculators of this page over one reload in the same tab.
 *
 * @param earlier What was kept before and has come into no calculator since.
 */
export function keepWork(earlier: readonly Texts[] = []): void {
  const places = [...document.querySelectorAll<HTMLElement>('[data-calculator]')];
  const texts = places.map((place, i) => ({
    ...earlier[i],
    ...typedBefore(place, place.dataset.prefix ?? ''),
  }));
  try {
    sessionStorage.setItem(KEY, JSON.stringify({ page: location.pathname, texts } satisfies Work));
  } catch {
    // Storage is full or forbidden: the address still holds the page's own calculation.
  }
}

/** What was kept for the calculators of this page, once. */
export function keptWork(): readonly Texts[] {
  try {
    const kept = sessionStorage.getItem(KEY);
    if (kept === null) return [];
    sessionStorage.removeItem(KEY);
    const { page, texts } = JSON.parse(kept) as Work;
    return page === location.pathname && Array.isArray(texts) ? texts : [];
  } catch {
    return [];
  }
}
