import { propagateAll, type Uncertain } from '../maths/numeric/uncertainty.ts';
import type { Measured } from './gather.ts';
import {
  Absent,
  type AnyCalculator,
  type AnyValues,
  type ResultSpec,
  type ResultValue,
} from './types.ts';

type Results = Readonly<Record<string, ResultValue>>;
type Flat = ReadonlyMap<string, number>;
/** Where a figure stands: in which result, and in which row and column of it, counted from 0. */
type Place = readonly [name: string, row?: number, column?: number];

/** The place of every figure of some results. */
function placesOf(results: Results): Place[] {
  return Object.entries(results).flatMap(([name, value]): Place[] => {
    if (value instanceof Absent) return [];
    if (typeof value === 'number') return [[name]];
    return value.flatMap((entry, i): Place[] =>
      typeof entry === 'number' ? [[name, i]] : entry.map((_, j) => [name, i, j]),
    );
  });
}

/** The figure at a place; nothing where there is none. */
function figureAt(results: Results, [name, row, column]: Place): number | undefined {
  const value = results[name];
  const entry = row === undefined || !Array.isArray(value) ? value : (value as unknown[])[row];
  const figure = column === undefined ? entry : (entry as readonly unknown[] | undefined)?.[column];
  return typeof figure === 'number' ? figure : undefined;
}

const nameOf = ([name, ...at]: Place): string => [name, ...at.map((n) => n! + 1)].join('-');

/** Every figure of a result under its name: `angle`, `error-1`, `x-1-2`. */
export const flatten = (results: Results): Flat =>
  new Map(placesOf(results).map((place) => [nameOf(place), figureAt(results, place)!]));

/** The end of a figure's name that says where in a table it stands. */
const OF_A_ROW = /(-\d+)+$/;

/** What the definition says of a figure by its name, whichever row of a table it stands in. */
const specOf = (calculator: AnyCalculator, name: string): ResultSpec | undefined =>
  calculator.results[name.replace(OF_A_ROW, '')] ?? calculator.results[name];

/** Whether a result is shown without a ±. */
const withoutOne = (spec: ResultSpec | undefined): boolean =>
  spec?.bare === true || spec?.jumps === true || spec?.standard === true;

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
 * Runs work whose refusals are dropped by the dozen: to write down where each was thrown costs more
 * than to find it. What is at fault in itself has been thrown before, by the values as they are.
 */
function withoutTraces<T>(work: () => T): T {
  const { stackTraceLimit } = Error;
  Error.stackTraceLimit = 0;
  try {
    return work();
  } finally {
    Error.stackTraceLimit = stackTraceLimit;
  }
}

/**
 * The ± of each figure from the ± of each reading, by `propagateAll`, which says what a ± means. A
 * result that has a ± of its own (`spreadFrom`) gets it joined by root-sum-square.
 */
export function measuredUncertainty(
  calculator: AnyCalculator,
  values: AnyValues,
  measured: readonly Measured[],
  results: Results,
): Uncertainty {
  // No ± is told of the others, so none is worked out.
  const places = placesOf(results).filter(
    (place) => !withoutOne(specOf(calculator, nameOf(place))),
  );
  const names = places.map(nameOf);
  const specs = names.map((name) => specOf(calculator, name));
  const figures = places.map((place) => figureAt(results, place)!);
  const decided = calculator.decide?.(values);
  const model = (moved: readonly number[]) => {
    const computed = calculator.compute(withReadings(values, measured, moved), decided) as Record<
      string,
      ResultValue
    >;
    return places.map((place, i) => {
      const figure = figureAt(computed, place);
      const cyclic = specs[i]?.cyclic;
      if (cyclic === undefined || figure === undefined) return figure;
      // On the same round as the figure that is moved: 359.5 is half a degree from 0.
      return figure - cyclic * Math.round((figure - figures[i]!) / cyclic);
    });
  };
  const uncertain = withoutTraces(() =>
    propagateAll(
      model,
      measured.map((one) => reading(values, one)),
      measured.map(({ error }) => error),
    ),
  );
  /** What a result brings of its own to its ±, where it has one. */
  const ownOf = (from: string | undefined): number => {
    const own = from === undefined ? 0 : results[from];
    return typeof own === 'number' ? Math.abs(own) : 0;
  };
  const known = names.flatMap((name, i) => {
    const one = uncertain[i];
    return one === undefined ? [] : [{ name, from: specs[i]?.spreadFrom, ...one }];
  });
  const found = widenedIn(calculator, results, known);
  return {
    spreads: Object.fromEntries(
      found.map(({ name, from, plusMinus }) => [
        name,
        // On a round, half of it either way is all of it.
        Math.min(
          Math.hypot(plusMinus, ownOf(from)),
          (specOf(calculator, name)?.cyclic ?? Infinity) / 2,
        ),
      ]),
    ),
    // Few ask for them, and not with every key.
    get parts() {
      const keys = measured.map((one) => fieldKey(calculator, one));
      return Object.fromEntries(
        found.map(({ name, from, contributions }) => [
          name,
          partsOf(
            from === undefined ? keys : [...keys, from],
            from === undefined ? contributions : [...contributions, ownOf(from)],
          ),
        ]),
      );
    },
  };
}

type Found = Uncertain & { readonly name: string; readonly from: string | undefined };

/** The same, wider where the readings contradict each other. */
function widenedIn(
  { widened }: AnyCalculator,
  results: Results,
  found: readonly Found[],
): readonly Found[] {
  if (!widened) return found;
  const spreads = Object.fromEntries(found.map(({ name, plusMinus }) => [name, plusMinus]));
  const times = widened.by(results as never, spreads);
  if (times === 1) return found;
  return found.map((one) =>
    widened.results.includes(one.name.replace(OF_A_ROW, ''))
      ? {
          ...one,
          plusMinus: one.plusMinus * times,
          contributions: one.contributions.map((contribution) => contribution * times),
        }
      : one,
  );
}

/** Those that add anything, the largest first. */
function partsOf(keys: readonly string[], contributions: readonly number[]): readonly Part[] {
  const parts: Part[] = [];
  keys.forEach((key, i) => {
    const contribution = contributions[i]!;
    if (contribution > 0) parts.push({ key, contribution });
  });
  return parts.sort((one, other) => other.contribution - one.contribution);
}

/** The key of a reading's field: members of a series have a number each. */
function fieldKey({ inputs }: AnyCalculator, { key, index }: Measured): string {
  if (index === undefined) return key;
  return `${key}-${index + ((inputs[key] as { readonly first?: number }).first ?? 1)}`;
}
