import type { Evaluation } from './evaluate.ts';
import { labelOf } from './rests-on.ts';
import type { Part } from './spreads.ts';
import { inSentence } from './text/sentence.ts';
import type { AnyCalculator, ResultSpec } from './types.ts';

/** A reading's part of a ±. */
export interface Share {
  readonly label: string;
  /** Of the variance, 0 to 1. */
  readonly share: number;
}

const LEAST_SHARE = 0.005;

/** The root of the sum of their squares, which no part is too large or too small for. */
export const joined = (parts: readonly Part[]): number =>
  Math.hypot(...parts.map(({ contribution }) => contribution));

/** The shares of the variance that the parts of one ± have. */
export function sharesOf(
  calculator: AnyCalculator,
  { fields }: Evaluation,
  parts: readonly Part[],
): readonly Share[] {
  const whole = joined(parts);
  return parts
    .map(({ key, contribution }) => {
      const field = fields.find((one) => one.key === key);
      const label = field ? labelOf(field) : (calculator.results[key]?.label ?? key);
      return { label, share: (contribution / whole) ** 2 };
    })
    .filter(({ share }) => share >= LEAST_SHARE);
}

/** Words for a share: at least a hundredth, and never all of it where something else has a part. */
export const percent = (share: number): string => `${Math.round(share * 100)}%`;

/** Where the ± of the first result that has one comes from, in a line. */
export function budgetLine(calculator: AnyCalculator, evaluation: Evaluation): string | undefined {
  const specs = Object.entries<ResultSpec>(calculator.results);
  const order = [...specs.filter(([, { lead }]) => lead), ...specs].map(([name]) => name);
  // One that is but another result's figure says nothing of the readings.
  const name = order.find((one) =>
    evaluation.parts[one]?.some(({ key }) => evaluation.fields.some((field) => field.key === key)),
  );
  if (name === undefined) return undefined;
  const shares = sharesOf(calculator, evaluation, evaluation.parts[name]!);
  const words = shares.map(({ label, share }) => `${inSentence(label)} ${percent(share)}`);
  return `${calculator.results[name]!.label}: ${words.join(' · ')}`;
}
