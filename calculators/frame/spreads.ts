import { propagateAll } from '../maths/numeric/uncertainty.ts';
import type { Measured } from './evaluate.ts';
import {
  Absent,
  type AnyCalculator,
  type AnyValues,
  type ResultSpec,
  type ResultValue,
} from './types.ts';

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

const reading = (values: AnyValues, { key, index }: Measured): number =>
  index === undefined ? (values[key] as number) : (values[key] as readonly number[])[index]!;

/** The values with other figures read in the measured places. */
function withReadings(
  values: AnyValues,
  measured: readonly Measured[],
  figures: readonly number[],
): AnyValues {
  const moved: Record<string, AnyValues[string]> = { ...values };
  measured.forEach(({ key, index }, i) => {
    moved[key] =
      index === undefined ? figures[i] : (moved[key] as number[]).with(index, figures[i]!);
  });
  return moved;
}

/**
 * The ± of each figure from the ± of each reading, by `propagateAll`, which says what a ± means. A
 * result that has a ± of its own (`spreadFrom`) gets it joined by root-sum-square.
 */
export function measuredSpreads(
  calculator: AnyCalculator,
  values: AnyValues,
  measured: readonly Measured[],
  results: Readonly<Record<string, ResultValue>>,
): Record<string, number> {
  const known = flatten(results);
  const names = [...known.keys()];
  const specOf = (name: string): ResultSpec | undefined =>
    calculator.results[name.replace(/(-\d+)+$/, '')] ?? calculator.results[name];
  /** On the same round as the figure that is moved: 359.5 is half a degree from 0. */
  const unwound = (name: string, figure: number | undefined): number | undefined => {
    const cyclic = specOf(name)?.cyclic;
    if (cyclic === undefined || figure === undefined) return figure;
    return figure - cyclic * Math.round((figure - known.get(name)!) / cyclic);
  };
  const decided = calculator.decide?.(values);
  const model = (figures: readonly number[]) => {
    const computed = calculator.compute(withReadings(values, measured, figures), decided);
    const flat = flatten(computed as Record<string, ResultValue>);
    return names.map((name) => unwound(name, flat.get(name)));
  };
  const uncertain = propagateAll(
    model,
    measured.map((one) => reading(values, one)),
    measured.map(({ error }) => error),
  );
  const spreads: Record<string, number> = {};
  names.forEach((name, i) => {
    const spec = specOf(name);
    const own = spec?.spreadFrom === undefined ? 0 : results[spec.spreadFrom];
    const spread = uncertain[i]?.plusMinus;
    if (spread === undefined || spec?.bare || spec?.jumps || spec?.standard) return;
    spreads[name] = Math.hypot(spread, typeof own === 'number' ? own : 0);
  });
  return spreads;
}
