import { MathsError } from '../numeric/errors.ts';
import { inverseNormal, leverage, type Rows } from '../numeric/linear.ts';
import { asRead, netOf, type Pattern } from './hole-distances.ts';
import { column, slopesOf } from './hole-frame.ts';
import type { Pair } from './hole-network.ts';
import { fitHoles, type Fitted } from './hole-pattern.ts';
import { apart } from './place.ts';

/** A distance not yet measured that would hold the least held hole best. */
export interface Next {
  readonly from: number;
  readonly to: number;
  /** The hole that is held least, by its number. */
  readonly hole: number;
  /** How far the error of that hole’s place is that of one distance: now, and with one more. */
  readonly now: number;
  readonly then: number;
}

/**
 * Which distance to measure next: of those not yet measured, the one that takes most off the error
 * of the hole that is held least. Nothing where all are measured.
 *
 * Errors as `fitHoles`.
 */
export function nextDistance(
  pattern: Pattern,
  { places }: Pick<Fitted, 'places'>,
): Next | undefined {
  const pairs = netOf(pattern).pairs;
  const spread = inverseNormal(slopesOf(places, pairs))!;
  const varianceOf = (hole: number, of: Rows): number => {
    if (hole === 0) return 0;
    if (hole === 1) return of[0]![0]!;
    return of[column(hole)]![column(hole)]! + of[column(hole) + 1]![column(hole) + 1]!;
  };
  const least = places
    .map((_, hole) => hole)
    .reduce((a, b) => (varianceOf(b, spread) > varianceOf(a, spread) * (1 + 1e-9) ? b : a));
  const open = unmeasured(places.length, pairs);
  const after = open.map((pair) => {
    const [row] = slopesOf(places, [pair]);
    const moved = spread.map((line) => line.reduce((sum, entry, j) => sum + entry * row![j]!, 0));
    const whole = 1 + leverage(row!, spread);
    const less = spread.map((line, i) =>
      line.map((entry, j) => entry - (moved[i]! * moved[j]!) / whole),
    );
    return { pair, then: varianceOf(least, less) };
  });
  if (after.length === 0) return undefined;
  const best = after.reduce((a, b) => (b.then < a.then * (1 - 1e-9) ? b : a));
  return {
    from: best.pair[0] + 1,
    to: best.pair[1] + 1,
    hole: least + 1,
    now: Math.sqrt(varianceOf(least, spread)),
    then: Math.sqrt(best.then),
  };
}

/** Pairs that nobody has measured. */
const unmeasured = (holes: number, pairs: readonly Pair[]): Pair[] =>
  Array.from({ length: holes }, (_, b) => Array.from({ length: b }, (__, a): Pair => [a, b]))
    .flat()
    .filter(([a, b]) => !pairs.some((pair) => pair.includes(a) && pair.includes(b)));

/**
 * What the other distances say of one of them, as it would be read, mm, and their own misfits; nothing
 * where they no longer place the holes without it.
 *
 * @param index Which distance, from 0.
 */
export function withoutDistance(
  pattern: Pattern,
  index: number,
): (Pick<Fitted, 'rms' | 'misfits'> & { readonly read: number }) | undefined {
  const distances = pattern.distances.filter((_, k) => k !== index);
  try {
    const { places, rms, misfits } = fitHoles({ ...pattern, distances });
    const left = pattern.distances[index]!;
    const centres = apart(places[left.from - 1]!, places[left.to - 1]!);
    return { read: asRead(pattern, left, centres), rms, misfits };
  } catch (problem) {
    if (problem instanceof MathsError) return undefined;
    throw problem;
  }
}
