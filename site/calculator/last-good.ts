import type { Evaluation, Texts } from '../../calculators/frame/evaluate.ts';
import { isUnreadable, type Held } from '../../calculators/frame/field/fields.ts';

/**
 * What each field held when it was last read well, kept for when it cannot be read. The field that
 * is being typed into keeps what it held before: “4” on the way to “4 gal” was never meant.
 */
export function lastGood(
  { fields, errorFields }: Evaluation,
  before: Readonly<Record<string, Held>>,
  typing?: string,
): Record<string, Held> {
  const good: Record<string, Held> = { ...before };
  for (const field of [...fields, ...errorFields]) {
    if (field.problem === undefined && field.key !== typing)
      good[field.key] = { value: field.value, origin: field.origin };
  }
  return good;
}

/** The texts that cannot be read, by their fields. */
export const refusedIn = ({ fields, errorFields }: Evaluation): Texts =>
  Object.fromEntries(
    [...fields, ...errorFields].filter(isUnreadable).map(({ key, text }) => [key, text]),
  );

/** The same where the boxes have been left: on what cannot be read nothing rests any more. */
export const letGo = (
  evaluation: Evaluation,
  held: Readonly<Record<string, Held>>,
): Record<string, Held> => {
  const refused = refusedIn(evaluation);
  return Object.fromEntries(
    Object.entries(held).map(([key, one]) => [
      key,
      Object.hasOwn(refused, key) ? { ...one, left: true } : one,
    ]),
  );
};
