import { fixed, shownUnit, withUnit } from '../frame/format.ts';
import { toShown, type LengthDisplay, type UnitName } from '../frame/units.ts';
import { MathsError } from '../maths/numeric/errors.ts';
import type { FigureKey } from './figures.ts';
import type { Engine, Entry } from './model.ts';
import type { StepReading } from './steps.ts';

export interface Verdict {
  readonly result: 'empty' | 'unjudged' | 'pass' | 'fail';
  /** Empty where there is nothing to say. */
  readonly words: string;
}

export interface Judgement {
  /** One for each box. */
  readonly rows: readonly Verdict[];
  /** What concerns all boxes together. */
  readonly whole: readonly string[];
  /** Figures of the sheet that are wanted before anything can be judged. */
  readonly missing: readonly FigureKey[];
}

/** What is judged: one step's entries on one engine, told in the reader's lengths. */
export interface Case {
  readonly engine: Engine;
  readonly reading: StepReading;
  readonly entries: readonly Entry[];
  readonly tolerance: number;
  readonly lengths: LengthDisplay;
  /** Set where the readings are what was once found, and other readings may have changed since. */
  readonly past: boolean;
}

export const empty: Verdict = { result: 'empty', words: '' };
/** Room for the rounding of decimal figures: a reading on the limit passes. */
export const DUST = 1e-9;

/** A signed amount with as many digits as a tenth of a step of its reading says. */
export function signedAmount(
  value: number,
  unit: UnitName,
  step: number,
  lengths: LengthDisplay,
): string {
  const inUnit = shownUnit([value], unit, lengths);
  const fine = toShown(step, inUnit) / 10;
  const decimals = unit === 'count' ? 0 : Math.max(0, Math.round(-Math.log10(fine)));
  const figure = String(Number(toShown(value, inUnit).toFixed(decimals))).replace('-', '−');
  return withUnit(figure, inUnit);
}

/** The size of an amount, so shown. */
export const amount = (
  value: number,
  unit: UnitName,
  step: number,
  lengths: LengthDisplay,
): string => signedAmount(Math.abs(value), unit, step, lengths);

/** A length to a hundredth of a millimetre, or as near in inches. */
export const millimetres = (value: number, lengths: LengthDisplay): string =>
  signedAmount(value, 'mm', 0.1, lengths);

export const degrees = (value: number): string => withUnit(fixed(Math.abs(value), 1), 'deg');

export const isWithin = (off: number, tolerance: number): boolean =>
  Math.abs(off) <= tolerance + DUST;

/** One reading against its figure. */
export function against(
  { reading, tolerance, lengths }: Pick<Case, 'reading' | 'tolerance' | 'lengths'>,
  entry: Entry,
  target: number,
): Verdict {
  if (entry === null) return empty;
  const off = entry - target;
  if (isWithin(off, tolerance)) return { result: 'pass', words: 'within its limits' };
  const { tooHigh, tooLow, unit, step } = reading;
  return {
    result: 'fail',
    words: `${off > 0 ? tooHigh : tooLow} ${amount(off, unit, step, lengths)}.`,
  };
}

export const unjudged = (entries: readonly Entry[]): Verdict[] =>
  entries.map((entry) => (entry === null ? empty : { result: 'unjudged', words: '' }));

/** All readings, or nothing where a box is still empty. */
export function allOf(entries: readonly Entry[]): readonly number[] | undefined {
  const known = entries.filter((entry): entry is number => entry !== null);
  return known.length === entries.length ? known : undefined;
}

export const unfinished = (entries: readonly Entry[]): Judgement => ({
  rows: unjudged(entries),
  whole: entries.every((entry) => entry === null)
    ? []
    : ['Fill every box: these readings are judged against one another.'],
  missing: [],
});

/** What the maths package says, or its sentence. */
export function attempted<T>(work: () => T): T | string {
  try {
    return work();
  } catch (error) {
    if (error instanceof MathsError) return error.message;
    throw error;
  }
}
