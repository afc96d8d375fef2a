import { boxAt, canKeep, NAME, NOTES, ORDER, placeOf, type Box } from './box-places.ts';
import { isTravel } from './box-specs.ts';
import { tick } from './clock.ts';
import { MOST_CYLINDERS, type FigureKey } from './figures.ts';
import { orderWords } from './firing-order.ts';
import { strokeOf } from './geometry.ts';
import { logged } from './log.ts';
import { isReading, type LogEntry } from './log-entry.ts';
import { LIMITS, setsOf, UNNAMED, type Engine } from './model.ts';
import { isRefused, readNumber } from './read-number.ts';
import { readOrder } from './read-order.ts';
import { put, readingOf, withReading } from './readings.ts';
import { order, steps } from './steps.ts';
import { forget, without } from './unread.ts';

/** What says how many cylinders fire, and how many of them at once. */
const countsFirings: ReadonlySet<FigureKey> = new Set([
  'cylinders',
  'sets',
  'lobes',
  'speed-ratio',
]);

/** The firing order again, by the cylinders and sets that the sheet has now, as it was written before. */
function fitOrder(engine: Engine, before = engine): Engine {
  // By one set all are fired, in whatever order they were named.
  const stood = setsOf(before) === 1 ? orderWords(engine, before.firingOrder) : orderWords(before);
  const text = engine.unread[ORDER] ?? stood;
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
  if (countsFirings.has(key)) return fitOrder(moved, engine);
  const entered = key === 'stroke' || key === 'rod' || key === 'offset' ? fitTravels(moved) : moved;
  // Another stroke, rod, offset or bore is another engine to those who measured on it.
  if (!isMeasured(key) || engine.figures[key] === undefined) return entered;
  const later = tick(entered);
  const changed = withReading(later, 'measure', { changed: later.clock });
  // Before anything was read on it, it is only being entered.
  return engine.log.some(isReading) ? figureLogged(changed, key, value ?? null, on) : changed;
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
