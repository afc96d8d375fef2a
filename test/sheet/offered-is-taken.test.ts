/**
 * What a sentence beside a box offers to type is taken by that box: it is a button for one thumb. Held
 * for every box of the sheet and every field of the calculators, with texts as people write them.
 */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { offeredIn } from '../../calculators/frame/field/offered.ts';
import { readFigure } from '../../calculators/frame/field/fields.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { figureKeys } from '../../calculators/sheet/figures.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import type { NumberBox } from '../../calculators/sheet/box-places.ts';
import { calculators } from '../../site/all-calculators.ts';
import { textToKeep } from '../../site/fields/field-text.ts';

const TEXTS = [
  ...[
    '0.002',
    '0.014',
    '0.35',
    '1.8',
    '2.2',
    '3',
    '12',
    '16',
    '22',
    '35',
    '45',
    '81',
    '110',
    '180',
  ],
  ...[
    '216',
    '350',
    '700',
    '1600',
    '5500',
    '-3',
    '1,8',
    '1.234,5',
    '22°',
    '200°',
    '22 deg',
    '12 thou',
  ],
  ...['0.5"', "3'", '3/32', '2 1/4', '1/4 in', '60%', '110 %', '0.35-0.45', '2,31; 2,35', '2.2 mm'],
  ...['1/8 turn', '1,200', '12 V', '3 lb', '250 nF', '64/2', '1 ft', '1e3', '10000', '0,0005'],
];
const LENGTHS = ['mm', 'in'] as const;

const boxes: readonly NumberBox[] = [
  ...figureKeys.map((key) => ({ kind: 'figure', key }) as const),
  ...order
    .filter((step) => steps[step].reading !== undefined)
    .map((step) => ({ kind: 'reading', step, moment: 'found', index: 0 }) as const),
];

const demo = demoSheet();
const empty = newEngine('e-1', 'None');
const engines: readonly (readonly [string, Engine])[] = [
  ['an empty sheet', empty],
  ['the demo’s', demo],
  ['the demo’s without readings', { ...demo, readings: {} }],
];

describe.each(engines)('beside the boxes of %s', (_, engine) => {
  it.each(LENGTHS)('what is offered is taken, in %s', (lengths) => {
    const refused = boxes.flatMap((box) => {
      const { spec } = readNumber(engine, box, '', { lengths });
      const read = (text: string, of = engine) =>
        readNumber(of, box, textToKeep(text, { spec }, lengths), { lengths });
      // Whether a figure goes with the others is another question than whether it is one.
      const isTaken = (text: string) =>
        [engine, empty].some((of) => read(text, of).problem === undefined);
      return TEXTS.flatMap((text) => {
        const { problem, doubt } = read(text);
        return [problem, doubt]
          .flatMap((sentence) => offeredIn(sentence ?? ''))

          .filter((offer) => !isTaken(offer))
          .map((offer) => ({ box: Object.values(box).join(' '), text, offer }));
      });
    });
    expect(refused).toEqual([]);
  });
});

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  'beside the fields of %s',
  (_, calculator) => {
    it.each(LENGTHS)('what is offered is taken, in %s', (lengths) => {
      const { fields } = evaluate(calculator, {}, { lengths });
      const refused = fields.flatMap((one) => {
        if (one.kind !== 'figure') return [];
        const { key, spec } = one;
        const read = (text: string) => {
          const texts = { [key]: textToKeep(text, { spec }, lengths) };
          return evaluate(calculator, texts, { lengths }).fields.find((field) => field.key === key);
        };
        const isTaken = (text: string) => {
          const field = readFigure(
            key,
            spec,
            textToKeep(text, { spec }, lengths),
            undefined,
            undefined,
            { lengths },
            'yours',
          );
          return field.problem === undefined;
        };
        return TEXTS.flatMap((text) => {
          const field = read(text);
          return [field?.problem, field?.kind === 'figure' ? field.doubt : undefined]
            .flatMap((sentence) => offeredIn(sentence ?? ''))
            .filter((offer) => !isTaken(offer))
            .map((offer) => ({ key, text, offer }));
        });
      });
      expect(refused).toEqual([]);
    });
  },
);
