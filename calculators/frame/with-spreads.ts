import type { Evaluation } from './evaluate.ts';
import type { ResultValue } from './types.ts';

/** Whether two results hold as many figures, at the same places. */
const isAlike = (one: unknown, other: unknown): boolean =>
  Array.isArray(one) && Array.isArray(other)
    ? one.length === other.length && one.every((entry, i) => isAlike(entry, other[i]))
    : typeof one === typeof other;

const areAlike = (
  one: Readonly<Record<string, ResultValue>>,
  other: Readonly<Record<string, ResultValue>>,
): boolean => Object.keys(one).every((name) => isAlike(one[name], other[name]));

/**
 * A state with the ± of the one that was shown before it, where that holds the same figures: the ±
 * costs many times what the figures do, and one key hardly changes it.
 */
export function withSpreadsOf(before: Evaluation, now: Evaluation): Evaluation {
  if (before === now || !areAlike(now.results, before.results)) return now;
  return Object.create(now, { spreads: { get: () => before.spreads } }) as Evaluation;
}
