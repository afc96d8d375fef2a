import type { AnyCalculator, Input, ResultSpec } from './types.ts';
import { hasInchTwin } from './text/units.ts';

/** Whether a calculator has any figure that looks different when lengths are shown in inches. */
export function showsLengths(calculator: AnyCalculator): boolean {
  const inputs = Object.values<Input>(calculator.inputs);
  const results = Object.values<ResultSpec>(calculator.results);
  return (
    inputs.some((input) => input.kind !== 'choice' && hasInchTwin(input.unit)) ||
    results.some(({ unit }) => hasInchTwin(unit))
  );
}
