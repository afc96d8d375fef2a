import { checkedAt, type Engine, type Entry, type Reading } from './model.ts';
import { reopeners, type StepId } from './steps.ts';

const blank: Reading = { found: [], left: [], done: false, checked: 0, changed: 0 };

export const readingOf = (engine: Engine, id: StepId): Reading => engine.readings[id] ?? blank;

/** The engine with a change in what is held of a step. */
export function withReading(engine: Engine, id: StepId, change: Partial<Reading>): Engine {
  const reading = { ...readingOf(engine, id), ...change };
  return { ...engine, readings: { ...engine.readings, [id]: reading } };
}

/** The list with one place set; no longer than its last entry. */
export function put(list: readonly Entry[], index: number, value: Entry): Entry[] {
  const next = Array.from({ length: Math.max(list.length, index + 1) }, (_, i) => list[i] ?? null);
  next[index] = value;
  while (next.at(-1) === null) next.pop();
  return next;
}

/** The steps that have altered the engine since a cylinder of a step was last looked at. */
export const movedSince = (engine: Engine, id: StepId, index: number): StepId[] =>
  reopeners(id).filter(
    (other) => readingOf(engine, other).changed > checkedAt(readingOf(engine, id), index),
  );

/** Whether a step has anything entered. */
export function isBegun(engine: Engine, id: StepId): boolean {
  const { found, left, done } = readingOf(engine, id);
  return done || [...found, ...left].some((entry) => entry !== null);
}
