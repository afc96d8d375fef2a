import type { LengthDisplay } from '../frame/text/units.ts';
import { readingOf } from './readings.ts';
import { figureWords } from './figure-words.ts';
import { sheetFigures } from './figures.ts';
import { showReading } from './step-units.ts';
import { changesSince, dayWords, daySince, lastAt } from './log.ts';
import { isReading, type LogEntry, type LoggedReading } from './log-entry.ts';
import { boxName, checkedAt, type Engine, type Entry } from './model.ts';
import { steps, type StepId } from './steps.ts';

export const kindWords: Readonly<Record<LogEntry['kind'], string>> = {
  found: 'as found',
  change: 'after a change',
  check: 'check',
  done: 'done',
  undone: 'tick taken away',
  figure: 'figure changed',
  hours: 'run',
  note: 'note',
  ticked: 'ticked for the first start',
  unticked: 'tick for the first start taken away',
  anew: 'list of the first start begun anew',
};

/** A reading of a step in the reader's lengths. */
export function readingWords(id: StepId, value: Entry, lengths: LengthDisplay): string {
  const { reading } = steps[id];
  if (!reading || value === null) return '–';
  return showReading(value, reading, lengths);
}

/** What an entry of the log is about, and what it says. */
export function entryWords(
  entry: LogEntry,
  engine: Engine,
  lengths: LengthDisplay,
): [about: string, says: string] {
  if (isReading(entry)) {
    const { step, cylinder, value } = entry;
    const { title, reading } = steps[step];
    const box = reading ? `, ${boxName(reading, cylinder - 1, engine).toLowerCase()}` : '';
    return [`${title}${box}`, readingWords(step, value, lengths)];
  }
  switch (entry.kind) {
    case 'done':
    case 'undone':
      return [steps[entry.step].title, ''];
    case 'figure': {
      const { figure, value } = entry;
      const { label } = sheetFigures[figure];
      return [label, value === null ? 'taken out' : figureWords(figure, value, lengths)];
    }
    case 'hours':
      return ['Run', `${String(Number(entry.value.toFixed(2)))} h`];
    case 'note':
      return ['Note', entry.text];
    case 'ticked':
    case 'unticked':
      return ['First start', entry.line.replaceAll('-', ' ')];
    case 'anew':
      return ['First start', ''];
  }
}

/** What is said beside a box whose text is refused, in place of a verdict: what was read there before it. */
export const lastGoodWords = (id: StepId, held: Entry, lengths: LengthDisplay): string =>
  held === null ? '' : `The last good reading, ${readingWords(id, held, lengths)}, stands.`;

/** When and how what stands at a cylinder of a step was read: "22 Feb 2026, after a change". */
export function whenWords(engine: Engine, id: StepId, index: number): string {
  const { found, left } = readingOf(engine, id);
  const last = lastAt(engine, id, index);
  if (last?.value !== (left[index] ?? found[index])) return '';
  return [dayWords(last?.on ?? ''), last ? kindWords[last.kind] : ''].filter(Boolean).join(', ');
}

const from = (engine: Engine, entry: LoggedReading): Entry =>
  engine.log.findLast(
    (earlier): earlier is LoggedReading =>
      isReading(earlier) &&
      earlier.step === entry.step &&
      earlier.cylinder === entry.cylinder &&
      earlier.clock < entry.clock,
  )?.value ?? null;

/**
 * What was changed at a step since another was last checked, with its day: "set 2 from 0.31 mm to
 * 0.35 mm on 28 Feb 2026". Empty where the log does not tell.
 */
export function changeWords(
  engine: Engine,
  by: StepId,
  id: StepId,
  stale: readonly number[],
  lengths: LengthDisplay,
): string {
  const checks = (stale.length === 0 ? [0] : stale).map((i) =>
    by === id ? (lastAt(engine, id, i)?.clock ?? 0) : checkedAt(readingOf(engine, id), i),
  );
  const since = Math.min(...checks);
  const { reading } = steps[by];
  const changes = reading ? changesSince(engine, by, since) : [];
  if (changes.length === 0) {
    const day = dayWords(daySince(engine, by, since));
    return day === '' ? '' : `on ${day}`;
  }
  return changes
    .map((entry) => {
      const was = from(engine, entry);
      const day = dayWords(entry.on);
      return [
        boxName(reading!, entry.cylinder - 1, engine).toLowerCase(),
        was === null ? '' : ` from ${readingWords(by, was, lengths)}`,
        ` to ${readingWords(by, entry.value, lengths)}`,
        day === '' ? '' : ` on ${day}`,
      ].join('');
    })
    .join('; ');
}
