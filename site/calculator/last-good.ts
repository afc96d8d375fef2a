import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import type { AnyValue } from '../../calculators/frame/types.ts';

/** Values that were read well, kept for when one cannot be read. */
export function lastGood(
  { problems, values }: Evaluation,
  before: Readonly<Record<string, AnyValue>>,
): Record<string, AnyValue> {
  const wrong = problems.flatMap(({ key }) => key ?? []);
  const good: Record<string, AnyValue> = { ...before };
  for (const [key, value] of Object.entries(values)) {
    const faulty = wrong.some(
      (field) =>
        field === key || (field.startsWith(`${key}-`) && /^\d+$/.test(field.slice(key.length + 1))),
    );
    if (!faulty) good[key] = value;
  }
  return good;
}
