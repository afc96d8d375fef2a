import { momentNow, tick } from './clock.ts';
import { logged } from './log.ts';
import { isReading, type LogEntry } from './log-entry.ts';
import type { Engine } from './model.ts';
import { withdraw } from './set-entry.ts';

/** Adds hours that the engine has run. */
export const addHours = (engine: Engine, value: number, on = ''): Engine =>
  logged(tick(engine), { kind: 'hours', value }, on);

/** Adds a note to the log. */
export const addNote = (engine: Engine, text: string, on = ''): Engine =>
  logged(tick(engine), { kind: 'note', text }, on);

/** Ticks a line of the list of the first start, or takes the tick away. */
export const tickLine = (engine: Engine, line: string, ticked: boolean, on = ''): Engine =>
  logged(tick(engine), { kind: ticked ? 'ticked' : 'unticked', line }, on);

/** Begins the list of the first start anew. */
export const beginList = (engine: Engine, on = ''): Engine =>
  logged(tick(engine), { kind: 'anew' }, on);

/** Takes out of the log what is no reading. */
export const dropEntry = (engine: Engine, entry: LogEntry): Engine =>
  isReading(entry)
    ? withdraw(engine, entry)
    : { ...engine, log: engine.log.filter((other) => other !== entry) };

/** Puts back what was taken out of the log, where nothing was written since. */
export const putBack = (engine: Engine, was: Engine, taken: Engine): Engine =>
  isUntouched(engine, taken)
    ? { ...engine, log: was.log, readings: was.readings, clock: momentNow(was) + 1 }
    : engine;

/** Whether the log and the readings of an engine are as they were left. */
export const isUntouched = (engine: Engine, left: Engine): boolean =>
  JSON.stringify([engine.log, engine.readings]) === JSON.stringify([left.log, left.readings]);
