import type { FigureKey } from './figures.ts';
import {
  entriesOf,
  LIMITS,
  type Engine,
  type Entry,
  type KeptResult,
  type Reading,
} from './model.ts';
import type { StepId } from './steps.ts';

export type Moment = 'found' | 'left';

const blank: Reading = { found: [], left: [], done: false, checked: 0, changed: 0 };

export const readingOf = (engine: Engine, id: StepId): Reading => engine.readings[id] ?? blank;

const without = <R extends Readonly<Record<string, unknown>>>(group: R, key: string): R =>
  Object.fromEntries(Object.entries(group).filter(([other]) => other !== key)) as R;

/** Enters a figure, or takes it out. */
export function setFigure(engine: Engine, key: FigureKey, value: number | undefined): Engine {
  const others = without(engine.figures, key);
  return { ...engine, figures: value === undefined ? others : { ...others, [key]: value } };
}

function withReading(engine: Engine, id: StepId, change: Partial<Reading>): Engine {
  const reading = { ...readingOf(engine, id), ...change };
  return { ...engine, readings: { ...engine.readings, [id]: reading } };
}

/** The list with one place set; no longer than its last entry. */
function put(list: readonly Entry[], index: number, value: Entry): Entry[] {
  const next = Array.from({ length: Math.max(list.length, index + 1) }, (_, i) => list[i] ?? null);
  next[index] = value;
  while (next.at(-1) === null) next.pop();
  return next;
}

/**
 * Writes one reading box. The engine counts as altered when what holds at that cylinder is no
 * longer what held before: an entry as left that differs from the one before it, or from the one
 * as found. A first reading as found alters nothing.
 */
export function setEntry(
  engine: Engine,
  id: StepId,
  moment: Moment,
  index: number,
  value: Entry,
): Engine {
  const before = readingOf(engine, id);
  if ((before[moment][index] ?? null) === value) return engine;
  const clock = engine.clock + 1;
  const held = before.left[index] ?? before.found[index] ?? null;
  const altered = moment === 'left' && value !== null && held !== null && value !== held;
  return {
    ...withReading(engine, id, {
      [moment]: put(before[moment], index, value),
      checked: clock,
      changed: altered ? clock : before.changed,
    }),
    clock,
  };
}

/** What stood in a box, and when its step had last altered the engine, before it was typed into. */
export interface Before {
  readonly entry: Entry;
  readonly changed: number;
}

/**
 * Writes a box that is being typed into: judged against what stood there `before`, so that the
 * digits on the way to a figure alter nothing. `written` is when the typing itself last did.
 */
export function retype(
  engine: Engine,
  id: StepId,
  moment: Moment,
  index: number,
  value: Entry,
  before: Before,
  written: number | undefined,
): Engine {
  const reading = readingOf(engine, id);
  const restored = withReading(engine, id, {
    [moment]: put(reading[moment], index, before.entry),
    changed: reading.changed === written ? before.changed : reading.changed,
  });
  return setEntry(restored, id, moment, index, value);
}

/** Ticks a step without figures, or takes the tick away. What was done anew alters the engine. */
export function setDone(engine: Engine, id: StepId, done: boolean): Engine {
  const before = readingOf(engine, id);
  if (before.done === done) return engine;
  const clock = engine.clock + 1;
  return {
    ...withReading(engine, id, {
      done,
      checked: clock,
      changed: done ? clock : before.changed,
    }),
    clock,
  };
}

/** Says that a step was looked at again and still holds. */
export function confirm(engine: Engine, id: StepId): Engine {
  const clock = engine.clock + 1;
  return { ...withReading(engine, id, { checked: clock }), clock };
}

/** Adds a result from a calculator; the oldest goes when there is no more room. */
export function keep(engine: Engine, result: KeptResult): Engine {
  return { ...engine, kept: [...engine.kept, result].slice(-LIMITS.kept) };
}

export function dropKept(engine: Engine, index: number): Engine {
  return { ...engine, kept: engine.kept.filter((_, i) => i !== index) };
}

/** Keeps a text that could not be read, or forgets it. */
export function setUnread(engine: Engine, field: string, text: string | undefined): Engine {
  if (engine.unread[field] === text) return engine;
  const others = without(engine.unread, field);
  if (text === undefined) return { ...engine, unread: others };
  if (Object.keys(others).length >= LIMITS.unread) return engine;
  return { ...engine, unread: { ...others, [field]: text.slice(0, LIMITS.line) } };
}

/** Whether every cylinder of a step has its reading. */
export const isFull = (engine: Engine, id: StepId): boolean =>
  entriesOf(engine, id).every((entry) => entry !== null);
