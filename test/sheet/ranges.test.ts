import { describe, expect, it } from 'vitest';
import { evaluate, knownKeys } from '../../calculators/frame/evaluate.ts';
import type { FieldSpec } from '../../calculators/frame/field/fields.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { fillFrom } from '../../calculators/sheet/fill.ts';
import { figureKeys, sheetFigures } from '../../calculators/sheet/figures.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { calculators } from '../../site/all-calculators.ts';

type Place = readonly [words: string, spec: Pick<FieldSpec, 'min' | 'max'>, put: Put];
type Put = (value: number) => Engine;

const blank: Engine = newEngine('own', 'Own');

/** Every figure of the sheet, and every reading of it on cylinder 1. */
const places: readonly Place[] = [
  ...figureKeys.map((key): Place => [
    `figure ${key}`,
    sheetFigures[key],
    (value) => setFigure(blank, key, value),
  ]),
  ...order.flatMap((id): Place[] => {
    const { reading } = steps[id];
    if (!reading) return [];
    const put: Put = (value) => ({
      ...blank,
      readings: { [id]: { found: [value], left: [], done: false, checked: 0, changed: 0 } },
    });
    return [[`reading ${id}`, reading, put]];
  }),
];

describe.each(places)('%s', (_, { min, max }, put) => {
  it.each([min, max])('of %d is in the range of every field that it fills', (value) => {
    const engine = put(value);
    for (const calculator of calculators) {
      const texts = fillFrom(engine, calculator.slug, knownKeys(calculator));
      const state = evaluate(calculator, texts, { lengths: 'mm' });
      for (const key of Object.keys(texts)) {
        const field = state.fields.find((one) => one.key === key);
        if (field?.kind !== 'figure') continue;
        const { spec } = field;
        expect(field.value, `${calculator.slug}, ${key}`).toBeDefined();
        expect(
          field.value! >= spec.min && field.value! <= spec.max,
          `${calculator.slug}, ${key}`,
        ).toBe(true);
        expect(field.problem ?? '', `${calculator.slug}, ${key}`).not.toMatch(/ must be from /);
      }
    }
  });
});
