import { describe, expect, it } from 'vitest';
import { evaluate, knownKeys, type Texts } from '../../calculators/frame/evaluate.ts';
import { fromQuery } from '../../calculators/frame/address.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import type { Input } from '../../calculators/frame/types.ts';
import { units } from '../../calculators/frame/text/units.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import {
  fillFrom,
  fillableKeys,
  inputFor,
  placesFor,
  queryFor,
} from '../../calculators/sheet/fill.ts';
import { figureKeys, sheetFigures } from '../../calculators/sheet/figures.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { targetWords } from '../../calculators/sheet/judge.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { figureLine } from '../../calculators/sheet/summary.ts';
import { calculatorBySlug, calculators } from '../../site/all-calculators.ts';

const reading = { lengths: 'mm' } as const;
const position = calculators.find(({ slug }) => slug === 'piston-position')!;

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s',
  (slug, calculator) => {
    const inputs: Readonly<Record<string, Input>> = calculator.inputs;

    it('has each input that the sheet says it fills, in the same kind of unit', () => {
      for (const key of figureKeys) {
        const input = inputFor(key, slug);
        if (input === undefined || (sheetFigures[key].everywhere && !inputs[input])) continue;
        const spec = inputs[input];
        expect(spec, `${key} fills ${input}`).toBeDefined();
        const { answers } = sheetFigures[key];
        if (answers) {
          const [, ...named] = Object.values(answers).reverse();
          const options = spec?.kind === 'choice' ? Object.keys(spec.options) : [];
          expect(options, key).toEqual(named.reverse().map((answer) => answer.toLowerCase()));
          continue;
        }
        if (!spec || spec.kind === 'choice') throw new Error(`${input} is no figure`);
        expect(units[spec.unit].quantity, input).toBe(units[sheetFigures[key].unit].quantity);
        expect(spec.unit, input).toBe(sheetFigures[key].unit);
      }
      for (const id of order) {
        const base = steps[id].series?.[slug];
        if (base !== undefined) {
          expect(inputs[base]).toMatchObject({ kind: 'series', unit: steps[id].reading!.unit });
        }
      }
    });

    it('has each result that the sheet says it takes, by that very name', () => {
      for (const key of figureKeys) {
        const { takes, sets } = sheetFigures[key];
        const name = takes?.[slug];
        if (name === undefined) continue;
        const texts: Texts = sets === undefined ? {} : { cylinders: String(sets) };
        const single = flatten(evaluate(calculator, texts, reading).results);
        expect(single.get(name), `${key} takes ${name}`).toSatisfy(Number.isFinite);
        const [, series = name] = /^(.+)-\d+$/.exec(name) ?? [];
        const spec = calculator.results[name] ?? calculator.results[series];
        expect(spec?.unit, `${key} takes ${name}`).toBe(sheetFigures[key].unit);
      }
    });

    it('takes the demo’s figures without a complaint about any of them', () => {
      const texts = fillFrom(demoSheet(), slug, knownKeys(calculator));
      const evaluation = evaluate(calculator, texts, reading);
      expect(evaluation.problems).toEqual([]);
      expect(fromQuery(queryFor(demoSheet(), slug, { keys: [...knownKeys(calculator)] }))).toEqual(
        texts,
      );
      const fillable = fillableKeys(slug, knownKeys(calculator));
      for (const key of Object.keys(texts)) expect(fillable).toContain(key);
    });
  },
);

it('a twin on six volts keeps its volts, its coils and its carburettors', () => {
  const figures = { cylinders: 2, volts: 6, 'fed-coils': 2 };
  const of = (slug: string, more = {}) => {
    const calculator = calculators.find((each) => each.slug === slug)!;
    const engine = { ...newEngine('e', 'E'), figures: { ...figures, ...more } };
    return fillFrom(engine, slug, knownKeys(calculator));
  };
  expect(of('wiring')).toMatchObject({ volts: '6V', coils: '2' });
  expect(of('jet-set')).toMatchObject({ wanted: '2' });
  // A magneto that makes its own current feeds no coil.
  expect(of('wiring', { 'fed-coils': 0 })).not.toHaveProperty('coils');
});

it('the pole that is earthed is the choice of the wiring, in words wherever it is read', () => {
  const wiring = calculators.find(({ slug }) => slug === 'wiring')!;
  const engine = (earth: number) => setFigure(newEngine('e', 'E'), 'earth', earth);
  const of = (from: Engine) => fillFrom(from, 'wiring', knownKeys(wiring));
  expect(of(engine(0))).toEqual({ earth: 'negative' });
  expect(of(engine(1))).toEqual({ earth: 'positive' });
  expect(of(newEngine('e', 'E'))).toEqual({});
  const words = (earth: number) => [
    figureLine(engine(earth), 'earth', 'mm'),
    targetWords(engine(earth), 'polarity', 'mm'),
  ];
  expect(words(0)).toEqual(['Earthed pole: Negative', '− of each coil to its points']);
  expect(words(1)).toEqual(['Earthed pole: Positive', '+ of each coil to its points']);
  expect(targetWords(newEngine('e', 'E'), 'polarity', 'mm')).toBeUndefined();
});

it('names no calculator that is not there', () => {
  const slugs = calculators.map(({ slug }) => slug);
  for (const key of figureKeys) {
    const { fills = {}, takes = {} } = sheetFigures[key];
    for (const slug of [...Object.keys(fills), ...Object.keys(takes)]) {
      expect(slugs, key).toContain(slug);
    }
  }
  for (const id of order) {
    for (const slug of Object.keys(steps[id].series ?? {})) expect(slugs, id).toContain(slug);
  }
});

describe('what a calculator gives back', () => {
  it('lands in the figure that means the same, where it is in range', () => {
    const places = placesFor(
      newEngine('e', 'E'),
      'piston-position',
      (key) => ({ stroke: 51, rod: 9999 })[key],
      (name) => ({ travel: 2.2 })[name],
    );
    expect(places).toEqual([
      { kind: 'figure', key: 'stroke', value: 51 },
      { kind: 'figure', key: 'target', value: 2.2 },
    ]);
  });

  it('a result that is read off lands in its step: the disc at the true top, either way it counts', () => {
    const sent = (top: number) =>
      placesFor(
        newEngine('e', 'E'),
        'find-tdc',
        () => undefined,
        (name) => ({ 'tdc-reading': top })[name],
      );
    const at = (value: number) => [{ kind: 'reading', step: 'top', index: 0, value }];
    expect(sent(2.5)).toEqual(at(2.5));
    expect(sent(-2.5)).toEqual(at(-2.5));
    expect(sent(357)).toEqual(at(-3));
    expect(sent(90)).toEqual([]);
    for (const id of order) {
      for (const [slug, name] of Object.entries<string>(steps[id].takes ?? {})) {
        expect(calculators.find((one) => one.slug === slug)?.results, id).toHaveProperty(name);
      }
    }
  });

  it('lands in the reading boxes of as many cylinders as there are', () => {
    const places = placesFor(
      { ...newEngine('e', 'E'), figures: { cylinders: 2 } },
      'plate-setting',
      (key) => ({ 'fired-1': 2.1, 'fired-2': 2.3, 'fired-3': 2.2 })[key],
      () => undefined,
    );
    expect(places).toEqual([
      { kind: 'reading', step: 'timing', index: 0, value: 2.1 },
      { kind: 'reading', step: 'timing', index: 1, value: 2.3 },
    ]);
  });
});

it('a figure goes into the address with its unit, whole', () => {
  const engine = { ...newEngine('e', 'E'), figures: { stroke: 50.8, target: 2.123456789 } };
  expect(fillFrom(engine, 'piston-position', knownKeys(position))).toEqual({
    stroke: '50.8mm',
    travel: '2.123456789mm',
  });
});

describe('what the sheet knows reaches each calculator that asks for it', () => {
  const engine = {
    ...newEngine('e', 'E'),
    figures: {
      target: 1.9,
      clip: 2,
      jet: 1.15,
      bore: 56,
      deck: 0.6,
      squish: 1.1,
      'dwell-angle': 190,
    },
  };
  it.each([
    ['degree-disc', 'marks', '1.9mm'],
    ['needle-and-clip', 'clip', '2'],
    ['needle-and-clip', 'main-jet', '1.15mm'],
    ['air-and-jet', 'jet', '1.15mm'],
    ['time-area', 'bore', '56mm'],
    ['time-area', 'deck', '0.6mm'],
    ['compression', 'solder', '1.1mm'],
    ['breaker-cam', 'dwell', '190deg'],
  ])('%s %s', (slug, key, text) => {
    const calculator = calculators.find((one) => one.slug === slug)!;
    expect(fillFrom(engine, slug, knownKeys(calculator))[key]).toBe(text);
  });

  it('the disc’s marks are the sheet’s timing on the sheet’s engine, and no longer the demo’s', () => {
    const disc = calculators.find((one) => one.slug === 'degree-disc')!;
    const texts = fillFrom(engine, 'degree-disc', knownKeys(disc));
    expect(evaluate(disc, texts, reading).values.marks).toEqual([1.9]);
  });

  it('a sheet of four cylinders is four cylinders to every calculator, with its own figures', () => {
    const four = [9.2, 9.3, null, 9.5].reduce<Engine>(
      (so, entry, i) => setEntry(so, 'head-volume', 'found', i, entry),
      {
        ...newEngine('e', 'E'),
        figures: {
          ...engine.figures,
          bore: 52,
          cylinders: 4,
          'head-volume': 9.4,
          'exhaust-opens': 96,
        },
      },
    );
    const of = (slug: string, from: Engine = four) => {
      const calculator = calculators.find((one) => one.slug === slug)!;
      const texts = fillFrom(from, slug, knownKeys(calculator));
      for (const key of Object.keys(texts)) {
        expect(fillableKeys(slug, knownKeys(calculator))).toContain(key);
      }
      return evaluate(calculator, texts, reading);
    };
    const compression = of('compression');
    expect(compression.values).toMatchObject({
      cylinders: 4,
      'head-volume': 9.2,
      'other-volume': [9.3, 9.4, 9.5],
      'other-deck': [0.6, 0.6, 0.6],
      'exhaust-opens': 96,
      'squish-from': 'solder',
      solder: 1.1,
    });
    expect(compression.results['squish']).toBe(1.1);
    expect(of('port-timing').values).toMatchObject({
      cylinders: 4,
      'other-deck': [0.6, 0.6, 0.6],
    });
    expect(of('squish-velocity').values).toMatchObject({ squish: 1.1, 'exhaust-closes': 96 });
    const read = setEntry(setEntry(four, 'squish', 'found', 0, 1.2), 'exhaust', 'found', 0, 95);
    expect(of('compression', read).results['squish']).toBe(1.2);
    expect(of('compression', read).values).toMatchObject({ 'exhaust-opens': 95 });
    expect(of('squish-velocity', read).values).toMatchObject({
      squish: 1.2,
      'exhaust-closes': 95,
    });
    // With an offset pin a port does not close as far from the top as it opens.
    const offset = { ...four, figures: { ...four.figures, offset: 1 } };
    expect(
      of('squish-velocity', offset).fields.find(({ key }) => key === 'exhaust-closes'),
    ).toMatchObject({ given: false });
    const eight = of('compression', { ...four, figures: { ...four.figures, cylinders: 8 } });
    expect(eight.values['other-volume']).toHaveLength(7);
    expect(eight.problems).toEqual([]);
  });

  it('where the sets belong reaches the layout of the plate, whichever way the cam turns', () => {
    const layout = calculators.find((one) => one.slug === 'plate-layout')!;
    const of = (figures: Engine['figures']) =>
      fillFrom({ ...newEngine('e', 'E'), figures }, 'plate-layout', knownKeys(layout));
    const four = of({ cylinders: 4, 'set-2': 90, 'set-3': 100, 'set-4': 200 });
    expect(four).toMatchObject({
      sets: '4',
      'spacing-2': '90deg',
      'spacing-3': '10deg',
      'spacing-4': '100deg',
    });
    for (const key of Object.keys(four)) {
      expect(fillableKeys('plate-layout', knownKeys(layout))).toContain(key);
    }
    const directions = (texts: Record<string, string>) =>
      evaluate(layout, { holes: '1', ...texts }, reading).results['direction'];
    expect(directions(four)).toEqual([90, 180, 190, 290]);
    expect(directions({ ...four, turning: 'clockwise' })).toEqual([90, 0, 350, 250]);
    // Fired 1, 3, 2: the second set stands beyond the third.
    const triple = of({ cylinders: 3, 'set-2': 240, 'set-3': 120 });
    expect(directions(triple)).toEqual([90, 330, 210]);
    expect(of({ cylinders: 3, 'set-2': 240 })).not.toHaveProperty('spacing-2');
  });

  /** Keys that the sheet and a calculator share without meaning the same. */
  const apart = new Set([
    'plate-layout bore',
    'plate-layout slot-radius',
    'find-tdc height',
    // As measured here; what the maker wants there.
    'piston-clearance ring-gap',
    'piston-clearance height',
    'port-timing height',
    // The sheet has the volts at the coil; here they are those of the battery.
    'wiring volts',
    // The bore of a jet and the height of liquid on its bench are no cylinder's and no float valve's.
    'jet-set bore',
    'jet-set head',
    // The large hole in a cover.
    'hole-pattern bore',
    // Of whatever part lies on the bench.
    'hole-pattern sets',
  ]);
  it('no input shares a name and a unit with a figure that does not fill it', () => {
    const unfilled = calculators.flatMap(({ slug, inputs }) =>
      Object.entries<Input>(inputs).flatMap(([key, input]) => {
        const figure = figureKeys.find((candidate) => candidate === key);
        if (!figure || input.kind === 'choice' || input.unit !== sheetFigures[figure].unit)
          return [];
        return inputFor(figure, slug) === key ? [] : [`${slug} ${key}`];
      }),
    );
    expect(unfilled.filter((name) => !apart.has(name))).toEqual([]);
  });
});

it('an engine with reeds has its ports looked at as one with reeds', () => {
  const reeds = setFigure(newEngine('e-9', 'Reeds'), 'reeds', 4);
  expect(fillFrom(reeds, 'port-timing', ['inlet'])).toEqual({ inlet: 'reed' });
  expect(fillFrom(reeds, 'time-area', ['inlet'])).toEqual({ inlet: 'none' });
  expect(fillFrom(setFigure(reeds, 'reeds', 0), 'port-timing', ['inlet'])).toEqual({});
  // A choice that the sheet makes is one that the calculator has.
  for (const key of figureKeys) {
    for (const [slug, [input, option]] of Object.entries(sheetFigures[key].chooses ?? {})) {
      const choice = calculatorBySlug(slug).inputs[input];
      expect(choice?.kind === 'choice' && option in choice.options, `${slug} ${input}`).toBe(true);
    }
  }
});
