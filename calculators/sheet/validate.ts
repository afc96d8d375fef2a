import { isDraft } from './box-places.ts';
import { settled } from './set-figure.ts';
import { SheetError } from './errors.ts';
import { isFigureKey, MOST_CYLINDERS, sheetFigures } from './figures.ts';
import type { LogEntry } from './log-entry.ts';
import { isRecord, migrate } from './migrate.ts';
import {
  documentOf,
  FORMAT,
  LIMITS,
  VERSION,
  type Engine,
  type KeptResult,
  type Reading,
  type SheetDocument,
} from './model.ts';
import { isStepId, steps, type StepId } from './steps.ts';

type Unknown = Record<string, unknown>;

/** A value in a few words. A group or list is not written out: it may be nested past any depth. */
const show = (value: unknown): string => {
  if (Array.isArray(value)) return `a list of ${String(value.length)}`;
  if (isRecord(value)) return 'a group of named values';
  const text = JSON.stringify(value) ?? 'nothing';
  return text.length > 40 ? `${[...text].slice(0, 40).join('')}…` : text;
};

function refuse(where: string, what: string): never {
  throw new SheetError('invalid', `${where} ${what}. Nothing was taken from it.`);
}

/** The value as a record that holds these keys, perhaps some more, and no others. */
function record(
  value: unknown,
  where: string,
  keys?: readonly string[],
  mayHold: readonly string[] = [],
): Unknown {
  if (!isRecord(value)) refuse(where, `should be a group of named values and is ${show(value)}`);
  if (keys) {
    for (const key of Object.keys(value)) {
      if (!keys.includes(key) && !mayHold.includes(key))
        refuse(where, `holds ${show(key)}, which this version does not know`);
    }
    for (const key of keys) if (!Object.hasOwn(value, key)) refuse(where, `lacks ${show(key)}`);
  }
  return value;
}

function list(value: unknown, where: string, most: number): unknown[] {
  if (!Array.isArray(value)) refuse(where, `should be a list and is ${show(value)}`);
  if (value.length > most) {
    refuse(where, `holds ${String(value.length)} entries, and ${String(most)} is the most`);
  }
  return value as unknown[];
}

function text(value: unknown, where: string, most: number, least = 0): string {
  if (typeof value !== 'string') refuse(where, `should be a text and is ${show(value)}`);
  if ([...value].length > most || value.length < least) {
    refuse(where, `should have from ${String(least)} to ${String(most)} characters`);
  }
  return value;
}

function number(value: unknown, where: string, min: number, max: number, whole = false): number {
  if (typeof value !== 'number' || !(value >= min && value <= max)) {
    refuse(where, `must be a number from ${String(min)} to ${String(max)} and is ${show(value)}`);
  }
  if (whole && !Number.isInteger(value))
    refuse(where, `must be a whole number and is ${show(value)}`);
  return value;
}

function flag(value: unknown, where: string): boolean {
  if (typeof value !== 'boolean') refuse(where, `must be true or false and is ${show(value)}`);
  return value;
}

const COUNT = Number.MAX_SAFE_INTEGER;

/** The patterns of texts that are names of something, shared with the schema. */
export const PATTERNS = {
  id: '^[a-z0-9-]{1,40}$',
  calculator: '^[a-z][a-z0-9-]{0,59}$',
  query: `^[A-Za-z0-9%=&.,/:;+_~*!()'-]{0,${String(LIMITS.query)}}$`,
  unread: '^(?:figure|order|found|left|text):[a-z0-9:-]{1,60}$',
  on: '^(?:[0-9]{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12][0-9]|3[01]))?$',
  line: '^[a-z0-9-]{1,100}$',
} as const;

function pattern(value: unknown, where: string, name: keyof typeof PATTERNS): string {
  if (typeof value !== 'string' || !new RegExp(PATTERNS[name], 'u').test(value)) {
    refuse(where, `is ${show(value)}, which is not of the form ${PATTERNS[name]}`);
  }
  return value;
}

function readFiringOrder(value: unknown, where: string): number[] {
  const members = list(value, where, MOST_CYLINDERS).map((member) =>
    number(member, where, 1, MOST_CYLINDERS, true),
  );
  if (new Set(members).size < members.length) refuse(where, 'names a cylinder twice');
  return members;
}

function readFigures(value: unknown, where: string): Engine['figures'] {
  const figures = Object.entries(record(value, where)).map(([key, figure]) => {
    if (!isFigureKey(key)) refuse(where, `holds ${show(key)}, which is no figure of the sheet`);
    const { label, min, max, whole } = sheetFigures[key];
    return [key, number(figure, `${where}, ${label.toLowerCase()}`, min, max, whole)] as const;
  });
  return Object.fromEntries(figures);
}

function readReadings(value: unknown, where: string): Engine['readings'] {
  const readings = Object.entries(record(value, where)).map(([id, entry]) => {
    if (!isStepId(id)) refuse(where, `holds ${show(id)}, which is no step of the job`);
    const here = `${where}, ${steps[id].title.toLowerCase()},`;
    const keys = ['found', 'left', 'done', 'checked', 'changed'];
    const { found, left, done, checked, changed, again } = record(entry, here, keys, ['again']);
    const moment = (value: unknown): number => number(value, here, 0, COUNT, true);
    const { reading } = steps[id];
    const entries = (values: unknown): (number | null)[] =>
      list(values, here, reading ? MOST_CYLINDERS : 0).map((member) =>
        member === null ? null : number(member, here, reading!.min, reading!.max, reading!.whole),
      );
    const read: Reading = {
      found: entries(found),
      left: entries(left),
      done: flag(done, here),
      checked: moment(checked),
      changed: moment(changed),
      ...(again === undefined ? {} : { again: list(again, here, MOST_CYLINDERS).map(moment) }),
    };
    return [id, read] as const;
  });
  return Object.fromEntries(readings);
}

function readKept(value: unknown, where: string): KeptResult[] {
  return list(value, where, LIMITS.kept).map((entry) => {
    const keys = ['label', 'text', 'calculator', 'query'];
    const kept = record(entry, where, keys);
    return {
      label: text(kept.label, where, LIMITS.line),
      text: text(kept.text, where, LIMITS.line),
      calculator: pattern(kept.calculator, where, 'calculator'),
      query: pattern(kept.query, where, 'query'),
    };
  });
}

function readUnread(value: unknown, where: string): Record<string, string> {
  const entries = Object.entries(record(value, where));
  if (entries.length > LIMITS.unread)
    refuse(where, `holds more than ${String(LIMITS.unread)} texts`);
  return Object.fromEntries(
    entries.map(([key, entry]) => [
      pattern(key, where, 'unread'),
      text(entry, where, isDraft(key) ? LIMITS.draft : LIMITS.line),
    ]),
  );
}

/** What an entry of the log holds beside its kind, its clock and its day. */
export const ENTRY_KEYS = {
  found: ['step', 'cylinder', 'value'],
  change: ['step', 'cylinder', 'value'],
  check: ['step', 'cylinder', 'value'],
  done: ['step'],
  undone: ['step'],
  figure: ['figure', 'value'],
  hours: ['value'],
  note: ['text'],
  ticked: ['line'],
  unticked: ['line'],
  anew: [],
} as const satisfies Record<LogEntry['kind'], readonly string[]>;

const isKind = (kind: unknown): kind is LogEntry['kind'] =>
  typeof kind === 'string' && Object.hasOwn(ENTRY_KEYS, kind);

function readStep(value: unknown, where: string): StepId {
  if (typeof value !== 'string' || !isStepId(value)) {
    refuse(where, `names ${show(value)}, which is no step of the job`);
  }
  return value;
}

function readEntry(value: unknown, where: string): LogEntry {
  const { kind } = record(value, where);
  if (!isKind(kind))
    refuse(where, `is of the kind ${show(kind)}, which this version does not know`);
  const entry = record(value, where, ['kind', 'clock', 'on', ...ENTRY_KEYS[kind]]);
  const written = {
    clock: number(entry.clock, where, 0, COUNT, true),
    on: pattern(entry.on, where, 'on'),
  };
  switch (kind) {
    case 'found':
    case 'change':
    case 'check': {
      const step = readStep(entry.step, where);
      const { reading } = steps[step];
      if (!reading) refuse(where, `names ${show(step)}, which has no readings`);
      const { min, max, whole } = reading;
      const cylinder = number(entry.cylinder, where, 1, MOST_CYLINDERS, true);
      return {
        kind,
        step,
        cylinder,
        value: number(entry.value, where, min, max, whole),
        ...written,
      };
    }
    case 'done':
    case 'undone':
      return { kind, step: readStep(entry.step, where), ...written };
    case 'figure': {
      const { figure } = entry;
      if (typeof figure !== 'string' || !isFigureKey(figure)) {
        refuse(where, `names ${show(figure)}, which is no figure of the sheet`);
      }
      const { min, max, whole } = sheetFigures[figure];
      const figures = entry.value === null ? null : number(entry.value, where, min, max, whole);
      return { kind, figure, value: figures, ...written };
    }
    case 'hours':
      return { kind, value: number(entry.value, where, 0, LIMITS.hours), ...written };
    case 'note':
      return { kind, text: text(entry.text, where, LIMITS.entry, 1), ...written };
    case 'ticked':
    case 'unticked':
      return { kind, line: pattern(entry.line, where, 'line'), ...written };
    case 'anew':
      return { kind, ...written };
  }
}

const readLog = (value: unknown, where: string): LogEntry[] =>
  list(value, where, LIMITS.log).map((entry, i) =>
    readEntry(entry, `${where}, entry ${String(i + 1)},`),
  );

const ENGINE_KEYS = [
  'id',
  'name',
  'invented',
  'notes',
  'firingOrder',
  'figures',
  'readings',
  'kept',
  'unread',
  'log',
  'archived',
  'clock',
];

/** One engine out of whatever it was; throws a SheetError that names what is wrong and where. */
export function readEngine(value: unknown, where = 'The engine'): Engine {
  const engine = record(value, where, ENGINE_KEYS);
  const name = text(engine.name, `${where}’s name`, LIMITS.name, 1);
  const whose = `“${name}”:`;
  return settled({
    id: pattern(engine.id, `${whose} the id`, 'id'),
    name,
    invented: flag(engine.invented, `${whose} the mark for an invented engine`),
    notes: text(engine.notes, `${whose} the notes`, LIMITS.notes),
    firingOrder: readFiringOrder(engine.firingOrder, `${whose} the firing order`),
    figures: readFigures(engine.figures, `${whose} the figures`),
    readings: readReadings(engine.readings, `${whose} the readings`),
    kept: readKept(engine.kept, `${whose} the kept results`),
    unread: readUnread(engine.unread, `${whose} the texts not read`),
    log: readLog(engine.log, `${whose} the log`),
    archived: flag(engine.archived, `${whose} the mark for an engine laid aside`),
    clock: number(engine.clock, `${whose} the clock`, 0, COUNT, true),
  });
}

/** A document of any known version out of whatever it was. */
export function readDocument(value: unknown): SheetDocument {
  const document = record(migrate(value), 'The document', ['format', 'version', 'engines']);
  if (document.format !== FORMAT || document.version !== VERSION) {
    throw new SheetError('not-a-sheet', 'This is not an engine sheet.');
  }
  const engines = list(document.engines, 'The list of engines', LIMITS.engines).map((engine, i) =>
    readEngine(engine, `Engine ${String(i + 1)}`),
  );
  if (new Set(engines.map(({ id }) => id)).size < engines.length) {
    refuse('The list of engines', 'holds two of one id');
  }
  return documentOf(engines);
}

/** The text as JSON, if it is short enough to be a sheet at all. */
export function parseJson(source: string): unknown {
  if (source.length > LIMITS.text) {
    throw new SheetError(
      'too-large',
      `This file holds ${source.length.toLocaleString('en-GB')} characters; an engine sheet holds at most ${LIMITS.text.toLocaleString('en-GB')}. It is not one, or it is damaged. Nothing was taken from it.`,
    );
  }
  try {
    return JSON.parse(source);
  } catch {
    throw new SheetError(
      'not-json',
      'This file is not complete JSON text, so it is damaged or not an engine sheet. Nothing was taken from it; keep the file, and try the place it came from again.',
    );
  }
}

/** The text of a file that holds these engines; throws a SheetError where it could not be opened again. */
export function writeDocument(engines: readonly Engine[]): string {
  const document = documentOf(engines);
  const spread = `${JSON.stringify(document, null, 2)}\n`;
  const text = spread.length > LIMITS.text ? JSON.stringify(document) : spread;
  if (text.length > LIMITS.text) {
    throw new SheetError(
      'too-large',
      `A file of these ${String(engines.length)} engines would hold ${text.length.toLocaleString('en-GB')} characters, and one that can be opened again holds at most ${LIMITS.text.toLocaleString('en-GB')}. Save the engines one by one.`,
    );
  }
  return text;
}
