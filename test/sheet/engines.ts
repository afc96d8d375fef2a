import fc from 'fast-check';
import { settled } from '../../calculators/sheet/set-figure.ts';
import { figureKeys, MOST_CYLINDERS, sheetFigures } from '../../calculators/sheet/figures.ts';
import type { LogEntry } from '../../calculators/sheet/log-entry.ts';
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

const withReadings = order.filter((id) => steps[id].reading !== undefined);

/** A day by the wall clock, in no order at all; or none. */
export const anyDay = fc.oneof(
  fc.constant(''),
  fc
    .date({ min: new Date('1999-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
    .map((day) => day.toISOString().slice(0, 10)),
);

const entries: fc.Arbitrary<object> = fc.oneof(
  fc.constantFrom(...withReadings).chain((step) => {
    const { min, max, whole } = steps[step].reading!;
    return fc.record({
      kind: fc.constantFrom('found', 'change', 'check'),
      step: fc.constant(step),
      cylinder: fc.integer({ min: 1, max: MOST_CYLINDERS }),
      value: figure(min, max, whole),
    });
  }),
  fc.record({ kind: fc.constantFrom('done', 'undone'), step: fc.constantFrom(...order) }),
  fc.constantFrom(...figureKeys).chain((key) => {
    const { min, max, whole } = sheetFigures[key];
    return fc.record({
      kind: fc.constant('figure'),
      figure: fc.constant(key),
      value: fc.option(figure(min, max, whole)),
    });
  }),
  fc.record({ kind: fc.constant('hours'), value: figure(0, LIMITS.hours) }),
  fc.record({ kind: fc.constant('note'), text: text(30, 1) }),
  fc.record({
    kind: fc.constantFrom('ticked', 'unticked'),
    line: fc.stringMatching(/^[a-z0-9-]{1,30}$/),
  }),
  fc.record({ kind: fc.constant('anew') }),
);

const log = fc.array(
  fc
    .tuple(entries, fc.record({ clock, on: anyDay }))
    .map(([entry, written]) => ({ ...entry, ...written }) as LogEntry),
  { maxLength: 6 },
);

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
    log,
    archived: fc.boolean(),
    clock,
  }) as fc.Arbitrary<Engine>
).map(settled);
