import { SheetError } from './errors.ts';
import { FORMAT, VERSION } from './model.ts';

type Unknown = Record<string, unknown>;

export const isRecord = (value: unknown): value is Unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Version 1 had one list of readings for each step, no texts that could not be read, no kept
 * results and no clock. Its readings become "as found", in the order in which they stood.
 */
function fromVersion1(document: Unknown): Unknown {
  if (!Array.isArray(document.engines)) return { ...document, version: 2 };
  return {
    ...document,
    version: 2,
    engines: (document.engines as unknown[]).map((engine) => {
      if (!isRecord(engine)) return engine;
      if (!isRecord(engine.readings)) return engine;
      const readings = Object.entries(engine.readings).map(([id, list], i): [string, unknown] => [
        id,
        list === true
          ? { found: [], left: [], done: true, checked: i + 1, changed: 0 }
          : { found: list, left: [], done: false, checked: i + 1, changed: 0 },
      ]);
      return {
        kept: [],
        unread: {},
        ...engine,
        readings: Object.fromEntries(readings),
        clock: readings.length,
      };
    }),
  };
}

const momentOf = (value: unknown): number => (Number.isSafeInteger(value) ? Number(value) : 0);

/** The log that the readings of version 2 make, step by step: each pair with what is known of when. */
function logOf(readings: Unknown): Unknown[] {
  return Object.entries(readings).flatMap(([step, reading]): Unknown[] => {
    if (!isRecord(reading)) return [];
    const { found, left, done } = reading;
    const changed = momentOf(reading.changed);
    const clock = changed > 0 ? changed : momentOf(reading.checked);
    const entries = (values: unknown, entry: (value: number, index: number) => Unknown) =>
      (Array.isArray(values) ? (values as unknown[]) : []).flatMap((value, index) =>
        typeof value === 'number'
          ? [{ ...entry(value, index), step, cylinder: index + 1, on: '' }]
          : [],
      );
    const asFound = (index: number): unknown => (Array.isArray(found) ? found[index] : undefined);
    return [
      ...entries(found, (value) => ({
        kind: 'found',
        value,
        clock: changed > 0 ? changed - 1 : clock,
      })),
      ...entries(left, (value, index) => ({
        kind: value === asFound(index) ? 'check' : 'change',
        value,
        clock,
      })),
      ...(done === true ? [{ kind: 'done', step, clock, on: '' }] : []),
    ];
  });
}

/** Version 2 kept of each box the last figure alone: these begin the log, on a day not known. */
function fromVersion2(document: Unknown): Unknown {
  if (!Array.isArray(document.engines)) return { ...document, version: 3 };
  return {
    ...document,
    version: 3,
    engines: (document.engines as unknown[]).map((engine) =>
      isRecord(engine)
        ? {
            ...engine,
            log: isRecord(engine.readings) ? logOf(engine.readings) : [],
            archived: false,
          }
        : engine,
    ),
  };
}

const migrations: Readonly<Record<number, (document: Unknown) => Unknown>> = {
  1: fromVersion1,
  2: fromVersion2,
};

/** Brings a document of any version known so far to the present one. */
export function migrate(document: unknown): Unknown {
  if (!isRecord(document) || document.format !== FORMAT) {
    throw new SheetError(
      'not-a-sheet',
      `This is not an engine sheet: it does not say "format": "${FORMAT}". Choose a file that was saved by the engine sheet.`,
    );
  }
  const { version } = document;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    throw new SheetError(
      'no-version',
      `This engine sheet does not say its version as a whole number from 1 to ${String(VERSION)}, so it cannot be read safely. Nothing was taken from it.`,
    );
  }
  if (version > VERSION) {
    throw new SheetError(
      'future-version',
      `This engine sheet is of version ${String(version)}, and this page knows versions 1 to ${String(VERSION)}. Reload the page to get the newest one, then try again. Nothing was taken from it.`,
    );
  }
  let migrated: Unknown = document;
  for (let from = version; from < VERSION; from += 1) migrated = migrations[from]!(migrated);
  return migrated;
}
