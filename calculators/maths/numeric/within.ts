import { MathsError } from './errors.ts';
import { sayNumber } from './rounding.ts';

/** What a figure is, between what limits it may lie, and why. */
export interface Limits {
  /** The maths name of the quantity, such as `floatMass`. */
  readonly quantity: string;
  /** How a sentence begins, such as `The mass of the float`. */
  readonly words: string;
  /** Unit as it is written, such as `g`; empty for a plain number. */
  readonly unit: string;
  readonly min: number;
  /** None where nature sets none. */
  readonly max?: number;
  /** Whether `min` itself is ruled out. */
  readonly above?: boolean;
  /** Why the limits are what they are, and what to look at: a whole sentence. */
  readonly why: string;
}

/**
 * Asserts that a figure lies within its limits, both included unless `above` rules out the lower.
 *
 * @throws MathsError `out-of-range`, also for what is not a number.
 */
export function assertWithin(limits: Limits, value: number): void {
  const { quantity, words, min, max, above = false, why } = limits;
  const reached = above ? value > min : value >= min;
  if (reached && Number.isFinite(value) && value <= (max ?? Infinity)) return;
  const unit = limits.unit === '' ? '' : ` ${limits.unit}`;
  const given = Number.isFinite(value) ? `${sayNumber(value)}${unit}` : 'no number';
  const least = sayNumber(min);
  const range =
    max === undefined
      ? `${above ? `more than ${least}` : least}${unit}${above ? '' : ' or more'}`
      : `${above ? `more than ${least} and at most` : `from ${least} to`} ${sayNumber(max)}${unit}`;
  throw new MathsError(
    'out-of-range',
    [quantity],
    `${words} must be ${range}, not ${given}. ${why}`,
  );
}
