import { fixed } from '../frame/text/format.ts';
import { isFar } from '../frame/field/other-unit.ts';
import { leastWorkOpening } from '../maths/carburettor/slide-balance.ts';
import { doubtWords, meant } from './doubt.ts';
import { readingOf } from './readings.ts';
import {
  against,
  allOf,
  amount,
  EPSILON,
  inside,
  NOTED,
  unfinished,
  type Case,
  type Judgement,
  type Verdict,
} from './judge-words.ts';
import { readingsAt } from './log.ts';
import { boxName, type Engine } from './model.ts';
import { type StepId } from './steps.ts';

/**
 * What readings that have to agree are judged against: the middle of the highest and the lowest
 * where all lie within the tolerance of it, or else the one to which the others come with the least
 * to move.
 */
export function aimOf(values: readonly number[], tolerance: number): number {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return high - low <= 2 * tolerance + EPSILON ? (low + high) / 2 : leastWorkOpening(values);
}

/** What an engine of one cylinder read at a step before what stands now; as found where no log tells. */
function earlierThan(engine: Engine, id: StepId, now: number): readonly number[] {
  const { found, left } = readingOf(engine, id);
  const read = readingsAt(engine, id, 0).map(({ value }) => value);
  const at = read.lastIndexOf(now);
  if (at >= 0) return read.slice(0, at);
  return [found[0] ?? null, left[0] ?? null].filter(
    (entry) => entry !== null && entry !== now,
  ) as number[];
}

/**
 * Readings of which none should lie far below the best: what is low has a fault, and the highest is
 * what the others could be.
 */
export function judgeAlike(given: Case): Judgement {
  const { engine, id, reading, entries, tolerance, unit } = given;
  const known = allOf(entries);
  if (!known) return unfinished(given);
  const { usual } = reading;
  const best = Math.max(...known);
  // Typed in another unit, or none of them holds.
  if (usual !== undefined && best < usual && isFar(best, usual, reading.unit)) {
    const about = amount(usual, unit, reading.step);
    const words = `not judged: far below the usual ${about} or so. Check the unit it was typed in, and the gauge.`;
    return { rows: known.map(() => ({ result: 'unjudged', words })), whole: [], missing: [] };
  }
  // One cylinder has no other beside it, but its own earlier days.
  const beside = known.length === 1 ? earlierThan(engine, id, known[0]!) : known;
  const highest = Math.max(...beside);
  const alike = (value: number): boolean => Math.abs(highest - value) <= tolerance + EPSILON;
  const rows = known.map<Verdict>((entry) => {
    if (beside.length === 0) return { result: 'pass', words: `${NOTED}, to be compared later` };
    const room = tolerance - (highest - entry);
    if (room >= -EPSILON) return inside(room, tolerance, reading.step);
    const short = amount(highest - entry, unit, reading.step);
    // So far below, it is looked for in the reading before it is looked for in the engine.
    const doubt = entry < highest / 2 ? doubtWords(meant(entry, unit, reading.unit, alike)) : '';
    return { result: 'fail', words: `${reading.tooLow} ${short}${doubt}.` };
  });
  return { rows, whole: [], missing: [] };
}

export function judgeTogether(given: Case): Judgement {
  const { engine, reading, entries, tolerance, unit } = given;
  const known = allOf(entries);
  if (!known) return unfinished(given);
  const aim = aimOf(known, tolerance);
  const { thread } = engine.figures;
  const rows = known.map((entry) => {
    if (thread === undefined) return against(given, entry, aim);
    const turns = fixed(Math.abs(entry - aim) / thread, 2);
    return against(
      given,
      entry,
      aim,
      `: its adjuster ${turns} turns ${entry > aim ? 'in' : 'out'}`,
    );
  });
  const whole = rows.some(({ result }) => result === 'fail')
    ? [
        `Bring what is out to ${amount(aim, unit, reading.step)}, where ${boxName(reading, known.indexOf(aim), engine).toLowerCase()} stands already: that is the least to turn.`,
      ]
    : [];
  return { rows, whole, missing: [] };
}
