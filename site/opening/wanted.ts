import type { Texts } from '../../calculators/frame/evaluate.ts';

/** A case of the text that a figure is asked to show, as `data-wanted` of its place holds it. */
export interface Wanted {
  readonly texts: Texts;
  /** The words of the text that ask for it. */
  readonly words: string;
}

/** The event that tells a figure in use that it is asked for a case. */
export const WANTED = 'wanted';

/** The case that a figure is asked for, once. */
export function takeWanted({ dataset }: HTMLElement): Wanted | undefined {
  const { wanted } = dataset;
  delete dataset.wanted;
  return wanted === undefined ? undefined : (JSON.parse(wanted) as Wanted);
}
