import { decimalsApart, fixed, withUnit } from '../frame/text/format.ts';
import { toShown, type LengthDisplay, type UnitName } from '../frame/text/units.ts';
import { MathsError } from '../maths/numeric/errors.ts';
import { doubtWords, isDoubtful, meant } from './doubt.ts';
import type { FigureKey } from './figures.ts';
import { boxName, type Engine, type Entry } from './model.ts';
import { stepUnit } from './step-units.ts';
import { steps, type StepId, type StepReading } from './steps.ts';

export interface Verdict {
  readonly result: 'empty' | 'unjudged' | 'pass' | 'fail';
  /** Empty where there is nothing to say. */
  readonly words: string;
  /** Set where the reading itself is at fault: it is to be read again, and nothing is to be moved. */
  readonly reread?: true;
  /** Set where it passes, and something speaks against the figure that it passes by. */
  readonly doubted?: true;
}

/** What is said of a reading that has no limits, or none yet. */
export const NOTED = 'written down';

/** What stands before the words of a reading that is right: nothing is passed without limits. */
export const passMark = (words: string): string => (words.startsWith(NOTED) ? '✓' : '✓ Pass');

export interface Judgement {
  /** What comes before any correction of a single box: the one turn that moves them all. */
  readonly first?: {
    readonly order: string;
    /** The sentence of `whole` that says the same in full, and what of it the order leaves out. */
    readonly inFull: string;
    readonly rest: string;
  };
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
  readonly id: StepId;
  readonly reading: StepReading;
  readonly entries: readonly Entry[];
  readonly tolerance: number;
  readonly lengths: LengthDisplay;
  /** The unit of the step's boxes. */
  readonly unit: UnitName;
  /** Set where the readings are what was once found, and other readings may have changed since. */
  readonly past: boolean;
}

export const empty: Verdict = { result: 'empty', words: '' };
/** Room for the rounding of decimal figures: a reading on the limit passes. */
export const EPSILON = 1e-9;

/** A signed amount in the unit of its box, with as many digits as a tenth of a step of its reading says. */
export function signedAmount(value: number, inUnit: UnitName, step: number): string {
  const fine = toShown(step, inUnit) / 10;
  const decimals = inUnit === 'count' ? 0 : Math.max(0, Math.round(-Math.log10(fine)));
  const figure = String(Number(toShown(value, inUnit).toFixed(decimals))).replace('-', '−');
  return withUnit(figure, inUnit);
}

/** The size of an amount, so shown. */
export const amount = (value: number, inUnit: UnitName, step: number): string =>
  signedAmount(Math.abs(value), inUnit, step);

/** A move of barrel, head or skirt, to a hundredth of a millimetre, in the unit in which squish is read. */
export const fitted = (value: number, lengths: LengthDisplay): string =>
  signedAmount(value, stepUnit(steps.squish.reading!, lengths), 0.1);

/**
 * The size of an angle.
 *
 * @param limit What it is beyond, and may not read the same as.
 */
export function degrees(value: number, limit?: number): string {
  const size = Math.abs(value);
  return withUnit(fixed(size, limit === undefined ? 1 : decimalsApart(size, limit, 1)), 'deg');
}

export const isWithin = (off: number, tolerance: number): boolean =>
  Math.abs(off) <= tolerance + EPSILON;

/**
 * What is said of a reading that is inside its limits: at the edge it is no surer than its last digit.
 *
 * @param room How far it is from the nearer limit.
 * @param allowed How far a reading may be from its figure.
 * @param step Of its last digit.
 */
export const inside = (room: number, allowed: number, step: number): Verdict => ({
  result: 'pass',
  words:
    room < Math.min(allowed, step) / 2
      ? 'within its limits, at the very edge of them (read it once more)'
      : 'within its limits',
});

/** One reading against its figure; `more` follows the amount, such as the turns of an adjuster. */
export function against(
  { reading, tolerance, unit }: Pick<Case, 'reading' | 'tolerance' | 'unit'>,
  entry: Entry,
  target: number,
  more = '',
): Verdict {
  if (entry === null) return empty;
  const off = entry - target;
  const { tooHigh, tooLow, step, counted } = reading;
  if (isWithin(off, tolerance)) {
    // What they are brought together to is chosen so that some are just within.
    const room = reading.judging === 'together' ? tolerance : tolerance - Math.abs(off);
    return inside(room, tolerance, step);
  }
  const passes = (value: number): boolean => isWithin(value - target, tolerance);
  // What is counted has no unit, and where a set belongs is worked out of several readings.
  const isOfUnit = counted === undefined && reading.judging !== 'spacing';
  const as = isOfUnit ? meant(entry, unit, reading.unit, passes) : undefined;
  const doubt = isOfUnit && isDoubtful(off, tolerance, target, as) ? doubtWords(as) : '';
  const much = amount(off, unit, step);
  const [one, several] = counted ?? ['', ''];
  const what = counted === undefined ? '' : ` ${much === '1' ? one : several}`;
  return {
    result: 'fail',
    words: `${off > 0 ? tooHigh : tooLow} ${much}${what}${more}${doubt}.`,
  };
}

/**
 * What is left of a verdict once something that the reading rests on has changed: what it came to by the
 * figures of that day is not known any more. Nothing where there is none.
 */
export function ofBefore({ result }: Verdict): { mark: string; words: string } | undefined {
  if (result === 'pass') return { mark: '↻ Passed when read', words: '' };
  if (result !== 'fail') return undefined;
  return { mark: '↻ Out when read.', words: 'Read it again before anything is corrected.' };
}

/** A correction in words: the turn that moves all before what is asked for at one box, and what else is said, each once. */
export function correctionWords(
  { first, rows, whole }: Judgement,
  index: number,
  name: string,
): { readonly words: string; readonly rest: readonly string[] } {
  const { words } = rows[index]!;
  if (first === undefined) return { words, rest: whole };
  return {
    words: `${first.order} ${name} is now ${words}`,
    rest: whole.map((sentence) => (sentence === first.inFull ? first.rest : sentence)),
  };
}

/**
 * What is said of all boxes of a step together. While one of them is refused nothing that rests on what
 * was read there before, only why the others wait.
 */
export const saidOfAll = ({ rows, whole }: Judgement, isRefused: boolean): readonly string[] =>
  isRefused && rows.some(({ result }) => result === 'pass' || result === 'fail') ? [] : whole;

export const unjudged = (entries: readonly Entry[]): Verdict[] =>
  entries.map((entry) => (entry === null ? empty : { result: 'unjudged', words: '' }));

/** All readings, or nothing where a box is still empty. */
export function allOf(entries: readonly Entry[]): readonly number[] | undefined {
  const known = entries.filter((entry): entry is number => entry !== null);
  return known.length === entries.length ? known : undefined;
}

/** Readings that wait for the others of their step, beside which they are judged. */
export function unfinished({
  entries,
  reading,
  engine,
}: Pick<Case, 'entries' | 'reading' | 'engine'>): Judgement {
  const waits = entries.flatMap((entry, i) =>
    entry === null ? [boxName(reading, i, engine).toLowerCase()] : [],
  );
  return {
    rows: unjudged(entries),
    whole:
      waits.length === entries.length
        ? []
        : [
            `These readings are judged against one another, and there is none yet of ${waits.join(', ')}.`,
          ],
    missing: [],
  };
}

/** What the maths package says, or its sentence. */
export function attempted<T>(work: () => T): T | string {
  try {
    return work();
  } catch (error) {
    if (error instanceof MathsError) return error.message;
    throw error;
  }
}
