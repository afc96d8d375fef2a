/**
 * Chance that comes out alike for the same number for ever: the linear congruential generator of
 * d3-random 3.0 (`randomLcg`; multiplier 1664525, increment 1013904223, modulus 2³², which W. H.
 * Press and others give in *Numerical Recipes in C*, 2nd edition, 1992, page 284).
 */
import { randomLcg } from 'd3-random';

export type Chance = () => number;

/** Neighbouring seeds begin alike; after so many draws they have nothing in common. */
const DROPPED = 4;
/** Keeps the streams of one engine apart: a prime, so that no two engines share one. */
const STRIDE = 7919;

/** A stream of numbers from 0 up to 1, one of many that belong to an engine. */
export function chanceOf(engine: number, stream: number): Chance {
  const chance = randomLcg((engine * STRIDE + stream * 104_729) >>> 0);
  for (let i = 0; i < DROPPED; i += 1) chance();
  return chance;
}

/** Between two figures. */
export const between = (chance: Chance, from: number, to: number): number =>
  from + (to - from) * chance();

/** Between two figures, on a multiple of `step`. */
export const stepped = (chance: Chance, from: number, to: number, step: number): number =>
  Number((Math.round(between(chance, from, to) / step) * step).toFixed(6));

/** Away from nothing by at least the first and at most the second figure, either way. */
export function eitherWay(chance: Chance, least: number, most: number): number {
  const size = between(chance, least, most);
  return chance() < 0.5 ? -size : size;
}

export const whole = (chance: Chance, count: number): number => Math.floor(chance() * count);
