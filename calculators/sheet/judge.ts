import { withUnit, fixed, shownUnit, showInput } from '../frame/format.ts';
import { toShown, type LengthDisplay, type UnitName } from '../frame/units.ts';
import { MathsError } from '../maths/errors.ts';
import { setMoves, settlePlate, timingAt } from '../maths/plate-setting.ts';
import { setPlaces } from '../maths/set-places.ts';
import { leastWorkOpening } from '../maths/slide-balance.ts';
import type { SliderCrank } from '../maths/slider-crank.ts';
import { sheetFigures, type FigureKey } from './figures.ts';
import { cylindersOf, entriesOf, type Engine, type Entry } from './model.ts';
import { boxName, steps, type StepId, type StepReading } from './steps.ts';

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

const empty: Verdict = { result: 'empty', words: '' };
/** Room for the rounding of decimal figures: a reading on the limit passes. */
const DUST = 1e-9;

/** An amount with as many digits as a step of its reading says: at least two significant. */
function amount(value: number, unit: UnitName, step: number, lengths: LengthDisplay): string {
  const inUnit = shownUnit([value], unit, lengths);
  const fine = toShown(step, inUnit) / 10;
  const decimals = unit === 'count' ? 0 : Math.max(0, Math.round(-Math.log10(fine)));
  return withUnit(String(Number(fixed(toShown(Math.abs(value), inUnit), decimals))), inUnit);
}

function against(
  reading: StepReading,
  entry: Entry,
  target: number,
  tolerance: number,
  lengths: LengthDisplay,
): Verdict {
  if (entry === null) return empty;
  const off = entry - target;
  if (Math.abs(off) <= tolerance + DUST) return { result: 'pass', words: 'within its limits' };
  const { tooHigh, tooLow, unit, step } = reading;
  return {
    result: 'fail',
    words: `${off > 0 ? tooHigh : tooLow} ${amount(off, unit, step, lengths)}.`,
  };
}

const unjudged = (entries: readonly Entry[]): Verdict[] =>
  entries.map((entry) => (entry === null ? empty : { result: 'unjudged', words: '' }));

const engineGeometry = ({ figures }: Engine): SliderCrank => ({
  stroke: figures.stroke!,
  rodLength: figures.rod!,
  pinOffset: figures.offset ?? 0,
});

const degrees = (value: number): string => withUnit(fixed(Math.abs(value), 1), 'deg');
const side = (value: number): string => (value > 0 ? 'early' : 'late');

/** Crank degrees before the top, or why there is none. */
function angleOf(engine: SliderCrank, entry: number): number | string {
  try {
    return timingAt(engine, entry);
  } catch (error) {
    if (error instanceof MathsError) return error.message;
    throw error;
  }
}

function judgeTiming(
  engine: Engine,
  reading: StepReading,
  entries: readonly Entry[],
  lengths: LengthDisplay,
): Judgement {
  const { figures } = engine;
  const geometry = engineGeometry(engine);
  const wanted = angleOf(geometry, figures.target!);
  if (typeof wanted === 'string') {
    return { rows: unjudged(entries), whole: [wanted], missing: [] };
  }
  const tolerance = figures['timing-tolerance']!;
  const angles = entries.map((entry) => (entry === null ? null : angleOf(geometry, entry)));
  const rows = angles.map<Verdict>((angle) => {
    if (angle === null) return empty;
    if (typeof angle === 'string') return { result: 'fail', words: angle };
    const off = angle - wanted;
    if (Math.abs(off) <= tolerance + DUST) {
      return { result: 'pass', words: `${fixed(angle, 1)}° before the top` };
    }
    return {
      result: 'fail',
      words: `${degrees(off)} ${side(off)}: ${off > 0 ? 'retard' : 'advance'} it.`,
    };
  });
  const known = angles.filter((angle): angle is number => typeof angle === 'number');
  const settled = known.length === angles.length && rows.some((row) => row.result === 'fail');
  const whole = settled ? plateWords(engine, known, wanted, reading, lengths) : [];
  return { rows, whole, missing: [] };
}

/** The one turn of the plate, and what is then left for the sets. */
function plateWords(
  engine: Engine,
  found: readonly number[],
  wanted: number,
  reading: StepReading,
  lengths: LengthDisplay,
): string[] {
  const { figures } = engine;
  const tolerance = figures['timing-tolerance']!;
  const setting = settlePlate(found, wanted);
  const ratio = figures['speed-ratio'] ?? 1;
  const radius = figures['slot-radius'];
  const turn =
    Math.abs(setting.move) < 0.05
      ? 'Leave the plate where it is.'
      : `Turn the plate to ${setting.move > 0 ? 'advance' : 'retard'} by ${degrees(setting.move)} of crank${ratio === 1 ? '' : `, which is ${degrees(setting.move * ratio)} of the plate`}: that is the least that leaves the worst cylinder best.`;
  if (setting.worst <= tolerance + DUST) {
    return [turn, 'Every cylinder is then within its limits; no set has to be moved.'];
  }
  const moves = radius === undefined ? undefined : setMoves(setting, radius, ratio);
  const sets = setting.errors.flatMap((error, i) => {
    if (Math.abs(error) <= tolerance + DUST) return [];
    const along =
      moves === undefined ? '' : `, ${amount(moves[i]!, 'mm', 0.1, lengths)} along its slot`;
    return [
      `${boxName(reading, i)}: then ${error > 0 ? 'retard' : 'advance'} its set by ${degrees(error)}${along}.`,
    ];
  });
  return [turn, ...sets];
}

/** All readings, or nothing where a box is still empty. */
function allOf(entries: readonly Entry[]): readonly number[] | undefined {
  const known = entries.filter((entry): entry is number => entry !== null);
  return known.length === entries.length ? known : undefined;
}

const unfinished = (entries: readonly Entry[]): Judgement => ({
  rows: unjudged(entries),
  whole: entries.every((entry) => entry === null)
    ? []
    : ['Fill every box: these readings are judged against one another.'],
  missing: [],
});

/**
 * What readings that have to agree are judged against: the middle of the highest and the lowest
 * where all lie within the tolerance of it, or else the one to which the others come with the least
 * to move.
 */
function aimOf(values: readonly number[], tolerance: number): number {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return high - low <= 2 * tolerance + DUST ? (low + high) / 2 : leastWorkOpening(values);
}

function judgeTogether(
  engine: Engine,
  reading: StepReading,
  entries: readonly Entry[],
  tolerance: number,
  lengths: LengthDisplay,
): Judgement {
  const known = allOf(entries);
  if (!known) return unfinished(entries);
  const aim = aimOf(known, tolerance);
  const { thread } = engine.figures;
  const rows = known.map((entry) => {
    const verdict = against(reading, entry, aim, tolerance, lengths);
    if (verdict.result !== 'fail' || thread === undefined) return verdict;
    const turns = Math.abs(entry - aim) / thread;
    return {
      ...verdict,
      words: `${verdict.words.slice(0, -1)}, ${fixed(turns, 2)} turns of its adjuster.`,
    };
  });
  const whole = rows.some(({ result }) => result === 'fail')
    ? [
        `Bring what is out to ${showInput(aim, reading.unit, lengths)}, where ${boxName(reading, known.indexOf(aim)).toLowerCase()} stands already: that is the least to turn.`,
      ]
    : [];
  return { rows, whole, missing: [] };
}

/** Sets round a plate: each against its own place, since one that is out shows in two angles. */
function judgeSpacing(
  reading: StepReading,
  entries: readonly Entry[],
  tolerance: number,
  lengths: LengthDisplay,
): Judgement {
  const known = allOf(entries);
  if (!known) return unfinished(entries);
  const { closing, places } = setPlaces(known);
  if (Math.abs(closing) > known.length * tolerance + DUST) {
    const sum = withUnit(fixed(360 + closing, 1), 'deg');
    return {
      rows: unjudged(entries),
      whole: [
        `These angles add up to ${sum}, and once round is 360°. Measure them again, each from the set before, the first from the last.`,
      ],
      missing: [],
    };
  }
  const aim = aimOf(places, tolerance);
  return {
    rows: places.map((place) => against(reading, place, aim, tolerance, lengths)),
    whole: [],
    missing: [],
  };
}

/** Figures that a step's judgement cannot do without. */
export function wantedFigures(id: StepId): FigureKey[] {
  const { reading } = steps[id];
  if (!reading) return [...(steps[id].figures ?? [])];
  const keys = [reading.target, reading.tolerance].filter((key) => key !== undefined);
  if (reading.judging === 'timing') return ['stroke', 'rod', ...keys];
  if (reading.judging === 'spacing') return ['cylinders', ...keys];
  return keys;
}

/** Judges a step's readings against the sheet's figures, with the least correction for each. */
export function judge(engine: Engine, id: StepId, lengths: LengthDisplay): Judgement {
  const { reading } = steps[id];
  if (!reading) return { rows: [], whole: [], missing: [] };
  const entries = entriesOf(engine, id);
  const { figures } = engine;
  const missing = wantedFigures(id).filter((key) => figures[key] === undefined);
  if (missing.length > 0) return { rows: unjudged(entries), whole: [], missing };
  const tolerance = reading.tolerance === undefined ? 0 : figures[reading.tolerance]!;
  const each = (target: number): Judgement => ({
    rows: entries.map((entry) => against(reading, entry, target, tolerance, lengths)),
    whole: [],
    missing: [],
  });
  switch (reading.judging) {
    case 'timing':
      return judgeTiming(engine, reading, entries, lengths);
    case 'together':
      return judgeTogether(engine, reading, entries, tolerance, lengths);
    case 'zero':
      return each(0);
    case 'spacing':
      return judgeSpacing(reading, entries, tolerance, lengths);
    case 'at-most': {
      const most = figures[reading.target!]!;
      const rows = entries.map((entry) =>
        entry !== null && entry <= most
          ? { result: 'pass' as const, words: 'within its limits' }
          : against(reading, entry, most, 0, lengths),
      );
      return { rows, whole: [], missing: [] };
    }
    case 'figure':
      return each(figures[reading.target!]!);
  }
}

/** What a step is set to: "0.4 mm ± 0.02 mm". */
export function targetWords(
  engine: Engine,
  id: StepId,
  lengths: LengthDisplay,
): string | undefined {
  const { reading, figures: own } = steps[id];
  const { figures } = engine;
  const show = (key: FigureKey): string =>
    figures[key] === undefined ? '…' : showInput(figures[key], sheetFigures[key].unit, lengths);
  if (!reading) {
    return own?.map((key) => `${sheetFigures[key].label.toLowerCase()} ${show(key)}`).join(', ');
  }
  const allowance = reading.tolerance === undefined ? '' : ` ± ${show(reading.tolerance)}`;
  switch (reading.judging) {
    case 'zero':
      return `0°${allowance}`;
    case 'spacing':
      return `${showInput(360 / cylindersOf(engine), 'deg', lengths)}${allowance}`;
    case 'together':
      return `all alike${allowance}`;
    case 'at-most':
      return `at most ${show(reading.target!)}`;
    default:
      return `${show(reading.target!)}${allowance}`;
  }
}
