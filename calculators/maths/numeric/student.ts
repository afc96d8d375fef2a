import { MathsError } from './errors.ts';
import { findRoot } from './find-root.ts';

/**
 * Chance that a Student variable with `freedom` degrees of freedom lies within ±t.
 *
 * Source: M. Abramowitz and I. A. Stegun (eds), *Handbook of Mathematical Functions*, 1964,
 * formulas 26.7.3 and 26.7.4 (finite series for whole degrees of freedom), named from memory.
 */
function withinChance(t: number, freedom: number): number {
  const angleRadians = Math.atan(t / Math.sqrt(freedom));
  const sine = Math.sin(angleRadians);
  const cosine = Math.cos(angleRadians);
  const odd = freedom % 2 === 1;
  let term = odd ? cosine : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k < freedom; k += 2) {
    term *= ((k - 1) / k) * cosine * cosine;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angleRadians + sine * sum) : sine * sum;
}

/**
 * By how much a standard error is multiplied for a range that holds the truth 95 times in 100,
 * when the error was itself estimated from scatter with `freedom` degrees of freedom (a whole
 * number from 1 to 100, so that the sum stays short): 12.7 with one, 2.8 with four, near 2 with many.
 */
export function coverageFactor(freedom: number): number {
  if (!Number.isInteger(freedom) || freedom < 1 || freedom > 100) {
    throw new MathsError(
      'degrees-of-freedom',
      ['freedom'],
      'The scatter can be judged with a whole number of degrees of freedom from 1 to 100: readings less two for a line.',
    );
  }
  return findRoot((t) => withinChance(t, freedom) - 0.95, 1, 20);
}

/**
 * The same for any number of degrees of freedom from 1 to 100: between two whole ones on a straight
 * line over 1/freedom, which lies a little above the true curve.
 */
export function coverageBetween(freedom: number): number {
  const low = Math.floor(freedom);
  const below = coverageFactor(low);
  if (low === freedom) return below;
  const share = (1 / low - 1 / freedom) / (1 / low - 1 / (low + 1));
  return below + share * (coverageFactor(low + 1) - below);
}
