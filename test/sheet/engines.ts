import fc from 'fast-check';
import { settled } from '../../calculators/sheet/edit.ts';
import { figureKeys, MOST_CYLINDERS, sheetFigures } from '../../calculators/sheet/figures.ts';
import { LIMITS, type Engine, type Reading } from '../../calculators/sheet/model.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';

const figure = (min: number, max: number, whole = false) =>
  whole
    ? fc.integer({ min, max })
    : fc
        .double({ min, max, noNaN: true, noDefaultInfinity: true })
        // JSON has no −0.
        .map((value) => value + 0);

const figures = fc.record(
  Object.fromEntries(
    figureKeys.map((key) => {
      const { min, max, whole } = sheetFigures[key];
      return [key, figure(min, max, whole)];
    }),
  ),
  { requiredKeys: [] },
);

const clock = fc.oneof(fc.nat(), fc.integer({ min: 2 ** 53 - 3, max: 2 ** 53 - 1 }));

const readings = fc.record(
  Object.fromEntries(
    order.map((id) => {
      const { reading } = steps[id];
      const entries = reading
        ? fc.array(fc.option(figure(reading.min, reading.max, reading.whole)), {
            maxLength: MOST_CYLINDERS,
          })
        : fc.constant([]);
      const arbitrary: fc.Arbitrary<Reading> = fc.record({
        found: entries,
        left: entries,
        done: fc.boolean(),
        checked: clock,
        changed: clock,
      });
      return [id, arbitrary];
    }),
  ),
  { requiredKeys: [] },
);

const text = (maxLength: number, minLength = 0) =>
  fc.string({ minLength, maxLength, unit: 'grapheme-composite' }).filter((s) => {
    const { length } = [...s];
    return length >= minLength && length <= maxLength;
  });

/** Any engine that the sheet can hold. */
export const anyEngine: fc.Arbitrary<Engine> = (
  fc.record({
    id: fc.stringMatching(/^[a-z0-9-]{1,40}$/),
    name: text(LIMITS.name, 1),
    invented: fc.boolean(),
    notes: text(60),
    firingOrder: fc.uniqueArray(fc.integer({ min: 1, max: MOST_CYLINDERS }), {
      maxLength: MOST_CYLINDERS,
    }),
    figures,
    readings,
    kept: fc.array(
      fc.record({
        label: text(30),
        text: text(30),
        calculator: fc.stringMatching(/^[a-z][a-z0-9-]{0,20}$/),
        query: fc.stringMatching(/^[a-z0-9%=&.-]{0,40}$/),
      }),
      { maxLength: 3 },
    ),
    unread: fc.dictionary(fc.stringMatching(/^figure:[a-z-]{1,20}$/), text(20), { maxKeys: 3 }),
    clock,
  }) as fc.Arbitrary<Engine>
).map(settled);
