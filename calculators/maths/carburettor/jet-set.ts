import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';

/** Some of several jets that are to serve alike. */
export interface JetSet {
  /** Their places in the list, from 0, rising. */
  readonly chosen: readonly number[];
  /** Widest less narrowest area, per cent of their mean area. */
  readonly spread: number;
}

export const mean = (figures: readonly number[]): number =>
  figures.reduce((sum, figure) => sum + figure, 0) / figures.length;

/** Widest less narrowest, per cent of the mean, of areas above 0. */
export const spreadOf = (areas: readonly number[]): number =>
  (100 * (Math.max(...areas) - Math.min(...areas))) / mean(areas);

/** A spread in steps of a thousand-millionth of a per cent, so that dust of the sums parts no equals. */
const inSteps = (spread: number): number => Math.round(spread * 1e9);

/**
 * The sets of `wanted` jets that lie next to each other by area, the least spread first; of those
 * that spread alike, as jets taken singly all do, the one whose mean lies nearest to `near`, and else
 * the one that comes first in the list. No other set of so many spreads less than the best of these:
 * any other leaves out a jet between its widest and its narrowest, and with that one for its
 * narrowest it spreads less about a larger mean.
 *
 * @param areas Of each jet, any unit, above 0.
 * @param wanted A whole number from 1 to as many as there are.
 * @param near The area asked for, in the same unit; none where none is.
 * @throws MathsError `too-few`; `not-positive`.
 */
export function neighbouringSets(
  areas: readonly number[],
  wanted: number,
  near?: number,
): readonly JetSet[] {
  if (!Number.isInteger(wanted) || wanted < 1 || wanted > areas.length) {
    throw new MathsError(
      'too-few',
      ['wanted', 'jets'],
      `There must be as many jets as carburettors or more: ${sayNumber(wanted)} cannot be chosen out of ${String(areas.length)}. Give more jets, or allow more of them.`,
    );
  }
  if (!areas.every((area) => area > 0 && Number.isFinite(area))) {
    throw new MathsError(
      'not-positive',
      ['areas'],
      'Every jet has a hole, so that its area is above 0. Measure the one that has none again.',
    );
  }
  const order = areas.map((_, index) => index).sort((a, b) => areas[a]! - areas[b]! || a - b);
  const sets = order.slice(0, order.length - wanted + 1).map((_, start): JetSet => {
    const places = order.slice(start, start + wanted);
    return {
      chosen: places.toSorted((a, b) => a - b),
      spread: spreadOf(places.map((place) => areas[place]!)),
    };
  });
  const away = ({ chosen }: JetSet): number =>
    near === undefined
      ? 0
      : inSteps(Math.abs(areaAgainst(mean(chosen.map((place) => areas[place]!)), near)));
  return sets.sort((a, b) => {
    const more = inSteps(a.spread) - inSteps(b.spread) || away(a) - away(b);
    if (more !== 0) return more;
    const differing = a.chosen.findIndex((place, i) => place !== b.chosen[i]);
    return differing < 0 ? 0 : a.chosen[differing]! - b.chosen[differing]!;
  });
}

/** By how much an area differs from a reference (above 0), per cent, + for larger. */
export const areaAgainst = (area: number, reference: number): number =>
  100 * (area / reference - 1);
