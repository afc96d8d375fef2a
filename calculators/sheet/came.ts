import { orderWords } from './firing-order.ts';
import type { LengthDisplay } from '../frame/text/units.ts';
import { figureWords } from './figure-words.ts';
import { figureKeys, sheetFigures } from './figures.ts';
import type { LogEntry } from './log-entry.ts';
import { entryWords, kindWords } from './log-words.ts';
import type { Engine } from './model.ts';
import type { Store } from './store.ts';
import { alike } from './three-way.ts';

/** More than this is counted, and not told one by one. */
const TOLD = 4;

function logged(entry: LogEntry, engine: Engine, lengths: LengthDisplay): string {
  const [about, says] = entryWords(entry, engine, lengths);
  return says === '' ? `${about} (${kindWords[entry.kind]})` : `${about}: ${says}`;
}

/** The entries of a log that another has not. */
function beyond(log: readonly LogEntry[], other: readonly LogEntry[]): LogEntry[] {
  const known = new Set(other.map((entry) => JSON.stringify(entry)));
  return log.filter((entry) => !known.has(JSON.stringify(entry)));
}

/** What is another in an engine now than it was, each in a few words. */
function changesOf(was: Engine, is: Engine, lengths: LengthDisplay): string[] {
  const gone = beyond(was.log, is.log).length;
  const added = beyond(is.log, was.log);
  const words = [
    ...figureKeys.flatMap((key) => {
      const value = is.figures[key];
      if (value === was.figures[key]) return [];
      const { label } = sheetFigures[key];
      return [`${label}: ${value === undefined ? 'taken out' : figureWords(key, value, lengths)}`];
    }),
    ...added.filter(({ kind }) => kind !== 'figure').map((entry) => logged(entry, is, lengths)),
    ...(added.length === 0 && gone > 0
      ? [`${String(gone)} ${gone === 1 ? 'entry' : 'entries'} taken out of the log`]
      : []),
    ...(is.name === was.name ? [] : [`its name, now “${is.name}”`]),
    ...(is.notes === was.notes ? [] : ['its notes']),
    ...(alike(is.firingOrder, was.firingOrder)
      ? []
      : [`Firing order: ${orderWords(is) || 'taken out'}`]),
    ...(alike(is.kept, was.kept) ? [] : ['results from calculators']),
    ...(is.archived === was.archived
      ? []
      : [is.archived ? 'it lies in the archive now' : 'it is out of the archive']),
  ];
  if (words.length > 0 || alike(was, is)) return words;
  return [alike(was.unread, is.unread) ? 'steps looked at' : 'a text that cannot be read'];
}

/** What came from another tab, in one sentence for each engine; empty where nothing did. */
export function cameWords(was: Store, is: Store, lengths: LengthDisplay): string {
  const came = is.engines.flatMap((engine) => {
    const before = was.engines.find(({ id }) => id === engine.id);
    if (!before) return [`Another tab added “${engine.name}”.`];
    const changes = changesOf(before, engine, lengths);
    if (changes.length === 0) return [];
    const told = changes.slice(0, changes.length === TOLD + 1 ? TOLD + 1 : TOLD);
    const more = changes.length - told.length;
    const rest = more === 0 ? '' : `; and ${String(more)} more`;
    return [`Another tab wrote into “${before.name}”: ${told.join('; ')}${rest}.`];
  });
  const gone = was.engines.filter(({ id }) => !is.engines.some((other) => other.id === id));
  const out = gone.map(({ name }) => `Another tab took “${name}” out of the list.`);
  return [...came, ...out].join(' ');
}
