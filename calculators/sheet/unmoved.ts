import { listed } from '../maths/numeric/listed.ts';
import { addNote } from './edit-log.ts';
import { confirmOne } from './set-entry.ts';
import { lastAt, readingsAt } from './log.ts';
import { boxName, boxesOf, turnsOf, type Engine } from './model.ts';
import { outdatedAt } from './outdated.ts';
import { steps, type StepId } from './steps.ts';

/** What was changed at a step, and what was read before that; cylinders counted from 0. */
export interface MovedOrNot {
  readonly changed: readonly number[];
  readonly before: readonly number[];
}

/**
 * Which cylinders were changed after others were read, where each can also be moved by itself: what
 * was turned, the one plate or those sets alone, only the reader knows. Nothing where all is clear.
 */
export function movedOrNot(engine: Engine, id: StepId): MovedOrNot | undefined {
  // Cylinders of one set move with it, whichever was read.
  if (steps[id].reading?.movesOne !== true || turnsOf(engine) > 1) return undefined;
  const before = outdatedAt(engine, id);
  if (before.length === 0) return undefined;
  const since = Math.min(...before.map((i) => lastAt(engine, id, i)?.clock ?? 0));
  const changed = Array.from({ length: boxesOf(engine, id) }, (_, i) => i).filter(
    (i) =>
      !before.includes(i) &&
      readingsAt(engine, id, i).some(({ kind, clock }) => kind === 'change' && clock > since),
  );
  return { changed, before };
}

/** Sets in words: "set 1", "sets 1 and 2". */
export const setsWords = (sets: readonly number[]): string =>
  `${sets.length < 2 ? 'set' : 'sets'} ${listed(sets.map((i) => i + 1))}`;

/**
 * Says that only the sets that were read since were moved, and the plate was not: what was read
 * before at the others still stands there, and counts as looked at. The log says why. `on` is the day.
 */
export function keepUnmoved(engine: Engine, id: StepId, on = ''): Engine {
  const moved = movedOrNot(engine, id);
  if (moved === undefined) return engine;
  const { changed, before } = moved;
  const reading = steps[id].reading!;
  const names = before.map((i) => boxName(reading, i, engine).toLowerCase()).join(', ');
  const noted = addNote(
    engine,
    `Only ${setsWords(changed)} moved at “${steps[id].title}”, and not the plate: what was read before at ${names} stands.`,
    on,
  );
  return before.reduce((so, i) => confirmOne(so, id, i, on), noted);
}
