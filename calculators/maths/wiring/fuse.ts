import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertWithin } from '../numeric/within.ts';

/**
 * Ratings of blade fuses, A, smallest first.
 *
 * Source: ISO 8820-3:2015, Road vehicles: Fuse-links, Part 3: Fuse-links with tabs (blade type), type
 * C (medium).
 */
export const FUSE_RATINGS: readonly number[] = [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40];

/**
 * The smallest rating, A, of which `current` A (above 0) is at most the share `load` (above 0, at
 * most 1) that a fuse is to carry for hours. 0.7 is common practice: a fuse ages near its rating.
 *
 * @throws MathsError `out-of-range`; `no-fuse` where the largest is too small.
 */
export function fuseFor(current: number, load: number): number {
  assertWithin(
    {
      quantity: 'current',
      words: 'The current through the fuse',
      unit: 'A',
      min: 0,
      above: true,
      why: 'Without a current there is nothing to guard.',
    },
    current,
  );
  assertWithin(
    {
      quantity: 'load',
      words: 'The share of its rating that a fuse carries',
      unit: '',
      min: 0,
      above: true,
      max: 1,
      why: 'A fuse that carries more than its rating blows, sooner or later.',
    },
    load,
  );
  const least = (current / load) * (1 - 1e-9);
  const found = FUSE_RATINGS.find((rating) => rating >= least);
  if (found !== undefined) return found;
  throw new MathsError(
    'no-fuse',
    ['current', 'coils'],
    `A blade fuse of ${sayNumber(FUSE_RATINGS.at(-1)!)} A does not carry ${sayNumber(current)} A for long. Give the coils a fuse and a wire each, or look for a coil with a short.`,
  );
}
