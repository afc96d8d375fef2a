import { readingOf } from './readings.ts';
import { isReading, type LogEntry, type LoggedReading } from './log-entry.ts';
import { isRecord } from './migrate.ts';
import { checkedAt, type Engine } from './model.ts';
import { outdatedAt } from './outdated.ts';
import { order, type StepId } from './steps.ts';

/*
 * The days of the readings that stand, for a link: a step's days as found and as left, box by box,
 * or the day of its tick. A day is counted from the earliest, which is 2; 1 is one that is not
 * known, 0 none. A check is negative; a change that was not the step's last has how much earlier it
 * was beside it.
 */
type Day = number | readonly [day: number, earlier: number];
/** Of a step with boxes its days as found and as left; of one that is ticked its day. */
type Told = readonly [found: readonly Day[], left: readonly Day[]] | number;

export interface LinkDays {
  readonly from: string;
  readonly at: Readonly<Partial<Record<StepId, Told>>>;
}

const DAY_MS = 86_400_000;
const FIRST = 2;
/** A reading is a few hundred years from the next at most. */
const MOST_DAYS = 1_000_000;

const count = (on: string, from: string): number =>
  on === '' ? 1 : Math.round((Date.parse(on) - Date.parse(from)) / DAY_MS) + FIRST;

function dayAt(code: number, from: string): string {
  if (code < FIRST) return '';
  return new Date(Date.parse(from) + (code - FIRST) * DAY_MS).toISOString().slice(0, 10);
}

const trimmed = (days: readonly Day[]): Day[] =>
  days.slice(0, days.findLastIndex((day) => day !== 0) + 1);

/** The entries of the log that tell when what stands in a step's boxes was read. */
function standing(
  engine: Engine,
  id: StepId,
  moment: 'found' | 'left',
): (LoggedReading | undefined)[] {
  const old = outdatedAt(engine, id);
  return readingOf(engine, id)[moment].map((value, i) => {
    // One that tells nothing any more goes without its day: it would seem to be of the last turning.
    if (old.includes(i)) return undefined;
    const last = engine.log.findLast(
      (entry): entry is LoggedReading =>
        isReading(entry) &&
        entry.step === id &&
        entry.cylinder === i + 1 &&
        (entry.kind === 'found') === (moment === 'found'),
    );
    return last?.value === value ? last : undefined;
  });
}

/** When each reading that stands in an engine was taken. */
export function linkDays(engine: Engine): LinkDays {
  const tick = (id: StepId): LogEntry | undefined =>
    readingOf(engine, id).done
      ? engine.log.findLast((entry) => entry.kind === 'done' && entry.step === id)
      : undefined;
  const entries = order.map((id) => ({
    id,
    found: standing(engine, id, 'found'),
    left: standing(engine, id, 'left'),
    done: tick(id),
  }));
  const days = entries.flatMap(({ found, left, done }) =>
    [...found, ...left, done].flatMap((entry) => (entry && entry.on !== '' ? [entry.on] : [])),
  );
  const from = days.sort()[0] ?? '';
  const dayOf = (entry: LogEntry | undefined): number => (entry ? count(entry.on, from) : 0);
  const at: [StepId, Told][] = [];
  for (const { id, found, left, done } of entries) {
    const { changed } = readingOf(engine, id);
    const lefts = left.map((entry): Day => {
      if (entry?.kind === 'check') return -dayOf(entry);
      const earlier = entry ? changed - entry.clock : 0;
      return earlier === 0 ? dayOf(entry) : [dayOf(entry), earlier];
    });
    const both = [trimmed(found.map(dayOf)), trimmed(lefts)] as const;
    if (done) at.push([id, dayOf(done)]);
    else if (both.flat().length > 0) at.push([id, both]);
  }
  return { from, at: Object.fromEntries(at) };
}

const isDay = (day: unknown): day is number =>
  Number.isInteger(day) && Math.abs(day as number) < MOST_DAYS;

/**
 * The engine with the entries that such days tell of, for its reader to look at closely; nothing
 * where they are not of this form.
 */
export function withLinkDays(engine: Engine, days: unknown): Engine | undefined {
  if (!isRecord(days) || !isRecord(days.at) || typeof days.from !== 'string') return undefined;
  const { from, at } = days;
  if (from !== '' && Number.isNaN(Date.parse(from))) return undefined;
  const log: LogEntry[] = [];
  for (const step of order) {
    const told = at[step];
    if (told === undefined) continue;
    const reading = readingOf(engine, step);
    if (isDay(told)) {
      if (!reading.done) return undefined;
      log.push({ kind: 'done', step, clock: reading.checked, on: dayAt(told, from) });
      continue;
    }
    if (!Array.isArray(told) || !told.every(Array.isArray)) return undefined;
    const [found = [], left = []] = told as unknown[][];
    for (const [i, day] of found.entries()) {
      const value = reading.found[i] ?? null;
      if (!isDay(day)) return undefined;
      if (day === 0 || value === null) continue;
      const clock = (reading.left[i] ?? null) === null ? checkedAt(reading, i) : 0;
      log.push({ kind: 'found', step, cylinder: i + 1, value, clock, on: dayAt(day, from) });
    }
    for (const [i, entry] of left.entries()) {
      const value = reading.left[i] ?? null;
      const [day, earlier] = (Array.isArray(entry) ? entry : [entry, 0]) as unknown[];
      if (!isDay(day) || !isDay(earlier)) return undefined;
      if (day === 0 || value === null) continue;
      const kind = day < 0 ? 'check' : 'change';
      const clock = day < 0 ? checkedAt(reading, i) : reading.changed - earlier;
      const on = dayAt(Math.abs(day), from);
      log.push({ kind, step, cylinder: i + 1, value, clock, on });
    }
  }
  return { ...engine, log };
}
