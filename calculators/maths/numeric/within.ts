import { MathsError } from './errors.ts';
import { sayNumber } from './rounding.ts';

/**
 * What a figure is, between what limits it may lie, and why. A limit is what nature or the formula
 * sets; what a reader may type is the input's own range.
 */
export interface Limits {
  /** The maths name of the quantity, such as `floatMass`. */
  readonly quantity: string;
  /** How a sentence begins, such as `The mass of the float`. */
  readonly words: string;
  /** Unit as it is written, such as `g`; empty for a plain number. */
  readonly unit: string;
  readonly min: number;
  /** Whether `min` itself is ruled out. */
  readonly above?: boolean;
  /** None where nature sets none. */
  readonly max?: number;
  /** Whether `max` itself is ruled out. */
  readonly below?: boolean;
  /** Why the limits are what they are, and what to look at: a whole sentence. */
  readonly why: string;
}

/** A unit behind its figure, with the space that belongs between them. */
const behind = (unit: string): string => (unit === '' || unit === '%' ? unit : ` ${unit}`);

/** The range as a sentence says it, such as `more than 0 and at most 1`. */
function rangeWords({ min, above, max, below, unit: symbol }: Limits): string {
  const unit = behind(symbol);
  const least = sayNumber(min);
  if (max === undefined) return above ? `more than ${least}${unit}` : `${least}${unit} or more`;
  const most = `${sayNumber(max)}${unit}`;
  if (!above && !below) return `from ${least} to ${most}`;
  return `${above ? `more than ${least}` : `at least ${least}`} and ${below ? 'less than' : 'at most'} ${most}`;
}

/**
 * Asserts that a figure lies within its limits, both included unless `above` or `below` rules one out.
 *
 * @throws MathsError `out-of-range`, also for what is not a number.
 */
export function assertWithin(limits: Limits, value: number): void {
  const { quantity, words, unit, min, above = false, max = Infinity, below = false, why } = limits;
  const reached = above ? value > min : value >= min;
  const kept = below ? value < max : value <= max;
  if (reached && kept && Number.isFinite(value)) return;
  const given = Number.isFinite(value) ? `${sayNumber(value)}${behind(unit)}` : 'no number';
  throw new MathsError(
    'out-of-range',
    [quantity],
    `${words} must be ${rangeWords(limits)}, not ${given}. ${why}`,
  );
}

/**
 * Asserts that a figure for which nature sets no limit is one.
 *
 * @param words Such as `gauge reading`, without the article.
 * @param remedy What to do: a whole sentence.
 * @throws MathsError `not-a-number`.
 */
export function assertNumber(quantity: string, words: string, value: number, remedy: string): void {
  if (Number.isFinite(value)) return;
  throw new MathsError('not-a-number', [quantity], `The ${words} is not a number. ${remedy}`);
}
