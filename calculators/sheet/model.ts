import type { FigureKey } from './figures.ts';
import type { LogEntry } from './log-entry.ts';
import { firedByEach } from '../frame/text/order.ts';
import { isOfSet, steps, type StepId, type StepReading } from './steps.ts';

/** Written into every document. A change that old readers would misread raises it. */
export const VERSION = 3;
export const FORMAT = 'engine-sheet';

export const LIMITS = {
  /** Characters of a document, as text: more than a browser lets a site keep, so that whatever is kept fits a file. */
  text: 6_000_000,
  engines: 50,
  name: 80,
  notes: 2000,
  kept: 60,
  line: 200,
  query: 2000,
  /** Texts that could not be read: room for one at every place of the sheet. */
  unread: 700,
  /** Entries of an engine's log, and characters of one note in it. */
  log: 3000,
  entry: 1000,
  /** Hours that an engine is said to have run at once. */
  hours: 10_000,
  /** Characters of the name or the notes while they are too long for the sheet. */
  draft: 20_000,
} as const;

/** One entry of a reading box: a figure in the step's unit, or nothing yet. */
export type Entry = number | null;

/** What was recorded at one step of the job. */
export interface Reading {
  /** As found and as left, for cylinder 1, 2, …; in the step's unit. */
  readonly found: readonly Entry[];
  readonly left: readonly Entry[];
  /** Ticked, for a step without figures. */
  readonly done: boolean;
  /** The engine's clock when this was last looked at, and when the engine was last altered by it. */
  readonly checked: number;
  readonly changed: number;
  /**
   * Clocks at which single cylinders were read again, while others of a step that was moved still
   * wait for it; 0 for those. Left out where all were checked alike.
   */
  readonly again?: readonly number[];
}

/** The engine's clock when one cylinder of a step was last looked at. */
export const checkedAt = ({ checked, again }: Reading, index: number): number =>
  Math.max(checked, again?.[index] ?? 0);

/** A result sent from a calculator. */
export interface KeptResult {
  readonly label: string;
  /** The figure with its unit, as shown. */
  readonly text: string;
  readonly calculator: string;
  /** The query string that holds the whole calculation. */
  readonly query: string;
}

export interface Engine {
  readonly id: string;
  readonly name: string;
  /** Whether the figures belong to no real engine. */
  readonly invented: boolean;
  readonly notes: string;
  /** Cylinder numbers in the order in which they fire; empty when not known. */
  readonly firingOrder: readonly number[];
  /** In home units. */
  readonly figures: Readonly<Partial<Record<FigureKey, number>>>;
  readonly readings: Readonly<Partial<Record<StepId, Reading>>>;
  readonly kept: readonly KeptResult[];
  /** Typed texts that could not be read, by the place they stand in: what stands there is empty. */
  readonly unread: Readonly<Record<string, string>>;
  /** All that was read and done, in the order of the engine's clock. */
  readonly log: readonly LogEntry[];
  /** Laid aside: kept, but not among the engines to choose from. */
  readonly archived: boolean;
  /** Counts the changes, so that it can be told which came after which. */
  readonly clock: number;
}

/** What is written to a file: engines, with the format's name and version. */
export interface SheetDocument {
  readonly format: typeof FORMAT;
  readonly version: typeof VERSION;
  readonly engines: readonly Engine[];
}

export const documentOf = (engines: readonly Engine[]): SheetDocument => ({
  format: FORMAT,
  version: VERSION,
  engines,
});

/** What an engine is called while it has no name that can be taken. */
export const UNNAMED = 'Unnamed engine';

export const newEngine = (id: string, name: string): Engine => ({
  id,
  name,
  invented: false,
  notes: '',
  firingOrder: [],
  figures: {},
  readings: {},
  kept: [],
  unread: {},
  log: [],
  archived: false,
  clock: 0,
});

/** What tells how many of anything an engine has. */
type Counted = Pick<Engine, 'figures' | 'readings'>;

/** The boxes up to the last that holds a reading, of any step. */
const boxesRead = ({ readings }: Counted): number =>
  Math.max(
    0,
    ...Object.values(readings).flatMap(({ found, left }) =>
      [found, left].map((entries) => entries.findLastIndex((entry) => entry !== null) + 1),
    ),
  );

/** How many cylinders have boxes: as the sheet says, and until it does as many as were read, one at the least. */
export const cylindersOf = (engine: Counted): number =>
  engine.figures.cylinders ?? Math.max(1, boxesRead(engine));

/** How many sets of points it has: one to each cylinder, unless the sheet says that there are fewer. */
export const setsOf = (engine: Counted): number =>
  Math.min(engine.figures.sets ?? Infinity, cylindersOf(engine));

/** Whether a set of points fires more than one cylinder. */
export const sharesSets = (engine: Counted): boolean => setsOf(engine) < cylindersOf(engine);

/** How many times a set fires in one turn of the crank, each time others of its cylinders: by lobes of their own. */
export function turnsOf(engine: Counted): number {
  const each = firedByEach(cylindersOf(engine), setsOf(engine));
  const { lobes = 1, 'speed-ratio': ratio = 1 } = engine.figures;
  const times = lobes * ratio;
  return each > 1 && times > 1 && each % times === 0 ? times : 1;
}

/** Whether a step is read for each set; where lobes of their own fire its cylinders, each has a timing. */
const readBySet = (reading: StepReading, engine: Counted): boolean =>
  isOfSet(reading) && !(reading.judging === 'timing' && turnsOf(engine) > 1);

/** How many carburettors it has: one to each cylinder, unless the sheet says that there are fewer. */
const carburettorsOf = (engine: Counted): number =>
  Math.min(engine.figures.carburettors ?? Infinity, cylindersOf(engine));

/** As many as the sheet says that there are, where that is some and no more than there are boxes for. */
const fewer = (said: number | undefined, most: number): number =>
  said === undefined || said === 0 ? most : Math.min(said, most);

/** How many boxes a step's readings have on this engine. */
export function boxesOf(engine: Engine, id: StepId): number {
  const { reading } = steps[id];
  const { figures } = engine;
  const sets = setsOf(engine);
  if (reading === undefined) return cylindersOf(engine);
  if (reading.once) return 1;
  if (isOfSet(reading)) return readBySet(reading, engine) ? sets : cylindersOf(engine);
  if (reading.asManyAs === 'carburettors') return carburettorsOf(engine);
  if (reading.asManyAs === 'condensers') return fewer(figures.condensers, sets);
  if (reading.asManyAs === 'fed-coils' && sharesSets(engine)) {
    return figures['fed-coils'] ? fewer(figures['fed-coils'], cylindersOf(engine)) : sets;
  }
  return cylindersOf(engine);
}

/** What the boxes of a step count: "Set". One set that fires several cylinders has one timing for them all. */
export const perOf = (reading: StepReading, engine: Counted): string =>
  readBySet(reading, engine) && sharesSets(engine) ? 'Set' : reading.per;

/** What to call a box: "Set 2". */
export const boxName = (reading: StepReading, index: number, engine: Counted): string => {
  const per = perOf(reading, engine);
  return reading.once ? per : `${per} ${String(index + 1)}`;
};

/** What the numbers of a step count, where they are not cylinders: "each set", "one crank". */
export function countedAs(reading: StepReading, engine: Counted): string {
  const per = perOf(reading, engine);
  return per === 'Cylinder' ? '' : `${reading.once ? 'one' : 'each'} ${per.toLowerCase()}`;
}

/** What holds now at each cylinder: as left, or as found where nothing was changed. */
export function entriesOf(engine: Engine, id: StepId): readonly Entry[] {
  const reading = engine.readings[id];
  return Array.from(
    { length: boxesOf(engine, id) },
    (_, i) => reading?.left[i] ?? reading?.found[i] ?? null,
  );
}
