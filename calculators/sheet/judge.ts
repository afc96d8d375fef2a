import { finenessOf, fixed, isTurned, showInput } from '../frame/text/format.ts';
import { proseIn } from '../frame/text/prose.ts';
import { sentenceIn } from '../frame/text/sentence.ts';
import { displayUnit, fromShown, type LengthDisplay } from '../frame/text/units.ts';
import { againstSheet } from './at-odds.ts';
import { readingOf } from './readings.ts';
import { sheetFigures, type FigureKey } from './figures.ts';
import { crankFigures } from './geometry.ts';
import { placeWords } from './disc-places.ts';
import { doubtWords, meant } from './doubt.ts';
import { judgeInlet, judgePort, judgeSquish, judgeVolume } from './judge-geometry.ts';
import { judgeSpacing, spacingOf, spacingWords } from './judge-plate.ts';
import { judgeTiming } from './judge-timing.ts';
import { judgeTop } from './judge-top.ts';
import { judgeAlike, judgeTogether } from './judge-together.ts';
import {
  against,
  amount,
  empty,
  inside,
  NOTED,
  unjudged,
  type Case,
  type Judgement,
  type Verdict,
} from './judge-words.ts';
import { sameBox } from './firing-order.ts';
import { leadWords } from './leads.ts';
import { roundsOf } from './log.ts';
import {
  boxesOf,
  boxName,
  cylindersOf,
  type Engine,
  entriesOf,
  type Entry,
  setsOf,
  turnsOf,
} from './model.ts';
import { outdatedAt, standingAfter } from './outdated.ts';
import { directionsOf, setKeys } from './sets.ts';
import { showReading, stepUnit, toldDigits } from './step-units.ts';
import { order, steps, type StepId } from './steps.ts';
import { widest } from './widest.ts';

export {
  correctionWords,
  ofBefore,
  passMark,
  saidOfAll,
  type Judgement,
  type Verdict,
} from './judge-words.ts';

/** Figures that a step's judgement cannot do without, on this engine. */
export function wantedFigures(id: StepId, engine: Engine): FigureKey[] {
  const { reading } = steps[id];
  if (!reading) return [...(steps[id].figures ?? [])];
  const keys = [reading.target, reading.tolerance].filter((key) => key !== undefined);
  if (reading.judging === 'timing') return [...crankFigures, ...keys];
  if (reading.judging === 'spacing') return ['cylinders', ...setKeys(setsOf(engine)), ...keys];
  return keys;
}

/** A reading of so many times what is allowed is more often a slip. */
const MOST_TIMES = 20;

/** No further than the figure on one side, with the reading and its limit beside each other. */
function judgeLimit({ engine, reading, entries, unit }: Case, limit: number): Judgement {
  const show = (value: number): string => amount(value, unit, reading.step);
  const rows = entries.map<Verdict>((entry) => {
    if (entry === null) return empty;
    const least = reading.judging === 'at-least';
    if (least ? entry >= limit : entry <= limit) {
      return inside(Math.abs(limit - entry), limit, reading.step);
    }
    const [act, allowed] = least
      ? [reading.tooLow, `at least ${show(limit)} is wanted`]
      : [reading.tooHigh, `at most ${show(limit)} is allowed`];
    const { thread } = engine.figures;
    const turns =
      reading.byThread && thread !== undefined
        ? `: ${fixed(Math.abs(limit - entry) / thread, 2)} turns of the adjuster`
        : '';
    // Nothing at all is read of what is broken; of what is too large, far too large is a slip.
    const doubt =
      !least && entry > MOST_TIMES * limit
        ? doubtWords(meant(entry, unit, reading.unit, (value) => value <= limit))
        : '';
    return { result: 'fail', words: `${act} ${show(entry)}, and ${allowed}${turns}${doubt}.` };
  });
  return { rows, whole: [], missing: [] };
}

/** A record: a box that is filled is done. */
const judgeNoted = ({ entries }: Case): Judgement => ({
  rows: entries.map((entry) => (entry === null ? empty : { result: 'pass', words: NOTED })),
  whole: [],
  missing: [],
});

function judgeEach(given: Case): Judgement {
  const { engine, reading, entries } = given;
  const figure = (): number => engine.figures[reading.target!]!;
  switch (reading.judging) {
    case 'timing':
      return judgeTiming(given);
    case 'together':
      return judgeTogether(given);
    case 'spacing':
      return judgeSpacing(given);
    case 'port':
      return judgePort(given);
    case 'inlet':
      return judgeInlet(given);
    case 'squish':
      return judgeSquish(given);
    case 'volume':
      return judgeVolume(given);
    case 'zero':
      return judgeTop(given);
    case 'figure':
      return {
        rows: entries.map((entry) => against(given, entry, figure())),
        whole: [],
        missing: [],
      };
    case 'at-most':
    case 'at-least':
      return judgeLimit(given, figure());
    case 'alike':
      return judgeAlike(given);
    case 'noted':
      return judgeNoted(given);
  }
}

/**
 * A judgement without what it says of a cylinder whose measure is itself still to be put right: a
 * port read from a disc that stands wrong, a timing read at a gap that is to be changed.
 */
function onSureGround(engine: Engine, id: StepId, judged: Judgement): Judgement {
  const unsure = judged.rows.map(({ result }, i) =>
    result === 'empty'
      ? undefined
      : order.find(
          (by) =>
            steps[id].measuredBy?.includes(by) &&
            judge(engine, by, 'mm').rows[sameBox(engine, id, i, by)]?.result === 'fail',
        ),
  );
  if (unsure.every((by) => by === undefined)) return judged;
  const rows = judged.rows.map<Verdict>((row, i) => {
    const by = unsure[i];
    if (by === undefined) return row;
    const { title, reading } = steps[by];
    return {
      result: 'unjudged',
      words: `not judged: ${boxName(reading!, sameBox(engine, id, i, by), engine).toLowerCase()} is still to be corrected at “${title}”. That first, then read this one anew.`,
    };
  });
  return { rows, whole: [], missing: judged.missing };
}

/** Why a step's tolerance judges nothing: it would pass anything. Nothing where it judges. */
function tooWide(engine: Engine, id: StepId, lengths: LengthDisplay): string | undefined {
  const reading = steps[id].reading!;
  const { tolerance: key, target: of } = reading;
  const tolerance = key === undefined ? undefined : engine.figures[key];
  if (key === undefined || tolerance === undefined) return undefined;
  const target = of === undefined || reading.judging === 'timing' ? undefined : engine.figures[of];
  const [most, why] = widest[key] ?? [];
  const { label, step } = sheetFigures[key];
  const show = (value: number): string => amount(value, stepUnit(sheetFigures[key], lengths), step);
  const is = `“${label}” is ${show(tolerance)} in the sheet`;
  if (most !== undefined && tolerance > most) {
    return `${is}, and more than ${show(most)} judges nothing: ${why!}. Enter less, and it is judged.`;
  }
  return target !== undefined && target > 0 && tolerance >= target
    ? `${is}, as much as the figure itself, which would pass anything. Enter less, and it is judged.`
    : undefined;
}

/**
 * The engine with a step's figure as it is told: a reading is judged by what stands beside it, also where
 * the figure was typed in another unit and has more digits than are shown.
 */
function asTold(engine: Engine, id: StepId, lengths: LengthDisplay): Engine {
  const { target } = steps[id].reading!;
  const value = target === undefined ? undefined : engine.figures[target];
  if (target === undefined || value === undefined) return engine;
  const spec = sheetFigures[target];
  const unit = displayUnit(spec.unit, lengths);
  if (!isTurned(value, unit)) return engine;
  const told = fromShown(Number(toldDigits(value, unit, finenessOf(spec)).replace('−', '-')), unit);
  return { ...engine, figures: { ...engine.figures, [target]: told } };
}

const fails = ({ rows }: Judgement): number =>
  rows.filter(({ result }) => result === 'fail').length;

/**
 * The judgement by the figure as it is told here, or another where that lets more pass: by the figure as it
 * was typed, or as it is told in the other lengths. So the choice of lengths turns no pass into a fail.
 */
function mildest(
  judgeOn: (engine: Engine) => Judgement,
  engine: Engine,
  id: StepId,
  lengths: LengthDisplay,
): Judgement {
  const here = judgeOn(asTold(engine, id, lengths));
  if (fails(here) === 0) return here;
  const others = [engine, asTold(engine, id, lengths === 'mm' ? 'in' : 'mm')].map(judgeOn);
  return others.reduce((best, other) => (fails(other) < fails(best) ? other : best), here);
}

/** Each reading against its own figure alone. */
function againstFigure(
  whole: Engine,
  id: StepId,
  entries: readonly Entry[],
  lengths: LengthDisplay,
  past: boolean,
): Judgement {
  const reading = steps[id].reading!;
  const { figures } = whole;
  const missing = wantedFigures(id, whole).filter((key) => figures[key] === undefined);
  if (missing.length > 0) return { rows: unjudged(entries), whole: [], missing };
  const tolerance = reading.tolerance === undefined ? 0 : figures[reading.tolerance]!;
  const wide = tooWide(whole, id, lengths);
  if (wide !== undefined) return { rows: unjudged(entries), whole: [wide], missing: [] };
  const unit = stepUnit(reading, lengths);
  const judgeOn = (engine: Engine): Judgement =>
    judgeEach({ engine, id, reading, entries, tolerance, lengths, unit, past });
  return onSureGround(whole, id, mildest(judgeOn, whole, id, lengths));
}

function judgeEntries(
  engine: Engine,
  id: StepId,
  entries: readonly Entry[],
  lengths: LengthDisplay,
  past: boolean,
): Judgement {
  const { reading } = steps[id];
  if (!reading) return { rows: [], whole: [], missing: [] };
  const own = againstFigure(engine, id, entries, lengths, past);
  const judged = past ? own : againstSheet(engine, id, entries, own);
  // A correction that is of one side only moves what it moves on that side.
  const corrected = judged.rows.some(
    ({ result, reread }, i) =>
      result === 'fail' &&
      !reread &&
      (!reading.movesIfHigh || entries[i]! > engine.figures[reading.target!]!),
  );
  const moves = corrected && reading.moves !== undefined ? [proseIn(reading.moves, lengths)] : [];
  return {
    ...judged,
    // What the maths package says of a reading that makes no engine is in millimetres.
    rows: judged.rows.map((row) => ({ ...row, words: sentenceIn(row.words, lengths) })),
    whole: [...judged.whole.map((sentence) => sentenceIn(sentence, lengths)), ...moves],
  };
}

/**
 * Judges a step's readings against the sheet's figures, with the least correction for each. Readings
 * from before a turning that moved them take no part, and it is said of them.
 */
export function judge(engine: Engine, id: StepId, lengths: LengthDisplay): Judgement {
  const entries = entriesOf(engine, id);
  const old = outdatedAt(engine, id);
  if (old.length === 0) return judgeEntries(engine, id, entries, lengths, false);
  const now = entries.map((entry, i) => (old.includes(i) ? null : entry));
  const judged = judgeEntries(engine, id, now, lengths, false);
  const { reading } = steps[id];
  const rows = judged.rows.map<Verdict>((row, i) =>
    old.includes(i)
      ? {
          result: 'unjudged',
          words: `not judged: ${showReading(entries[i]!, reading!, lengths)} was read before the last change. ${reading!.movesAll!} Read this one again${reading!.movesOne && turnsOf(engine) === 1 ? ', or say that only the other’s set was moved' : ''}.`,
        }
      : row,
  );
  return { rows, whole: judged.whole, missing: judged.missing };
}

/** Whether a sentence of a judgement says what else a correction moves. */
export const isMoves = (id: StepId, sentence: string, lengths: LengthDisplay): boolean =>
  sentence === proseIn(steps[id].reading?.moves ?? '', lengths);

/** What readings of a step asked for while they stood. */
export function askedBy(
  engine: Engine,
  id: StepId,
  entries: readonly Entry[],
  lengths: LengthDisplay,
): string[] {
  const { reading } = steps[id];
  if (!reading) return [];
  const { rows, whole } = judgeEntries(engine, id, entries, lengths, true);
  const asked = rows.flatMap(({ result, words }, i) =>
    result === 'fail' ? [`${boxName(reading, i, engine)}: ${words}`] : [],
  );
  if (asked.length === 0) return [];
  return [...asked, ...whole.filter((sentence) => !isMoves(id, sentence, lengths))];
}

/** What readings that do not stand any more asked for. */
export interface Asked {
  /** Whether they were those as found, and the day of the last of them, where it is known. */
  readonly asFound: boolean;
  readonly on: string;
  readonly sentences: readonly string[];
}

/**
 * What was last asked for before what stands now was written: a plate is turned by an amount that
 * has to stay readable while it is turned, and afterwards. Nothing where nothing was.
 */
export function lastAsked(engine: Engine, id: StepId, lengths: LengthDisplay): Asked | undefined {
  const rounds = roundsOf(engine, id, boxesOf(engine, id));
  for (let i = rounds.length - 1; i > 0; i -= 1) {
    const earlier = rounds[i - 1]!.entries.at(-1)!;
    if (rounds[i]!.entries[0]!.kind === 'found') continue;
    const before = standingAfter(engine, id, i, rounds[i]!.before);
    const sentences = askedBy(engine, id, before, lengths);
    if (sentences.length > 0) {
      return { asFound: earlier.kind === 'found', on: earlier.on, sentences };
    }
  }
  if (rounds.length > 0) return undefined;
  // An engine from a link that left its log behind has its two figures of each box.
  const { found, left } = readingOf(engine, id);
  if (left.every((entry) => entry === null)) return undefined;
  const entries = Array.from({ length: boxesOf(engine, id) }, (_, i) => found[i] ?? null);
  const sentences = askedBy(engine, id, entries, lengths);
  return sentences.length === 0 ? undefined : { asFound: true, on: '', sentences };
}

/** What stands for a figure that is not in the sheet. */
export const NO_FIGURE = '…';

/** What a step is set to, in words where figures for it are still wanted. */
export function targetOrWanted(
  engine: Engine,
  id: StepId,
  lengths: LengthDisplay,
  index?: number,
): string | undefined {
  const words = targetWords(engine, id, lengths, index);
  if (!words?.includes(NO_FIGURE)) return words;
  const [figure, allowance] = words.split(` ± ${NO_FIGURE}`);
  return allowance === undefined || figure!.includes(NO_FIGURE)
    ? 'no figure in the sheet yet'
    : `${figure!}; how near, is not in the sheet yet`;
}

/** What a step is set to: "0.4 mm ± 0.02 mm"; or one of its boxes, counted from 0, where each has its own. */
export function targetWords(
  engine: Engine,
  id: StepId,
  lengths: LengthDisplay,
  index?: number,
): string | undefined {
  const { reading, figures: own } = steps[id];
  const { figures } = engine;
  const show = (key: FigureKey): string => {
    const spec = sheetFigures[key];
    const value = figures[key];
    if (value === undefined) return NO_FIGURE;
    return reading?.unit === spec.unit
      ? showReading(value, reading, lengths)
      : showInput(value, spec.unit, lengths, finenessOf(spec));
  };
  if (id === 'leads') return leadWords(engine);
  if (id === 'polarity') {
    return figures.earth === undefined
      ? undefined
      : `${figures.earth === 0 ? '−' : '+'} of each coil to its points`;
  }
  if (!reading) {
    return own?.map((key) => `${sheetFigures[key].label.toLowerCase()} ${show(key)}`).join(', ');
  }
  const allowance = reading.tolerance === undefined ? '' : ` ± ${show(reading.tolerance)}`;
  switch (reading.judging) {
    case 'zero': {
      const isOne = index === undefined || boxesOf(engine, id) === 1;
      return `0°${allowance}${isOne ? '' : placeWords(engine, index)}`;
    }
    case 'spacing': {
      const directions = directionsOf(engine);
      if (directions === undefined) return `${NO_FIGURE}${allowance}`;
      return `${index === undefined ? spacingWords(directions) : spacingOf(directions, index)}${allowance}`;
    }
    case 'together':
      return `all alike${allowance}`;
    case 'at-most':
      return `at most ${show(reading.target!)}`;
    case 'at-least':
      return `at least ${show(reading.target!)}`;
    case 'alike':
      return `within ${show(reading.tolerance!)} of the highest${cylindersOf(engine) === 1 ? ' of its earlier readings' : ''}`;
    case 'noted':
      return 'as found';
    default:
      return `${show(reading.target!)}${allowance}`;
  }
}
