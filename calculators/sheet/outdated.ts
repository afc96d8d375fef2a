import { roundsOf } from './log.ts';
import type { LoggedReading } from './log-entry.ts';
import { boxesOf, entriesOf, type Engine, type Entry } from './model.ts';
import { isNoTiming } from './slot-reach.ts';
import { steps, type StepId } from './steps.ts';

interface Taken {
  readonly entry: LoggedReading;
  readonly round: number;
}

/** Whether a change at another cylinder came after a reading, and not in the same turning with it. */
const isPast = (last: Taken | undefined, later: readonly Taken[], cylinder: number): boolean =>
  later.some(
    ({ entry, round }) =>
      entry.cylinder !== cylinder &&
      entry.kind === 'change' &&
      (last === undefined || round > last.round || last.entry.kind !== 'change'),
  );

/** The cylinders, counted from 0, that stand as they did before the last turning of so many rounds. */
function past(engine: Engine, id: StepId, rounds: number): number[] {
  if (steps[id].reading?.movesAll === undefined) return [];
  const boxes = boxesOf(engine, id);
  const taken = roundsOf(engine, id, boxes)
    .slice(0, rounds)
    .flatMap(({ entries }, round) => entries.map((entry): Taken => ({ entry, round })))
    // Nothing was turned to what is a slip of the reading.
    .filter(({ entry }) => !isNoTiming(engine, id, entry.value));
  return Array.from({ length: boxes }, (_, i) => i).filter((i) => {
    const at = taken.findLastIndex(({ entry }) => entry.cylinder === i + 1);
    return isPast(taken[at], taken.slice(at + 1), i + 1);
  });
}

/**
 * The cylinders of a step, counted from 0, whose readings were taken before what moves them all was
 * last turned: nothing is told by them until they are read again. What is read after a change in one
 * round was read after one turning. A reading that the log does not hold is older than all it holds.
 */
export const outdatedAt = (engine: Engine, id: StepId): readonly number[] => {
  const standing = entriesOf(engine, id);
  return past(engine, id, Infinity).filter((i) => standing[i] !== null);
};

/** Entries that stood after so many rounds, without those that a turning had left behind. */
export function standingAfter(
  engine: Engine,
  id: StepId,
  rounds: number,
  entries: readonly Entry[],
): readonly Entry[] {
  const gone = past(engine, id, rounds);
  return gone.length === 0 ? entries : entries.map((entry, i) => (gone.includes(i) ? null : entry));
}
