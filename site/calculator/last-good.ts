import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import type { Held } from '../../calculators/frame/fields.ts';

/** What each field held when it was last read well, kept for when it cannot be read. */
export function lastGood(
  { fields, errorFields }: Evaluation,
  before: Readonly<Record<string, Held>>,
): Record<string, Held> {
  const good: Record<string, Held> = { ...before };
  for (const field of [...fields, ...errorFields]) {
    if (field.problem === undefined) good[field.key] = { value: field.value, origin: field.origin };
  }
  return good;
}
