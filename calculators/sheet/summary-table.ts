import type { LengthDisplay } from '../frame/text/units.ts';
import { isBegun, readingOf } from './readings.ts';
import { appliesTo, figureKeys } from './figures.ts';
import { orderWords } from './firing-order.ts';
import { leadWords } from './leads.ts';
import { targetWords } from './judge.ts';
import { dayWords, hoursRun, lastDay } from './log.ts';
import { readingWords } from './log-words.ts';
import { boxesOf, countedAs, cylindersOf, type Engine, setsOf } from './model.ts';
import { concerned, progressOf, stateTold } from './progress.ts';
import { order, steps, type StepId } from './steps.ts';
import { figureLine } from './summary.ts';

/** One step in a summary: what it is set to, found and last at each cylinder, the day and how it stands. */
export interface SummaryRow {
  readonly step: string;
  readonly to: string;
  readonly cells: readonly string[];
  readonly day: string;
  readonly state: string;
}

export interface SummaryTable {
  readonly title: string;
  /** The firing order, the leads, the hours run and the figures, a line each. */
  readonly lines: readonly string[];
  readonly cylinders: number;
  readonly rows: readonly SummaryRow[];
  readonly notes: string;
}

function cellsOf(engine: Engine, id: StepId, lengths: LengthDisplay): string[] {
  const { found, left, done } = readingOf(engine, id);
  if (!steps[id].reading) return [done ? 'done' : ''];
  return Array.from({ length: boxesOf(engine, id) }, (_, i) => {
    const [was, now] = [found[i] ?? null, left[i] ?? null];
    const parts = [was, now].filter((entry) => entry !== null);
    return parts.map((entry) => readingWords(id, entry, lengths)).join(' → ');
  });
}

/** A step's title, with what its columns count where they are not cylinders. */
function titleOf(engine: Engine, id: StepId): string {
  const { title, reading } = steps[id];
  const counted = reading ? countedAs(reading, engine) : '';
  return counted === '' ? title : `${title} (${counted})`;
}

/** What a summary of an engine holds, whatever form it takes: the steps that are begun, in order. */
export function summaryTable(engine: Engine, lengths: LengthDisplay): SummaryTable {
  const progress = progressOf(engine);
  const leads = leadWords(engine);
  const hours = hoursRun(engine);
  return {
    title: engine.invented ? `${engine.name} (invented engine)` : engine.name,
    lines: [
      ...(leads === undefined ? [] : [`Firing order: ${orderWords(engine)}`, leads]),
      ...(hours === 0 ? [] : [`Run: ${String(Number(hours.toFixed(2)))} h`]),
      ...figureKeys
        .filter((key) => engine.figures[key] !== undefined && appliesTo(key, setsOf(engine)))
        .map((key) => figureLine(engine, key, lengths)),
    ],
    cylinders: cylindersOf(engine),
    rows: order
      .filter((id) => isBegun(engine, id))
      .map((id) => {
        const which = concerned(engine, id, progress[id]).map((i) => i + 1);
        const state = stateTold(engine, id, progress[id].state).toLowerCase();
        return {
          step: titleOf(engine, id),
          to: targetWords(engine, id, lengths) ?? '',
          cells: cellsOf(engine, id, lengths),
          day: dayWords(lastDay(engine, id)),
          state: which.length === 0 ? state : `${state}: ${which.join(', ')}`,
        };
      }),
    notes: engine.notes.trim(),
  };
}
