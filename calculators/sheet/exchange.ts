import { addNote } from './edit-log.ts';
import { readingOf } from './readings.ts';
import { isReading } from './log-entry.ts';
import { boxName, boxesOf, perOf, type Engine, type Reading } from './model.ts';
import { order, steps, type StepId } from './steps.ts';

/** Two boxes of a step, counted from 0. */
export type Pair = readonly [one: number, other: number];

/** The steps whose boxes count the same things as those of a step, and have both of these. */
export function exchangedWith(engine: Engine, id: StepId, pair: Pair): StepId[] {
  const per = perOf(steps[id].reading!, engine);
  return order.filter((other) => {
    const { reading } = steps[other];
    return (
      reading !== undefined &&
      !reading.once &&
      perOf(reading, engine) === per &&
      boxesOf(engine, other) > Math.max(...pair)
    );
  });
}

/** A list with two places exchanged; no longer than its last entry. */
function exchanged<T>(list: readonly T[], [one, other]: Pair, nothing: T): T[] {
  const length = Math.max(list.length, one + 1, other + 1);
  const next = Array.from({ length }, (_, i) => list[i] ?? nothing);
  [next[one], next[other]] = [next[other]!, next[one]!];
  while (next.at(-1) === nothing) next.pop();
  return next;
}

function exchangeReading({ again, ...reading }: Reading, pair: Pair): Reading {
  return {
    ...reading,
    found: exchanged(reading.found, pair, null),
    left: exchanged(reading.left, pair, null),
    ...(again === undefined ? {} : { again: exchanged(again, pair, 0) }),
  };
}

/**
 * Exchanges all that was read at two boxes of these steps, where it was written one under the other:
 * what stands, and the log with its days. Nothing was turned, so nothing is to be checked again; a
 * note in the log says that it was done. `on` is the day.
 */
export function exchange(engine: Engine, ids: readonly StepId[], pair: Pair, on = ''): Engine {
  const [one, other] = pair;
  const [first] = ids;
  if (first === undefined || one === other) return engine;
  const written = ids.filter((id) => {
    const { found, left } = readingOf(engine, id);
    return pair.some((i) => (found[i] ?? left[i] ?? null) !== null);
  });
  if (written.length === 0) return engine;
  const readings = { ...engine.readings };
  for (const id of written) readings[id] = exchangeReading(readingOf(engine, id), pair);
  const log = engine.log.map((entry) => {
    if (!isReading(entry) || !ids.includes(entry.step)) return entry;
    const at = pair.indexOf(entry.cylinder - 1);
    return at < 0 ? entry : { ...entry, cylinder: pair[1 - at]! + 1 };
  });
  const reading = steps[first].reading!;
  const names = pair.map((i) => boxName(reading, i, engine).toLowerCase()).join(' and ');
  const where = written.map((id) => `“${steps[id].title}”`).join(', ');
  return addNote(
    { ...engine, readings, log },
    `Exchanged, since they were written one under the other: the readings of ${names} at ${where}.`,
    on,
  );
}
