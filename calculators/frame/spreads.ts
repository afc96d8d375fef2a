import { MathsError } from '../maths/errors.ts';
import type { Measured } from './evaluate.ts';
import { Absent, type AnyCalculator, type AnyValues, type ResultValue } from './types.ts';

type Flat = ReadonlyMap<string, number>;

/** Every figure of a result under its name: `angle`, `error-1`, `x-1-2`. */
export function flatten(results: Readonly<Record<string, ResultValue>>): Flat {
  const flat = new Map<string, number>();
  for (const [name, value] of Object.entries(results)) {
    if (value instanceof Absent) continue;
    if (typeof value === 'number') flat.set(name, value);
    else {
      value.forEach((entry, i) => {
        if (typeof entry === 'number') flat.set(`${name}-${i + 1}`, entry);
        else entry.forEach((inner, j) => flat.set(`${name}-${i + 1}-${j + 1}`, inner));
      });
    }
  }
  return flat;
}

function shifted(values: AnyValues, { key, index }: Measured, by: number): AnyValues {
  const value = values[key];
  if (index === undefined) return { ...values, [key]: (value as number) + by };
  return {
    ...values,
    [key]: (value as readonly number[]).map((entry, i) => (i === index ? entry + by : entry)),
  };
}

function computeFlat(calculator: AnyCalculator, values: AnyValues): Flat | undefined {
  try {
    return flatten(calculator.compute(values) as Record<string, ResultValue>);
  } catch (error) {
    if (error instanceof MathsError) return undefined;
    throw error;
  }
}

/**
 * The square of what one reading's error does to a figure. Both sides known: the slope's part and
 * the bend's part, so that a figure at a turning point is not called exact.
 */
function changeSquared(at: number, high: number | undefined, low: number | undefined): number {
  if (high !== undefined && low !== undefined) {
    return ((high - low) / 2) ** 2 + ((high + low) / 2 - at) ** 2;
  }
  return ((high ?? low ?? at) - at) ** 2;
}

/**
 * The ± of each figure from the ± of each reading: half the change over plus and minus the error,
 * combined as root of the sum of squares (readings independent; JCGM 100:2008, 5.1.2 and the
 * numerical form in its note 2 to 5.1.3). Where one side is impossible the other side's change
 * stands.
 */
export function measuredSpreads(
  calculator: AnyCalculator,
  values: AnyValues,
  measured: readonly Measured[],
  results: Readonly<Record<string, ResultValue>>,
): Record<string, number> {
  const middle = flatten(results);
  const squares = new Map<string, number>();
  for (const reading of measured) {
    const up = computeFlat(calculator, shifted(values, reading, reading.error));
    const down = computeFlat(calculator, shifted(values, reading, -reading.error));
    for (const [name, at] of middle) {
      const high = up?.get(name);
      const low = down?.get(name);
      squares.set(name, (squares.get(name) ?? 0) + changeSquared(at, high, low));
    }
  }
  for (const [name, spec] of Object.entries(calculator.results)) {
    const own = spec.spreadFrom === undefined ? undefined : results[spec.spreadFrom];
    if (typeof own === 'number') squares.set(name, (squares.get(name) ?? 0) + own ** 2);
  }
  const spreads: Record<string, number> = {};
  for (const [name, sum] of squares) {
    const spread = Math.sqrt(sum);
    const bare = calculator.results[name.replace(/(-\d+)+$/, '')]?.bare ?? false;
    if (Number.isFinite(spread) && !bare) spreads[name] = spread;
  }
  return spreads;
}
