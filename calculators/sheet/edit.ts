import { orderWords } from './firing-order.ts';
import {
  boxAt,
  canKeep,
  isRefused,
  NAME,
  isTravel,
  NOTES,
  ORDER,
  placeOf,
  readNumber,
  readOrder,
  type Box,
  type Moment,
} from './boxes.ts';
import { SheetError } from './errors.ts';
import { MOST_CYLINDERS, type FigureKey } from './figures.ts';
import { strokeOf } from './geometry.ts';
import { readingsAt, logged } from './log.ts';
import { isReading, type LogEntry, type LoggedReading } from './log-entry.ts';
import {
  checkedAt,
  boxesOf,
  LIMITS,
  UNNAMED,
  type Engine,
  type Entry,
  type KeptResult,
  type Reading,
} from './model.ts';
import { order, reopeners, steps, type StepId } from './steps.ts';

export type { Moment };

const blank: Reading = { found: [], left: [], done: false, checked: 0, changed: 0 };

export const readingOf = (engine: Engine, id: StepId): Reading => engine.readings[id] ?? blank;

const without = <R extends Readonly<Record<string, unknown>>>(group: R, key: string): R =>
  Object.fromEntries(Object.entries(group).filter(([other]) => other !== key)) as R;

/** Forgets a text that could not be read. */
const forget = (engine: Engine, place: string): Engine =>
  Object.hasOwn(engine.unread, place)
    ? { ...engine, unread: without(engine.unread, place) }
    : engine;

/** The firing order again, by the number of cylinders that the sheet has now. */
function fitOrder(engine: Engine): Engine {
  const text = engine.unread[ORDER] ?? orderWords(engine);
  if (text === '') return engine;
  const field = readOrder(engine, text, { lengths: 'mm' });
  return !isRefused(field)
    ? setOrder(engine, field.value)
    : refuse(engine, { kind: 'order' }, text);
}

/** Every place that holds a place of the piston. */
const travels: readonly (Box & { kind: 'figure' | 'reading' })[] = [
  ...(['target'] as const).map((key) => ({ kind: 'figure', key }) as const),
  ...order
    .filter((step) => isTravel({ kind: 'reading', step }))
    .flatMap((step) =>
      (['found', 'left'] as const).flatMap((moment) =>
        Array.from(
          { length: MOST_CYLINDERS },
          (_, index) => ({ kind: 'reading', step, moment, index }) as const,
        ),
      ),
    ),
];

/** Writes what stands at a place, without a change of the engine. */
function stand(engine: Engine, box: (typeof travels)[number], value: number | undefined): Engine {
  if (box.kind === 'reading') {
    const entries = put(readingOf(engine, box.step)[box.moment], box.index, value ?? null);
    return withReading(engine, box.step, { [box.moment]: entries });
  }
  const others = without(engine.figures, box.key);
  return { ...engine, figures: value === undefined ? others : { ...others, [box.key]: value } };
}

/** Takes out every place of the piston that its stroke does not reach, and keeps it as a text. */
function withinStroke(engine: Engine): Engine {
  const most = strokeOf(engine);
  if (most === undefined) return engine;
  return travels.reduce((so, box) => {
    const value =
      box.kind === 'figure' ? so.figures[box.key] : so.readings[box.step]?.[box.moment][box.index];
    return value === undefined || value === null || Math.abs(value) <= most
      ? so
      : refuse(stand(so, box, undefined), box, String(value));
  }, engine);
}

/** The places of the piston again, by the stroke that the sheet has now. */
const fitTravels = (engine: Engine): Engine =>
  travels.reduce((so, box) => {
    const place = placeOf(box);
    const text = so.unread[place];
    if (text === undefined) return so;
    const field = readNumber(so, box, text, { lengths: 'mm' });
    return isRefused(field) ? so : forget(stand(so, box, field.value), place);
  }, withinStroke(engine));

/** What a reader measures of the engine itself: readings were taken on it as it was. */
const isMeasured = (key: FigureKey): boolean => steps.measure.figures?.includes(key) ?? false;

/** The engine with a change of its own measures in the log: the digits on the way to a figure are one change. */
function figureLogged(engine: Engine, figure: FigureKey, value: number | null, on: string): Engine {
  const last = engine.log.at(-1);
  const same = last?.kind === 'figure' && last.figure === figure && last.on === on;
  const log = same ? engine.log.slice(0, -1) : engine.log;
  return logged({ ...engine, log }, { kind: 'figure', figure, value }, on);
}

/** Enters a figure, or takes it out; `on` is the day. */
export function setFigure(
  before: Engine,
  key: FigureKey,
  value: number | undefined,
  on = '',
): Engine {
  const engine = forget(before, placeOf({ kind: 'figure', key }));
  if (engine.figures[key] === value) return engine;
  const others = without(engine.figures, key);
  const figures = value === undefined ? others : { ...others, [key]: value };
  const moved = { ...engine, figures };
  if (key === 'cylinders' || key === 'sets') return fitOrder(moved);
  const entered = key === 'stroke' || key === 'rod' || key === 'offset' ? fitTravels(moved) : moved;
  // Another stroke, rod, offset or bore is another engine to those who measured on it.
  if (!isMeasured(key) || engine.figures[key] === undefined) return entered;
  const later = tick(entered);
  const changed = withReading(later, 'measure', { changed: later.clock });
  // Before anything was read on it, it is only being entered.
  return engine.log.some(isReading) ? figureLogged(changed, key, value ?? null, on) : changed;
}

function withReading(engine: Engine, id: StepId, change: Partial<Reading>): Engine {
  const reading = { ...readingOf(engine, id), ...change };
  return { ...engine, readings: { ...engine.readings, [id]: reading } };
}

const momentsOf = ({ checked, changed, again = [] }: Reading): number[] => [
  checked,
  changed,
  ...again,
];

/** The engine's moments in their order, counted anew from the first. */
export function recounted(engine: Engine): Engine {
  const readings = Object.entries(engine.readings) as [StepId, Reading][];
  const moments = [
    ...readings.flatMap(([, reading]) => momentsOf(reading)),
    ...engine.log.map(({ clock }) => clock),
  ];
  const ranks = new Map(
    [...new Set([0, ...moments])].sort((a, b) => a - b).map((moment, rank) => [moment, rank]),
  );
  return {
    ...engine,
    readings: Object.fromEntries(
      readings.map(([id, reading]) => [
        id,
        {
          ...reading,
          checked: ranks.get(reading.checked)!,
          changed: ranks.get(reading.changed)!,
          ...(reading.again === undefined
            ? {}
            : { again: reading.again.map((moment) => ranks.get(moment)!) }),
        },
      ]),
    ),
    log: engine.log.map((entry) => ({ ...entry, clock: ranks.get(entry.clock)! })),
    clock: ranks.size,
  };
}

/** The latest moment of anything in the engine. */
export const momentNow = (engine: Engine): number =>
  Math.max(
    engine.clock,
    engine.log.at(-1)?.clock ?? 0,
    ...Object.values(engine.readings).flatMap(momentsOf),
  );

/**
 * The engine with its clock no earlier than a moment of the wall clock, in whole seconds: what two
 * tabs write apart from each other falls into the order in which it was written.
 */
export const wound = (engine: Engine, moment: number): Engine =>
  engine.clock < moment ? { ...engine, clock: moment } : engine;

/** The engine one change later than anything in it; a clock that has run out is set back. */
function tick(engine: Engine): Engine {
  const clock = momentNow(engine) + 1;
  return clock > Number.MAX_SAFE_INTEGER ? recounted(engine) : { ...engine, clock };
}

/** The list with one place set; no longer than its last entry. */
function put(list: readonly Entry[], index: number, value: Entry): Entry[] {
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

/** Adds hours that the engine has run. */
export const addHours = (engine: Engine, value: number, on = ''): Engine =>
  logged(tick(engine), { kind: 'hours', value }, on);

/** Adds a note to the log. */
export const addNote = (engine: Engine, text: string, on = ''): Engine =>
  logged(tick(engine), { kind: 'note', text }, on);

/** Ticks a line of the list of the first start, or takes the tick away. */
export const tickLine = (engine: Engine, line: string, ticked: boolean, on = ''): Engine =>
  logged(tick(engine), { kind: ticked ? 'ticked' : 'unticked', line }, on);

/** Begins the list of the first start anew. */
export const beginList = (engine: Engine, on = ''): Engine =>
  logged(tick(engine), { kind: 'anew' }, on);

/** Takes out of the log what is no reading. */
export const dropEntry = (engine: Engine, entry: LogEntry): Engine =>
  isReading(entry)
    ? withdraw(engine, entry)
    : { ...engine, log: engine.log.filter((other) => other !== entry) };

/** Puts back what was taken out of the log, where nothing was written since. */
export const putBack = (engine: Engine, was: Engine, taken: Engine): Engine =>
  isUntouched(engine, taken)
    ? { ...engine, log: was.log, readings: was.readings, clock: momentNow(was) + 1 }
    : engine;

/** Whether the log and the readings of an engine are as they were left. */
export const isUntouched = (engine: Engine, left: Engine): boolean =>
  JSON.stringify([engine.log, engine.readings]) === JSON.stringify([left.log, left.readings]);

/** Adds a result from a calculator; throws a SheetError where the sheet has no room for it. */
export function keep(engine: Engine, result: KeptResult): Engine {
  const { label, text, query } = result;
  const what = [...label].slice(0, 60).join('');
  if (engine.kept.length >= LIMITS.kept) {
    throw new SheetError(
      'list-full',
      `The list of results holds ${String(LIMITS.kept)}, which is all it has room for. Remove some in the sheet first, or copy this one as a link.`,
    );
  }
  if ([...label].length > LIMITS.line || [...text].length > LIMITS.line) {
    throw new SheetError(
      'too-long',
      `“${what}” is longer than the ${String(LIMITS.line)} characters that the list of results has room for. Copy it as a text instead.`,
    );
  }
  if (query.length > LIMITS.query) {
    throw new SheetError(
      'too-long',
      `The link back from “${what}” has ${String(query.length)} characters, and the list of results has room for ${String(LIMITS.query)}. Copy it as a link instead.`,
    );
  }
  return { ...engine, kept: [...engine.kept, result] };
}

export function dropKept(engine: Engine, index: number): Engine {
  return { ...engine, kept: engine.kept.filter((_, i) => i !== index) };
}

export const setOrder = (engine: Engine, firingOrder: readonly number[]): Engine => ({
  ...forget(engine, ORDER),
  firingOrder,
});

export const setName = (engine: Engine, name: string): Engine => ({
  ...forget(engine, NAME),
  name,
});

export const setNotes = (engine: Engine, notes: string): Engine => ({
  ...forget(engine, NOTES),
  notes,
});

/** The engine with nothing at one place, which is no reading. */
function emptied(engine: Engine, box: Exclude<Box, { kind: 'reading' }>): Engine {
  switch (box.kind) {
    case 'figure':
      return setFigure(engine, box.key, undefined);
    case 'order':
      return engine.firingOrder.length === 0 ? engine : setOrder(engine, []);
    case 'name':
      return engine.name === UNNAMED ? engine : setName(engine, UNNAMED);
    case 'notes':
      return engine.notes === '' ? engine : setNotes(engine, '');
  }
}

/**
 * Keeps a text that cannot be read, with nothing standing at its place: a figure that the page
 * calls wrong is held nowhere. Only a reading box keeps what was last read there: a slip of the
 * pen undoes no measurement, and the one before it may be of an engine that was altered since. A
 * text too long to be kept stays with whoever typed it.
 */
export function refuse(engine: Engine, box: Box, text: string): Engine {
  const place = placeOf(box);
  const empty = box.kind === 'reading' ? engine : emptied(engine, box);
  if (!canKeep(place, text)) return forget(empty, place);
  if (empty.unread[place] === text) return empty;
  const others = Object.entries(empty.unread).filter(([other]) => other !== place);
  // Texts of boxes that this sheet does not have make room first.
  const kept =
    others.length < LIMITS.unread ? others : others.filter(([other]) => boxAt(other) !== undefined);
  return { ...empty, unread: Object.fromEntries([...kept, [place, text]]) };
}

const inOrder = (log: readonly LogEntry[]): boolean =>
  log.every(({ clock }, i) => i === 0 || log[i - 1]!.clock <= clock);

/**
 * An engine from elsewhere, as this sheet would have kept it: no figure stands where a text was
 * refused, and the log is in the order of the engine's clock.
 */
export function settled(engine: Engine): Engine {
  let next = inOrder(engine.log)
    ? engine
    : { ...engine, log: [...engine.log].sort((a, b) => a.clock - b.clock) };
  for (const [place, text] of Object.entries(engine.unread)) {
    const box = boxAt(place);
    if (box && box.kind !== 'reading') next = refuse(next, box, text);
  }
  return fitOrder(withinStroke(next));
}

/** Whether a step has anything entered. */
export function isBegun(engine: Engine, id: StepId): boolean {
  const { found, left, done } = readingOf(engine, id);
  return done || [...found, ...left].some((entry) => entry !== null);
}
