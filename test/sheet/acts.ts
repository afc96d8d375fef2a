import fc from 'fast-check';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { addHours, tickLine } from '../../calculators/sheet/edit-log.ts';
import { confirm, setDone, setEntry } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { order, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { anyDay } from './engines.ts';

/** An engine with the demo's figures and nothing read on it. */
export const blank: Engine = {
  ...newEngine('e-1', 'Bench triple'),
  figures: demoSheet().figures,
};
/** Anything that a reader does to the log, on any day: a wall clock may be set back between two. */
export type Act = (engine: Engine) => Engine;
export const withReadings = order.filter((id) => steps[id].reading !== undefined);
/** One of four figures that a step's box takes. */
function valueAt(id: StepId, part: number): number {
  const { min, max, whole } = steps[id].reading!;
  const least = Math.max(min, -20);
  const value = least + (Math.min(max - least, 40) / 4) * part;
  return whole ? Math.ceil(value) : value;
}
export const acts: fc.Arbitrary<Act> = anyDay.chain((on) =>
  fc.oneof(
    fc
      .record({
        id: fc.constantFrom(...withReadings),
        moment: fc.constantFrom('found' as const, 'left' as const),
        index: fc.integer({ min: 0, max: 2 }),
        part: fc.constantFrom(null, 0, 1, 2, 3),
        kind: fc.constantFrom(undefined, 'change' as const, 'check' as const),
      })
      .map(
        ({ id, moment, index, part, kind }): Act =>
          (engine) =>
            setEntry(engine, id, moment, index, part === null ? null : valueAt(id, part), {
              kind,
              on,
            }),
      ),
    fc.tuple(fc.constantFrom(...order), fc.boolean()).map(
      ([id, done]): Act =>
        (engine) =>
          setDone(engine, id, done, on),
    ),
    fc.constantFrom(...order).map(
      (id): Act =>
        (engine) =>
          confirm(engine, id, on),
    ),
    fc.constantFrom(51, 52).map(
      (stroke): Act =>
        (engine) =>
          setFigure(engine, 'stroke', stroke, on),
    ),
    fc.constantFrom(0.5, 1).map(
      (hours): Act =>
        (engine) =>
          addHours(engine, hours, on),
    ),
    fc.constantFrom('a', 'b').map(
      (line): Act =>
        (engine) =>
          tickLine(engine, line, true, on),
    ),
  ),
);
