import { placeOf, type Moment } from './box-places.ts';
import { tick } from './clock.ts';
import { logged, readingsAt } from './log.ts';
import { isReading, type LogEntry, type LoggedReading } from './log-entry.ts';
import { boxesOf, type Engine, type Entry, type Reading } from './model.ts';
import { movedSince, put, readingOf, withReading } from './readings.ts';
import { steps, type StepId } from './steps.ts';
import { forget } from './unread.ts';

/** A step with all its cylinders looked at. */
function allChecked({ again: _, ...reading }: Reading, clock: number): Reading {
  return { ...reading, checked: clock };
}

/**
 * A step after one cylinder of it was read: of a step that was moved, the others still wait to be
 * read again.
 */
function checkedOne(engine: Engine, id: StepId, index: number): Reading {
  const reading = readingOf(engine, id);
  const cylinders = Array.from({ length: boxesOf(engine, id) }, (_, i) => i);
  const waits = cylinders.filter(
    (i) =>
      i !== index &&
      (reading.left[i] ?? reading.found[i] ?? null) !== null &&
      movedSince(engine, id, i).length > 0,
  );
  if (waits.length === 0) return allChecked(reading, engine.clock);
  const again = Array.from({ length: Math.max(cylinders.length, index + 1) }, (_, i) =>
    i === index ? engine.clock : (reading.again?.[i] ?? 0),
  );
  return { ...reading, again };
}

/** How a reading is entered. */
export interface Manner {
  /** Whether something was changed before it, or it was only looked at; told by the figure where not said. */
  readonly kind?: 'change' | 'check' | undefined;
  /** The day, such as 2026-03-21; empty where it is not known. */
  readonly on?: string | undefined;
  /** Set where it is a reading of its own, also where it reads what stood there. */
  readonly anew?: boolean | undefined;
}

/** One box written, without a line in the log. */
function stands(
  engine: Engine,
  id: StepId,
  moment: Moment,
  index: number,
  value: Entry,
  kind?: Manner['kind'],
): Engine {
  const later = tick(engine);
  const now = readingOf(later, id);
  const found = now.found[index] ?? null;
  const held = now.left[index] ?? found;
  const altered =
    moment === 'left' && kind !== 'check' && held !== null && (value ?? found) !== held;
  const reading: Reading = {
    ...checkedOne(later, id, index),
    [moment]: put(now[moment], index, value),
    changed: altered ? later.clock : now.changed,
  };
  return { ...later, readings: { ...later.readings, [id]: reading } };
}

/**
 * Writes one reading box, and a line of the log with it. The engine counts as altered when what
 * holds at that cylinder is no longer what held before: an entry as left that differs from the one
 * before it, or from the one as found, or is taken out. A first reading as found alters nothing, nor
 * does a check: nobody turned anything, and what it finds out of its limits is to be corrected.
 */
export function setEntry(
  engine: Engine,
  id: StepId,
  moment: Moment,
  index: number,
  value: Entry,
  { kind: given, on = '', anew = false }: Manner = {},
): Engine {
  const known = forget(engine, placeOf({ kind: 'reading', step: id, moment, index }));
  const before = readingOf(known, id);
  if ((before[moment][index] ?? null) === value && (value === null || !anew)) return known;
  const written = stands(known, id, moment, index, value, given);
  if (value === null) return written;
  const held = before.left[index] ?? before.found[index] ?? null;
  const kind = moment === 'found' ? moment : (given ?? (value === held ? 'check' : 'change'));
  return logged(written, { kind, step: id, cylinder: index + 1, value }, on);
}

/** Forgets what was typed in the boxes of a cylinder and could not be read: it was read again since. */
const forgetAt = (engine: Engine, step: StepId, index: number): Engine =>
  (['found', 'left'] as const).reduce(
    (so, moment) => forget(so, placeOf({ kind: 'reading', step, moment, index })),
    engine,
  );

/** Says that a cylinder of a step was read again and reads the same: a check, which alters nothing. */
export function confirmOne(before: Engine, id: StepId, index: number, on = ''): Engine {
  const engine = forgetAt(before, id, index);
  const { found, left } = readingOf(engine, id);
  const value = left[index] ?? found[index] ?? null;
  if (value === null) return engine;
  const later = tick(engine);
  const checked = {
    ...later,
    readings: { ...later.readings, [id]: checkedOne(later, id, index) },
  };
  return logged(checked, { kind: 'check', step: id, cylinder: index + 1, value }, on);
}

/**
 * Takes a reading out of the log that was written by mistake. Where it is what stands in its box,
 * what stood there before comes back.
 */
export function withdraw(engine: Engine, entry: LoggedReading): Engine {
  const log = engine.log.filter((other) => other !== entry);
  if (log.length === engine.log.length) return engine;
  const { step, cylinder, kind, value } = entry;
  const index = cylinder - 1;
  const moment = kind === 'found' ? 'found' : 'left';
  const without = { ...engine, log };
  const here = readingsAt(engine, step, index).filter((other) => isAt(other, step, moment, index));
  if (here.at(-1) !== entry || readingOf(engine, step)[moment][index] !== value) return without;
  const earlier = readingsAt(without, step, index).filter((other) =>
    isAt(other, step, moment, index),
  );
  return stands(without, step, moment, index, earlier.at(-1)?.value ?? null);
}

/** Ticks a step without figures, or takes the tick away. What was done anew alters the engine. */
export function setDone(engine: Engine, id: StepId, done: boolean, on = ''): Engine {
  if (readingOf(engine, id).done === done) return engine;
  const later = tick(engine);
  const ticked = withReading(later, id, {
    done,
    checked: later.clock,
    changed: done ? later.clock : readingOf(later, id).changed,
  });
  return logged(ticked, { kind: done ? 'done' : 'undone', step: id }, on);
}

/** Says that a step was looked at again and still holds. */
export function confirm(engine: Engine, id: StepId, on = ''): Engine {
  const later = tick(engine);
  const { found, left, done } = readingOf(later, id);
  const reading = allChecked(readingOf(later, id), later.clock);
  const looked = { ...later, readings: { ...later.readings, [id]: reading } };
  if (!steps[id].reading) {
    return done ? logged(looked, { kind: 'done', step: id }, on) : looked;
  }
  return Array.from({ length: boxesOf(engine, id) }, (_, i) => i).reduce((so, i) => {
    const value = left[i] ?? found[i] ?? null;
    return value === null
      ? so
      : logged(forgetAt(so, id, i), { kind: 'check', step: id, cylinder: i + 1, value }, on);
  }, looked);
}

type Moments = Pick<Reading, 'changed'> & Partial<Pick<Reading, 'checked' | 'again'>>;

/** What stood in a box, and when its step was last looked at and had last altered the engine, before it was typed into. */
export interface Before extends Moments {
  readonly entry: Entry;
}

/** What a run of typing itself wrote last: the moments of its step, and its entry's clock. */
export interface WrittenLast extends Moments {
  readonly clock: number;
}

const momentsIn = ({ checked, again, changed }: Reading): Moments => ({
  checked,
  changed,
  ...(again === undefined ? {} : { again }),
});

/** What stands in a box before it is typed into. */
export function beforeTyping(engine: Engine, id: StepId, moment: Moment, index: number): Before {
  const reading = readingOf(engine, id);
  return { entry: reading[moment][index] ?? null, ...momentsIn(reading) };
}

/** What a run of typing in a box of a step has just written. */
export const writtenLast = (engine: Engine, id: StepId): WrittenLast => ({
  ...momentsIn(readingOf(engine, id)),
  clock: engine.clock,
});

/** A step as it had been looked at before a run of typing, where nobody else has looked at it since. */
function lookedBefore(reading: Reading, before: Before, written: WrittenLast | undefined): Reading {
  const { checked } = before;
  const own =
    written !== undefined &&
    reading.checked === written.checked &&
    JSON.stringify(reading.again) === JSON.stringify(written.again);
  if (!own || checked === undefined) return reading;
  const { again: _, ...rest } = reading;
  return { ...rest, checked, ...(before.again === undefined ? {} : { again: before.again }) };
}

const isAt = (entry: LogEntry, id: StepId, moment: Moment, index: number): boolean =>
  isReading(entry) &&
  entry.step === id &&
  entry.cylinder === index + 1 &&
  (entry.kind === 'found') === (moment === 'found');

/**
 * Writes a box that is being typed into: judged against what stood there `before`, so that the
 * digits on the way to a figure alter nothing and make one line of the log. What another tab wrote
 * there meanwhile stays in the log.
 */
export function retype(
  engine: Engine,
  id: StepId,
  moment: Moment,
  index: number,
  value: Entry,
  before: Before,
  written: WrittenLast | undefined,
  manner: Manner = {},
): Engine {
  const reading = readingOf(engine, id);
  const restored: Engine = {
    ...engine,
    readings: {
      ...engine.readings,
      [id]: {
        ...lookedBefore(reading, before, written),
        [moment]: put(reading[moment], index, before.entry),
        changed: reading.changed === written?.changed ? before.changed : reading.changed,
      },
    },
  };
  const log = restored.log.filter(
    (entry) => entry.clock !== written?.clock || !isAt(entry, id, moment, index),
  );
  return setEntry({ ...restored, log }, id, moment, index, value, manner);
}
