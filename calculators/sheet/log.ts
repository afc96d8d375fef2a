import { isReading, type LoggedReading, type LogEntry, type NewEntry } from './log-entry.ts';
import { LIMITS, type Engine, type Entry } from './model.ts';
import type { StepId } from './steps.ts';

const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** A day as people write it: "21 Mar 2026"; nothing for one that is not known. */
export function dayWords(on: string): string {
  const [year = '', month = '', day = ''] = on.split('-');
  return on === '' ? '' : `${String(Number(day))} ${MONTHS[Number(month) - 1]!} ${year}`;
}

/** Whether an entry of a log says again, or otherwise, what an earlier one of a box or a tick said. */
function supersedes(later: LogEntry, entry: LogEntry): boolean {
  if (isReading(entry)) {
    return (
      isReading(later) &&
      later.step === entry.step &&
      later.cylinder === entry.cylinder &&
      (later.kind === 'found') === (entry.kind === 'found')
    );
  }
  if (entry.kind === 'done' || entry.kind === 'undone') {
    return (later.kind === 'done' || later.kind === 'undone') && later.step === entry.step;
  }
  return entry.kind === 'figure' && later.kind === 'figure' && later.figure === entry.figure;
}

/** The entry that a full log can best do without: the oldest that a later one stands for, or the oldest. */
export function leastMissed(log: readonly LogEntry[]): number {
  const at = log.findIndex((entry, i) => log.some((later, j) => j > i && supersedes(later, entry)));
  return Math.max(at, 0);
}

/** From how many entries on the reader is told that the log will be full. */
export const NEARLY_FULL = LIMITS.log * 0.9;

/**
 * The engine with one more entry in its log, written at the engine's own clock. A log that is full
 * gives up an old reading that was taken again since: what stands, runs and notes stay.
 */
export function logged(engine: Engine, entry: NewEntry, on = ''): Engine {
  const written = { ...entry, clock: engine.clock, on } as LogEntry;
  const log = [...engine.log, written];
  return { ...engine, log: log.length > LIMITS.log ? log.toSpliced(leastMissed(log), 1) : log };
}

/** The readings at a step, or at one cylinder of it (counted from 0), in the order of the engine's clock. */
export const readingsAt = (engine: Engine, id: StepId, index?: number): LoggedReading[] =>
  engine.log.filter(
    (entry): entry is LoggedReading =>
      isReading(entry) &&
      entry.step === id &&
      (index === undefined || entry.cylinder === index + 1),
  );

/** The last reading at a cylinder of a step. */
export const lastAt = (engine: Engine, id: StepId, index: number): LoggedReading | undefined =>
  readingsAt(engine, id, index).at(-1);

/** The day on which anything was last written at a step; empty where it is not known. */
export const lastDay = (engine: Engine, id: StepId): string =>
  engine.log.findLast((entry) => 'step' in entry && entry.step === id)?.on ?? '';

/** One time that a step was gone through: what stood at each cylinder after it. */
export interface Round {
  readonly entries: readonly LoggedReading[];
  /** What held at cylinders 1, 2, … before the round, and after it. */
  readonly before: readonly Entry[];
  readonly after: readonly Entry[];
}

/** Whether an entry was only put right on the same day, before anything else was read there. */
const isMended = (entry: LoggedReading, later: readonly LoggedReading[]): boolean => {
  const next = later.find(({ cylinder }) => cylinder === entry.cylinder);
  return entry.kind === 'found' && next?.kind === 'found' && next.on === entry.on && next.on !== '';
};

/**
 * The log of a step by rounds: a new one begins where a cylinder is read that was read in this one,
 * or where its kind is another. An entry as found that was put right on the same day is left out.
 */
export function roundsOf(engine: Engine, id: StepId, cylinders: number): Round[] {
  const all = readingsAt(engine, id);
  const standing = all.filter((entry, i) => !isMended(entry, all.slice(i + 1)));
  const rounds: Round[] = [];
  let now: Entry[] = Array.from({ length: cylinders }, () => null);
  for (const entry of standing) {
    if (entry.cylinder > cylinders) continue;
    const open = rounds.at(-1);
    const goesOn =
      open !== undefined &&
      (open.entries[0]!.kind === 'found') === (entry.kind === 'found') &&
      open.entries.every(({ cylinder }) => cylinder !== entry.cylinder);
    const before = goesOn ? open.before : now;
    now = now.with(entry.cylinder - 1, entry.value);
    const round = { entries: [...(goesOn ? open.entries : []), entry], before, after: now };
    if (goesOn) rounds[rounds.length - 1] = round;
    else rounds.push(round);
  }
  return rounds;
}

/** What was changed at a step after a moment of the engine's clock: the last change at each cylinder. */
export function changesSince(engine: Engine, id: StepId, moment: number): LoggedReading[] {
  const changes = readingsAt(engine, id).filter(
    ({ kind, clock }) => kind === 'change' && clock > moment,
  );
  return changes.filter(
    ({ cylinder }, i) => !changes.slice(i + 1).some((later) => later.cylinder === cylinder),
  );
}

/** The day of whatever altered the engine at a step after a moment of its clock; empty where not known. */
export const daySince = (engine: Engine, id: StepId, moment: number): string =>
  engine.log.findLast(
    (entry) =>
      entry.clock > moment &&
      (('step' in entry && entry.step === id && entry.kind !== 'check') ||
        (entry.kind === 'figure' && id === 'measure')),
  )?.on ?? '';

/** Hours that the engine has run in all. */
export const hoursRun = ({ log }: Engine): number =>
  log.reduce((sum, entry) => (entry.kind === 'hours' ? sum + entry.value : sum), 0);

/** The lines of the list of the first start that stand ticked. */
export function tickedLines({ log }: Engine): ReadonlySet<string> {
  const ticked = new Set<string>();
  for (const entry of log) {
    if (entry.kind === 'anew') ticked.clear();
    else if (entry.kind === 'ticked') ticked.add(entry.line);
    else if (entry.kind === 'unticked') ticked.delete(entry.line);
  }
  return ticked;
}
