import { csv } from '../frame/csv.ts';
import { units } from '../frame/text/units.ts';
import { plainDecimal } from '../maths/numeric/rounding.ts';
import { answerOf, sheetFigures } from './figures.ts';
import { isReading, type LogEntry } from './log-entry.ts';
import { entryWords, kindWords } from './log-words.ts';
import { boxName, type Engine } from './model.ts';
import { steps } from './steps.ts';

const HEAD = ['number', 'day', 'engine', 'step', 'place', 'kind', 'value', 'unit', 'text'] as const;

/** A text that a table program takes for one, and not for a formula. */
const plain = (text: string): string => (/^[=+\-@\t\r]/u.test(text) ? `'${text}` : text);

type Row = Readonly<Record<'step' | 'place' | 'value' | 'unit' | 'text', string>>;

function rowOf(entry: LogEntry, engine: Engine): Row {
  const blank: Row = { step: '', place: '', value: '', unit: '', text: '' };
  if (isReading(entry)) {
    const { title, reading } = steps[entry.step];
    return {
      ...blank,
      step: title,
      place: boxName(reading!, entry.cylinder - 1, engine),
      value: plainDecimal(entry.value),
      unit: units[reading!.unit].label,
    };
  }
  switch (entry.kind) {
    case 'done':
    case 'undone':
      return { ...blank, step: steps[entry.step].title };
    case 'figure': {
      const { label, unit } = sheetFigures[entry.figure];
      const value = entry.value === null ? '' : plainDecimal(entry.value);
      const text = entry.value === null ? '' : (answerOf(entry.figure, entry.value) ?? '');
      return { ...blank, place: label, value, unit: units[unit].label, text };
    }
    case 'hours':
      return { ...blank, value: plainDecimal(entry.value), unit: units.h.label };
    default:
      return { ...blank, text: entryWords(entry, engine, 'mm').filter(Boolean).join(': ') };
  }
}

/** The log of engines as comma-separated values: figures in home units, one entry a line. */
export function logCsv(engines: readonly Engine[]): string {
  const lines = engines.flatMap((engine) =>
    engine.log.map((entry, i) => {
      const { step, place, value, unit, text } = rowOf(entry, engine);
      const words = [entry.on, engine.name, step, place, kindWords[entry.kind]].map(plain);
      return [String(i + 1), ...words, value, ...[unit, text].map(plain)];
    }),
  );
  return csv([HEAD, ...lines]);
}
