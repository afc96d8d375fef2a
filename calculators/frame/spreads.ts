import { propagateAll } from '../maths/numeric/uncertainty.ts';
import type { Measured } from './gather.ts';
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

/** What the ± of one reading does to a result. */
export interface Part {
  /** The reading’s key (`stroke`, `fired-2`); of the result's own ± the name of that result. */
  readonly key: string;
  /** Its part of the result's ±, in the result's unit. */
  readonly contribution: number;
}

export interface Uncertainty {
  readonly spreads: Readonly<Record<string, number>>;
  /** What makes up each of them, the largest first. */
  readonly parts: Readonly<Record<string, readonly Part[]>>;
}

/**
 * The ± of each figure from the ± of each reading, by `propagateAll`, which says what a ± means. A
 * result that has a ± of its own (`spreadFrom`) gets it joined by root-sum-square.
 */
export function measuredUncertainty(
  calculator: AnyCalculator,
  values: AnyValues,
  measured: readonly Measured[],
  results: Readonly<Record<string, ResultValue>>,
): Uncertainty {
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
  const parts: Record<string, readonly Part[]> = {};
  names.forEach((name, i) => {
    const spec = specOf(name);
    const found = uncertain[i];
    if (found === undefined || spec?.bare || spec?.jumps || spec?.standard) return;
    const from = spec?.spreadFrom;
    const own = from === undefined ? 0 : results[from];
    const ofOwn = typeof own === 'number' ? Math.abs(own) : 0;
    spreads[name] = Math.hypot(found.plusMinus, ofOwn);
    parts[name] = [
      ...measured.map((one, m) => ({
        key: fieldKey(calculator, one),
        contribution: found.contributions[m]!,
      })),
      ...(from === undefined ? [] : [{ key: from, contribution: ofOwn }]),
    ]
      .filter(({ contribution }) => contribution > 0)
      .sort((one, other) => other.contribution - one.contribution);
  });
  return { spreads, parts };
}

/** The key of a reading's field: members of a series have a number each. */
function fieldKey({ inputs }: AnyCalculator, { key, index }: Measured): string {
  if (index === undefined) return key;
  return `${key}-${index + ((inputs[key] as { readonly first?: number }).first ?? 1)}`;
}
