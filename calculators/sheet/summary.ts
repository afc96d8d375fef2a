import type { LengthDisplay } from '../frame/text/units.ts';
import { isBegun, readingOf } from './readings.ts';
import { doubtedMark } from './figure-doubt.ts';
import { figureWords } from './figure-words.ts';
import { appliesTo, figureKeys, sheetFigures, type FigureKey } from './figures.ts';
import { boxTitle, firedByBox, orderWords } from './firing-order.ts';
import { judge, targetWords } from './judge.ts';
import { leadWords } from './leads.ts';
import { boxName, boxesOf, type Engine, type Entry, setsOf } from './model.ts';
import { concerned, jobOf, progressOf, stateTold } from './progress.ts';
import { showReading } from './step-units.ts';
import { steps, type StepId, type StepReading } from './steps.ts';

/** A figure of the sheet in words: "Stroke: 51 mm". */
export function figureLine(engine: Engine, key: FigureKey, lengths: LengthDisplay): string {
  const value = engine.figures[key];
  const { label } = sheetFigures[key];
  const words = value === undefined ? 'not entered' : figureWords(key, value, lengths);
  return `${label}: ${words}${doubtedMark(engine, key)}`;
}

/** One box in words: "0.36 mm, left 0.4 mm". */
function boxWords(
  found: Entry | undefined,
  left: Entry | undefined,
  show: (value: number) => string,
): string {
  const parts = [
    found === null || found === undefined ? '–' : show(found),
    ...(left === null || left === undefined ? [] : [`left ${show(left)}`]),
  ];
  return parts.join(', ');
}

/** How a box is told from the others of its step: by its number, or by the cylinders that its set fires. */
function numberOf(engine: Engine, reading: StepReading, index: number): string {
  if (reading.once) return '';
  return firedByBox(reading, index, engine) === undefined
    ? `${String(index + 1)}) `
    : `${boxTitle(reading, index, engine).toLowerCase()} `;
}

/** One step of the job in a line: what it is set to, the readings, how it stands and at which cylinder. */
export function stepLine(engine: Engine, id: StepId, lengths: LengthDisplay): string {
  const { title, reading } = steps[id];
  const progress = progressOf(engine)[id];
  const state = stateTold(engine, id, progress.state).toLowerCase();
  if (!reading) return `${title}: ${state}`;
  const { found, left } = readingOf(engine, id);
  const show = (value: number): string => showReading(value, reading, lengths);
  const boxes = Array.from(
    { length: boxesOf(engine, id) },
    (_, i) => `${numberOf(engine, reading, i)}${boxWords(found[i], left[i], show)}`,
  );
  const target = targetWords(engine, id, lengths) ?? '';
  const { rows } = judge(engine, id, lengths);
  const which = concerned(engine, id, progress).map((i) => {
    const name = boxName(reading, i, engine).toLowerCase();
    return rows[i]!.result === 'fail' ? `${name} (${rows[i]!.words.replace(/\.$/, '')})` : name;
  });
  const whose = which.length === 0 ? '' : `, ${which.join(', ')}`;
  return `${title} (${target}): ${boxes.join('; ')}: ${state}${whose}`;
}

/** The whole sheet as a text fit for a message, with the link to it. */
export function sheetSummary(engine: Engine, lengths: LengthDisplay, link: string): string {
  const begun = jobOf(engine).filter((id) => isBegun(engine, id));
  const leads = leadWords(engine);
  const advice = begun.flatMap((id) =>
    judge(engine, id, lengths).whole.map((sentence) => `${steps[id].title}: ${sentence}`),
  );
  return [
    engine.invented ? `${engine.name} (invented engine)` : engine.name,
    ...(leads === undefined ? [] : [`Firing order: ${orderWords(engine)}`, leads]),
    ...figureKeys
      .filter((key) => engine.figures[key] !== undefined && appliesTo(key, setsOf(engine)))
      .map((key) => figureLine(engine, key, lengths)),
    ...(begun.length > 0 ? ['', 'Readings:'] : []),
    ...begun.map((id) => stepLine(engine, id, lengths)),
    ...advice,
    ...(engine.kept.length > 0 ? ['', 'Results:'] : []),
    ...engine.kept.map(({ label, text }) => `${label}: ${text}`),
    ...(engine.notes.trim() === '' ? [] : ['', engine.notes.trim()]),
    ...(link === '' ? [] : ['', link]),
  ].join('\n');
}
