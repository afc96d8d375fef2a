import type { UnitName } from '../text/units.ts';

/** Longest text that is taken for a sum: more than any row of readings needs. */
const LONGEST_SUM = 200;

/** Made of figures, units, signs and brackets alone. */
const LETTERS = /^[\d\s.,+\-−–*×·/⁄÷()°'’′"″%²³\p{L}µμ]+$/u;
/** A sign between two terms, or a bracket at the start. */
const SIGN = /^\s*\(|[\d.)\p{L}°'’′"″%²³]\s*[-+−–*×·/÷]\s*[-+−]?\s*[\d.,(]/u;

/** What a sum comes to in the home unit, or why it comes to nothing. */
export type Total =
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'bad'; readonly sentence: string };

/**
 * Works out a sum whose bare figures are in the home unit.
 *
 * @param like Says what may be typed instead of a figure that cannot be read.
 */
export type SumReader = (text: string, home: UnitName, like?: () => string) => Total;

/** Whether sums can be read: on its way, not to be had, or the reader itself. Not offered where absent. */
export type Sums = 'coming' | 'failed' | SumReader;

/** Whether a text that is no figure looks like a sum: `2.31+0.04`, `(2.3+2.4)/2`, `2.2 mm + 5 thou`. */
export const looksLikeSum = (text: string): boolean =>
  text.length <= LONGEST_SUM && LETTERS.test(text) && SIGN.test(text);

/** A sum within brackets that bear one unit for all of its bare figures: `(90+92)thou`. */
const WITH_UNIT = /^\((.+)\)\s*([\p{L}µμ°"″ ]+)$/u;

/** The sum within such brackets, and the unit; nothing where the text is none. */
export function sumWithUnit(
  text: string,
): { readonly sum: string; readonly unit: string } | undefined {
  const [, sum = '', unit = ''] = WITH_UNIT.exec(text.trim()) ?? [];
  let depth = 0;
  for (const letter of sum) {
    if (letter === '(') depth += 1;
    else if (letter === ')') depth -= 1;
    // The first bracket is shut before the last.
    if (depth < 0) return undefined;
  }
  return looksLikeSum(sum) ? { sum, unit } : undefined;
}
