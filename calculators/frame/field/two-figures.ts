import type { UnitName } from '../text/units.ts';
import { asTyped, quote, withoutMarks } from './parse.ts';

const DECIMALS = /^(\d*[.,]\d+)\s*\/\s*(\d*[.,]\d+)$/u;
const RANGE = /^(\d*[.,]?\d+)\s*(?:[-−–—]|to)\s*(\d*[.,]?\d+)\s*([\p{L}µμ°"″%‰]*)$/iu;
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

interface Range {
  readonly ends: readonly [string, string];
  /** Half-way between them, with the unit as typed. */
  readonly middle: string;
  /** How far that is from either, in that unit. */
  readonly half: string;
}

/** Two figures with a stroke or a word between them, and the one unit of both behind; nothing of any other text. */
export function rangeIn(kept: string): Range | undefined {
  const [, first, second, unit = ''] = RANGE.exec(asTyped(kept).trim()) ?? [];
  if (first === undefined || second === undefined) return undefined;
  const [low, high] = [first, second].map((end) => Number(end.replace(',', '.')));
  const inUnit = (value: number): string =>
    `${String(Number(value.toPrecision(6)))}${unit === '' ? '' : ` ${unit}`}`;
  return {
    ends: [first, second],
    middle: inUnit((low! + high!) / 2),
    half: inUnit(Math.abs(high! - low!) / 2),
  };
}

/** Whether a text, typed by hand, is a figure that the field takes. */
type Takes = (typed: string) => boolean;

const chosen = ({ middle }: Range, takes: Takes): string =>
  `of a range, type the one figure that you set${takes(middle) ? `; for its middle type “${middle}”` : ''}.`;

/** What is said besides of a refused difference that may have been a range, `0.5-0.6`; nothing of any other text. */
export function asRange(kept: string, takes: Takes): string {
  const range = rangeIn(kept);
  return range === undefined
    ? ''
    : ` It is read as ${range.ends.join(' less ')}: ${chosen(range, takes)}`;
}

/** What is said of a text that is no figure but a range, `14 to 16 thou`; nothing of any other text. */
export function rangeTyped(kept: string, takes: Takes): string | undefined {
  const range = rangeIn(kept);
  return (
    range && `${quote(kept)} is two figures, and this field takes one: ${chosen(range, takes)}`
  );
}
