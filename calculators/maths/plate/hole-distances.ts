import type { Pair } from './hole-network.ts';
import { apart, type Place } from './place.ts';

/** Most holes of a pattern, and most distances between them: with more the fit keeps a phone waiting. */
export const MOST_HOLES = 12;
export const MOST_DISTANCES = 40;

export type Span = 'centres' | 'inside' | 'outside';

/** A distance as it was measured, between two holes by their numbers, from 1. */
export interface Distance {
  readonly from: number;
  readonly to: number;
  /** mm, as read. */
  readonly read: number;
  /** Between centres, nearest edges, or furthest edges. */
  readonly span: Span;
}

export interface Pattern {
  /** Diameters of the holes, mm. */
  readonly diameters: readonly number[];
  readonly distances: readonly Distance[];
}

/** What is added to a reading to have it between centres, mm. */
function toCentres({ diameters }: Pattern, { from, to, span }: Distance): number {
  const radii = (diameters[from - 1]! + diameters[to - 1]!) / 2;
  return { centres: 0, inside: radii, outside: -radii }[span];
}

/** A reading turned into the distance between centres, mm. */
export const betweenCentres = (pattern: Pattern, distance: Distance): number =>
  distance.read + toCentres(pattern, distance);

/** A distance between centres turned into what would be read, mm. */
export const asRead = (pattern: Pattern, distance: Distance, centres: number): number =>
  centres - toCentres(pattern, distance);

/** Fewest distances that can place so many holes in one way: each two, but for the first pair's. */
export const fewestDistances = (holes: number): number => 2 * holes - 3;

/** Distances between centres, mm, of pairs of holes, numbered from 0. */
export interface Net {
  readonly pairs: readonly Pair[];
  readonly lengths: readonly number[];
}

/** Measured less laid down, mm. */
export const misfitsOf = ({ pairs, lengths }: Net, places: readonly Place[]): number[] =>
  pairs.map(([a, b], k) => lengths[k]! - apart(places[a]!, places[b]!));

export const sumOfSquares = (figures: readonly number[]): number =>
  figures.reduce((sum, figure) => sum + figure * figure, 0);

export const netOf = (pattern: Pattern): Net => ({
  pairs: pattern.distances.map(({ from, to }): Pair => [from - 1, to - 1]),
  lengths: pattern.distances.map((distance) => betweenCentres(pattern, distance)),
});
