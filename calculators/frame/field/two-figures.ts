import type { UnitName } from '../text/units.ts';
import { withoutMarks } from './parse.ts';

const DECIMALS = /^(\d*[.,]\d+)\s*\/\s*(\d*[.,]\d+)$/u;
const RANGE = /^(\d*[.,]?\d+)\s*[-−–—]\s*(\d*[.,]?\d+)$/u;
const SHARE = /^(\d+)\s*\/\s*(\d+)$/u;

/**
 * What speaks against a quotient where a stroke may part two readings, `0.38/0.40`, or stand for a share of
 * the whole, `1/2` in a box of per cents; nothing of any other text.
 *
 * @param takesSeveral Whether the field takes several readings of its figure.
 */
export function slashed(typed: string, unit: UnitName, takesSeveral: boolean): string | undefined {
  const text = withoutMarks(typed).trim();
  const [, first, second] = DECIMALS.exec(text) ?? [];
  if (first !== undefined && second !== undefined) {
    const remedy = takesSeveral ? `type “${first}; ${second}”` : 'type the one that counts';
    return `Read as ${first} divided by ${second}. If they are two readings, ${remedy}.`;
  }
  const [, part, whole] = SHARE.exec(text) ?? [];
  if (unit !== '%' || part === undefined || Number(part) >= Number(whole)) return undefined;
  const share = String(Number(((100 * Number(part)) / Number(whole)).toPrecision(3)));
  return `Read as ${text} of one per cent. For ${text} of the whole type “${share}%”.`;
}

/** What is said besides of a refused difference that may have been a range, `0.5-0.6`; nothing of any other text. */
export function asRange(typed: string): string {
  const [, first, second] = RANGE.exec(withoutMarks(typed).trim()) ?? [];
  return first === undefined || second === undefined
    ? ''
    : ` It is read as ${first} less ${second}: of a range, type the one figure that you set.`;
}
