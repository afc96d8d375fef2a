import { boxAt, NAME, NOTES, ORDER, placeOf } from './box-places.ts';
import { readingOf } from './readings.ts';
import { settled } from './set-figure.ts';
import { sheetFigures } from './figures.ts';
import { isReading, type LogEntry } from './log-entry.ts';
import { lastAt } from './log.ts';
import {
  boxName,
  boxesOf,
  checkedAt,
  LIMITS,
  type Engine,
  type Entry,
  type Reading,
} from './model.ts';
import { order, reopeners, steps, type StepId } from './steps.ts';
import { bothTexts, pick, pickAll } from './three-way.ts';

/** What stands at one place that is typed into: a value, or the text that could not be read. */
type Stand = readonly [value: unknown, text: string | null];

const MOMENTS = ['found', 'left'] as const;

/** All that stands in an engine, by its place. */
function standsOf(engine: Engine): Map<string, Stand> {
  const stands = new Map<string, Stand>();
  const put = (place: string, value: unknown): void => {
    stands.set(place, [value, engine.unread[place] ?? null]);
  };
  put(NAME, engine.name);
  put(NOTES, engine.notes);
  put(ORDER, engine.firingOrder);
  for (const [key, value] of Object.entries(engine.figures)) put(`figure:${key}`, value);
  for (const step of order) {
    for (const moment of MOMENTS) {
      readingOf(engine, step)[moment].forEach((entry, index) => {
        if (entry !== null) put(placeOf({ kind: 'reading', step, moment, index }), entry);
      });
    }
  }
  for (const place of Object.keys(engine.unread)) if (!stands.has(place)) put(place, null);
  return stands;
}

const NOTHING: Stand = [null, null];

/** What a place is called. */
function placeWords(place: string, engine: Engine): string {
  if (place === NAME) return 'name';
  if (place === NOTES) return 'notes';
  if (place === ORDER) return 'firing order';
  const box = boxAt(place);
  if (box?.kind === 'figure') return sheetFigures[box.key].label.toLowerCase();
  if (box?.kind !== 'reading') return place;
  const { title, reading } = steps[box.step];
  return `${title.toLowerCase()}, ${boxName(reading!, box.index, engine).toLowerCase()}`;
}

/** The box that an entry of the log was written from. */
const placeOfEntry = (entry: LogEntry): string | undefined =>
  isReading(entry)
    ? placeOf({
        kind: 'reading',
        step: entry.step,
        moment: entry.kind === 'found' ? 'found' : 'left',
        index: entry.cylinder - 1,
      })
    : undefined;

const inOrder = (log: readonly LogEntry[]): LogEntry[] =>
  log
    .map((entry) => [entry, JSON.stringify(entry)] as const)
    .sort(
      ([a, nameA], [b, nameB]) =>
        a.clock - b.clock || (a.on < b.on ? -1 : a.on > b.on ? 1 : nameA < nameB ? -1 : 1),
    )
    .map(([entry]) => entry);

/**
 * The two logs as one, in the order of the clock. Of a box that was read differently at once each
 * engine goes on with its own readings alone.
 */
function joinLogs(was: Engine, mine: Engine, theirs: Engine, apart: ReadonlySet<string>) {
  const isApart = (entry: LogEntry): boolean => apart.has(placeOfEntry(entry) ?? '');
  const joined = pickAll(was.log, mine.log, theirs.log).filter((entry) => !isApart(entry));
  return inOrder([...joined, ...mine.log.filter(isApart)]);
}

/** When a cylinder was last looked at, as far as the other's changes since may count on it. */
function lookedAt(was: Engine, side: Engine, other: Engine, id: StepId, index: number): number {
  const reading = readingOf(side, id);
  const movedThere = reopeners(id).some(
    (by) => readingOf(other, by).changed > readingOf(side, by).changed,
  );
  if (!steps[id].reading || !movedThere) return checkedAt(reading, index);
  // Reading one cylinder settles its whole step only for whoever knew of all that moved it.
  return Math.max(
    checkedAt(readingOf(was, id), index),
    Math.min(checkedAt(reading, index), lastAt(side, id, index)?.clock ?? 0),
  );
}

function joinReading(
  was: Engine,
  mine: Engine,
  theirs: Engine,
  id: StepId,
  boxes: number,
  entries: Pick<Reading, 'found' | 'left'>,
): Reading {
  const [before, here, there] = [was, mine, theirs].map((engine) => readingOf(engine, id)) as [
    Reading,
    Reading,
    Reading,
  ];
  const looked = Array.from({ length: boxes }, (_, i) =>
    Math.max(lookedAt(was, mine, theirs, id, i), lookedAt(was, theirs, mine, id, i)),
  );
  const checked = Math.min(...looked);
  const again = looked.map((moment) => (moment === checked ? 0 : moment));
  return {
    ...entries,
    done: pick(before.done, here.done, there.done)!.value,
    checked,
    changed:
      pick(before.changed, here.changed, there.changed)?.value ??
      Math.max(here.changed, there.changed),
    ...(again.some((moment) => moment > 0) ? { again } : {}),
  };
}

/** What stands at each place after both, this one's where they differ; and the places where they do. */
function joinStands(was: Engine, mine: Engine, theirs: Engine) {
  const [before, here, there] = [standsOf(was), standsOf(mine), standsOf(theirs)];
  const stands = new Map<string, Stand>();
  const apart = new Set<string>();
  for (const place of new Set([...before.keys(), ...here.keys(), ...there.keys()])) {
    const [b, m, t] = [before, here, there].map((all) => all.get(place) ?? NOTHING) as [
      Stand,
      Stand,
      Stand,
    ];
    const picked = pick(b, m, t);
    const notes =
      picked === undefined && place === NOTES && m[1] === null && t[1] === null
        ? bothTexts(mine.notes, theirs.notes)
        : undefined;
    if (picked) stands.set(place, picked.value);
    else if (notes !== undefined && [...notes].length <= LIMITS.notes) {
      stands.set(place, [notes, null]);
    } else {
      apart.add(place);
      stands.set(place, m);
    }
  }
  return { stands, apart };
}

/** The entries of a step's boxes among what stands. */
function entriesIn(
  stands: ReadonlyMap<string, Stand>,
  step: StepId,
  moment: (typeof MOMENTS)[number],
  most: number,
): Entry[] {
  const entries = Array.from(
    { length: most },
    (_, index) =>
      (stands.get(placeOf({ kind: 'reading', step, moment, index }))?.[0] ?? null) as Entry,
  );
  while (entries.at(-1) === null) entries.pop();
  return entries;
}

function joinOne(was: Engine, mine: Engine, theirs: Engine): readonly [Engine, Set<string>] {
  const { stands, apart } = joinStands(was, mine, theirs);
  const all = [...stands];
  const figures = Object.fromEntries(
    all.flatMap(([place, [value]]) => {
      const box = boxAt(place);
      return box?.kind === 'figure' && value !== null ? [[box.key, value]] : [];
    }),
  ) as Engine['figures'];
  const unread = Object.fromEntries(
    all.flatMap(([place, [, text]]) => (text === null ? [] : [[place, text]])),
  );
  const joined: Engine = {
    id: mine.id,
    name: stands.get(NAME)![0] as string,
    invented: pick(was.invented, mine.invented, theirs.invented)!.value,
    notes: stands.get(NOTES)![0] as string,
    firingOrder: stands.get(ORDER)![0] as number[],
    figures,
    readings: {},
    kept: pickAll(was.kept, mine.kept, theirs.kept),
    unread,
    log: joinLogs(was, mine, theirs, apart),
    archived: pick(was.archived, mine.archived, theirs.archived)!.value,
    clock: Math.max(mine.clock, theirs.clock),
  };
  const begun = order.filter((id) => mine.readings[id] ?? theirs.readings[id]);
  const readings = begun.map((id) => {
    const most = Math.max(
      ...[mine, theirs].flatMap((engine) =>
        MOMENTS.map((moment) => readingOf(engine, id)[moment].length),
      ),
    );
    const [found, left] = MOMENTS.map((moment) => entriesIn(stands, id, moment, most)) as [
      Entry[],
      Entry[],
    ];
    const boxes = Math.max(boxesOf(joined, id), most);
    return [id, joinReading(was, mine, theirs, id, boxes, { found, left })] as const;
  });
  return [settled({ ...joined, readings: Object.fromEntries(readings) }), apart];
}

/** An engine that two tabs went on with. */
export interface Joined {
  readonly engine: Engine;
  /** The same with the other tab's word where the two differ; none where they do not. */
  readonly other?: Engine;
  /** The places where they differ, in words; empty where the whole could not be joined. */
  readonly apart: readonly string[];
}

/**
 * Joins what two tabs made of one engine. Each place takes the side that changed it; the log holds
 * the entries of both, in the order of the clock, and a step that one moved while the other only
 * read part of it is read again. Two engines are left where both wrote one place differently, or
 * the whole is more than one engine holds.
 */
export function join(was: Engine, mine: Engine, theirs: Engine): Joined {
  const [engine, apart] = joinOne(was, mine, theirs);
  const fits =
    engine.log.length <= LIMITS.log &&
    engine.kept.length <= LIMITS.kept &&
    Object.keys(engine.unread).length <= LIMITS.unread;
  // A clock that was counted anew gives the same entries other moments.
  const sameClock = mine.clock >= was.clock && theirs.clock >= was.clock;
  if (!fits || !sameClock) return { engine: mine, other: theirs, apart: [] };
  if (apart.size === 0) return { engine, apart: [] };
  const [other] = joinOne(was, theirs, mine);
  return { engine, other, apart: [...apart].map((place) => placeWords(place, engine)) };
}
