import { describe, expect, it } from 'vitest';
import { allFrom, evaluate, knownKeys, type Evaluation } from '../../calculators/frame/evaluate.ts';
import { fromQuery, originsIn, toQuery } from '../../calculators/frame/address.ts';
import { Absent, type Input } from '../../calculators/frame/types.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { isExample } from '../../calculators/frame/whose-field.ts';
import { fillFrom } from '../../calculators/sheet/fill.ts';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { calculators } from '../../site/all-calculators.ts';
import { lastGood } from '../../site/calculator/last-good.ts';
import { drawn } from '../pictures/support/draw.tsx';
import { outside, overlaps, strikes } from '../pictures/support/faults.ts';
import { sheetsOf } from '../pictures/support/marks.ts';

type Figures = Partial<Record<FigureKey, number>>;

const engineOf = (figures: Figures): Engine => ({ ...newEngine('own', 'Own'), figures });

/** Engines far from the demo's, as a reader has put them into the sheet. */
const engines: readonly (readonly [string, Figures])[] = [
  ['a small square one', { bore: 40, stroke: 40, rod: 80, offset: 0 }],
  ['a large one', { bore: 72, stroke: 70, rod: 140, offset: 0 }],
  ['a very small one', { bore: 30, stroke: 25, rod: 50, offset: 0 }],
  ['a very large one', { bore: 90, stroke: 80, rod: 160, offset: 0 }],
  ['a short stroke', { bore: 60, stroke: 40, rod: 90, offset: 0 }],
  ['a long stroke', { bore: 40, stroke: 60, rod: 110, offset: 3 }],
  ['a bore alone', { bore: 72 }],
  ['a bore alone, the least', { bore: 20 }],
  ['a stroke alone', { stroke: 30 }],
  ...[2, 3, 4, 6].map((lobes) => [`${String(lobes)} lobes`, { lobes }] as const),
  ['a low cam', { lift: 0.3 }],
  ['a steep cam', { lobes: 2, rise: 20 }],
  ['a small plate', { 'plate-outside': 60 }],
  ['a smaller plate', { 'plate-outside': 25 }],
  ['a single', { cylinders: 1 }],
  ['eight cylinders', { cylinders: 8 }],
  ['many coils', { 'fed-coils': 16 }],
  ['a deep float', { height: -50 }],
  ['a wide hole in the plate', { 'plate-bore': 60 }],
  ['a wider hole in the plate', { 'plate-bore': 110 }],
  ['a small needle jet', { 'needle-jet': 2.2 }],
  ['a thick needle', { 'needle-diameter': 3 }],
  ['a needle of many grooves', { clip: 7 }],
  ['a small main jet', { jet: 0.6 }],
  ['a large main jet', { jet: 3 }],
];

const said = (state: Evaluation): string =>
  [
    ...state.problems.map(({ sentence }) => sentence),
    ...state.fields.flatMap(({ problem }) => problem ?? []),
  ].join(' | ');

describe.each(engines)('beside %s, of the reader’s own', (_, figures) => {
  it.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
    '%s: no figure that nobody gave stands in its way or is judged',
    (slug, calculator) => {
      const texts = fillFrom(engineOf(figures), slug, knownKeys(calculator));
      const state = evaluate(calculator, texts, {
        lengths: 'mm',
        ownEngine: true,
        origins: allFrom(texts, 'sheet'),
      });
      expect(said(state)).toBe('');
      expect(state.computed).toBe(true);
      // What was given stands as it was given.
      for (const field of state.fields) {
        if (texts[field.key] !== undefined) expect(field.text).toBe(texts[field.key]);
        else expect(isExample(field) || field.origin === 'example').toBe(true);
      }
      for (const line of remarksOf(calculator, state)) expect(line).not.toMatch(/In this example/);
      for (const sheet of sheetsOf(
        drawn(calculator, { texts, lengths: 'mm', evaluation: state }),
      )) {
        expect([...outside(sheet), ...overlaps(sheet), ...strikes(sheet)]).toEqual([]);
      }
    },
  );
});

const bySlug = (slug: string) => calculators.find((calculator) => calculator.slug === slug)!;
const valueOf = ({ fields }: Evaluation, key: string): unknown =>
  fields.find((field) => field.key === key)!.value;

describe('a box that is emptied, or half typed', () => {
  it.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
    '%s: stands so beside every engine of the reader’s own, and nothing is put into it',
    (slug, calculator) => {
      for (const [name, figures] of engines) {
        const texts = fillFrom(engineOf(figures), slug, knownKeys(calculator));
        const origins = allFrom(texts, 'sheet');
        const options = { lengths: 'mm', ownEngine: true } as const;
        const before = evaluate(calculator, texts, { ...options, origins });
        const held = lastGood(before, {});
        const boxes = before.fields.filter(({ kind, key }) => {
          const input = calculator.inputs[key] ?? calculator.inputs[key.replace(/-\d+$/, '')]!;
          return kind === 'figure' && 'givesWay' in input && input.givesWay !== undefined;
        });
        for (const { key } of boxes) {
          for (const text of ['', '-', '6 furlongs']) {
            const { fields } = evaluate(
              calculator,
              { ...texts, [key]: text },
              { ...options, held, origins: { ...origins, [key]: 'yours' } },
            );
            const box = fields.find((field) => field.key === key)!;
            expect(box.text, `${name}: ${key} “${text}”`).toBe(text);
            expect(box.problem, `${name}: ${key} “${text}”`).toBeDefined();
          }
        }
      }
    },
  );
});

describe('a figure of the example that gives way', () => {
  it.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
    '%s: none does among the example’s own',
    (_, calculator) => {
      const { values, fields } = evaluate(calculator, {}, { lengths: 'mm' });
      for (const field of fields) {
        const input: Input =
          calculator.inputs[field.key] ?? calculator.inputs[field.key.replace(/-\d+$/, '')]!;
        if (!('givesWay' in input) || input.givesWay === undefined) continue;
        expect(input.givesWay(field.value as number, values), field.key).toBeUndefined();
      }
    },
  );

  it.each([
    ['compression', 'bore=72mm', 'gasket-bore', 74],
    ['compression', 'bore=54mm', 'gasket-bore', 54],
    ['squish-velocity', 'bore=26mm', 'bowl', 18],
    ['squish-velocity', 'bore=120mm', 'clearance', 66.036],
    ['port-timing', 'stroke=40mm', 'port-1', 25.576],
    ['port-timing', 'stroke=40mm', 'port-2', 32.243],
    ['port-timing', 'stroke=45mm', 'port-2', 41],
    ['time-area', 'skirt=85mm', 'inlet-edge', 107.2],
    ['coil-charge', 'lobes=2', 'dwell-angle', 100],
    ['breaker-cam', 'lobes=2', 'rise', 25],
    ['breaker-cam', 'lobes=2', 'top', 60],
    ['breaker-cam', 'lobes=2&rise=40deg', 'top', 60],
    ['breaker-cam', 'lobes=2&top=150deg', 'rise', 15],
    ['breaker-cam', 'lift=0.2mm', 'gap', 0.07],
    ['needle-and-clip', 'jet-bore=2.2mm', 'needle-diameter', 2.11],
    ['needle-and-clip', 'needle-diameter=3mm', 'jet-bore', 3.09],
    ['needle-and-clip', 'clips=2', 'clip', 2],
    ['needle-and-clip', 'clip=7', 'clips', 7],
    ['jet-set', 'size=2.2mm', 'bore-2', 2.25],
    ['jet-set', 'size=1.1mm', 'bore-2', 1.125],
    ['plate-layout', 'outside=60mm', 'slot-radius', 27],
    ['plate-layout', 'bore=100mm', 'outside', 164],
    ['plate-layout', 'outside=23mm', 'bore', 7],
    ['plate-layout', 'outside=80mm&slots=0', 'radius-1', 31.5],
    ['plate-layout', 'outside=80mm&slot-radius=35mm', 'radius-2', 25],
  ])('%s?%s: %s stands at %d, and says that it was moved', (slug, query, key, value) => {
    const calculator = bySlug(slug);
    const options = { lengths: 'mm', origins: originsIn(query) } as const;
    const state = evaluate(calculator, fromQuery(query), options);
    expect(valueOf(state, key)).toBe(value);
    const field = state.fields.find((one) => one.key === key)!;
    const was = valueOf(evaluate(calculator, {}, { lengths: 'mm' }), key);
    expect(field).toMatchObject({ given: false, origin: 'example' });
    expect('gaveWay' in field).toBe(value !== was);
    // What it has become stays, with its note, when the address is opened again.
    const again = toQuery(state);
    const reloaded = evaluate(calculator, fromQuery(again), {
      ...options,
      origins: originsIn(again),
    });
    expect(valueOf(reloaded, key)).toBe(value);
    expect('gaveWay' in reloaded.fields.find((one) => one.key === key)!).toBe(value !== was);
  });

  it('goes on giving way after a link, and stands as soon as it is given', () => {
    const calculator = bySlug('compression');
    const first = evaluate(calculator, { bore: '72' }, { lengths: 'mm' });
    const query = toQuery(first);
    expect(query).toContain('gasket-bore=74mm');
    const texts = { ...fromQuery(query), bore: '80' };
    const after = evaluate(calculator, texts, {
      lengths: 'mm',
      origins: { ...originsIn(query), bore: 'yours' },
    });
    expect(valueOf(after, 'gasket-bore')).toBe(82);
    const given = evaluate(calculator, { bore: '72', 'gasket-bore': '70' }, { lengths: 'mm' });
    expect(given.computed).toBe(false);
    expect(valueOf(given, 'gasket-bore')).toBe(70);
    expect(said(given)).not.toMatch(/the example’s/);
  });

  it('stands as it is in an article, which shows what it sets', () => {
    const texts = { bore: '72' };
    const state = evaluate(bySlug('compression'), texts, { lengths: 'mm', demonstration: true });
    expect(valueOf(state, 'gasket-bore')).toBe(54);
  });
});

it('a size wanted finds a set in a bag of jets that nobody gave', () => {
  for (const by of ['pin', 'flow', 'number']) {
    for (const size of ['0.4', '0.8', '1.1', '1.9', '3.5']) {
      const state = evaluate(bySlug('jet-set'), { size, by }, { lengths: 'mm' });
      expect(state.results['spread'], `${by} ${size}`).toBeTypeOf('number');
      expect(said(state)).toBe('');
      const again = evaluate(bySlug('jet-set'), fromQuery(toQuery(state)), {
        lengths: 'mm',
        origins: originsIn(toQuery(state)),
      });
      expect(again.results).toEqual(state.results);
    }
  }
});

it('a bag of which too few fit says which of its jets are nobody’s', () => {
  const own = { size: '2', 'bore-1': '2', 'bore-2': '1', 'bore-3': '1' };
  const few = { ...own, jets: '5', wanted: '4' };
  const why = (texts: Record<string, string>): string => {
    const spread = evaluate(bySlug('jet-set'), texts, { lengths: 'mm' }).results['spread'];
    return spread instanceof Absent ? spread.why : '';
  };
  expect(why(few)).toMatch(/look for more jets\. Bore of jet 4 and bore of jet 5 are still the/);
  expect(why({ ...few, 'bore-4': '1', 'bore-5': '1' })).toMatch(/look for more jets\.$/);
});

it('a fault that lies with the example too says whose figure it is', () => {
  const calculator = bySlug('find-tdc');
  const state = evaluate(calculator, { rod: '20' }, { lengths: 'mm' });
  expect(said(state)).toContain('Stroke is still the example’s; give it first.');
  const given = evaluate(calculator, { rod: '20', stroke: '51' }, { lengths: 'mm' });
  expect(said(given)).not.toContain('the example’s');
});

it('no oversize is judged from readings or a standard bore that the reader has not given', () => {
  const calculator = calculators.find(({ slug }) => slug === 'piston-clearance')!;
  const why = (texts: Record<string, string>, lengths: 'mm' | 'in' = 'mm'): string => {
    const { oversize } = evaluate(calculator, texts, { lengths }).results;
    return oversize instanceof Absent ? oversize.why : '';
  };
  const bore = { bore: '61.55' };
  const standard = { ...bore, standard: '52' };
  const read = Object.fromEntries(
    ['along', 'across'].flatMap((way) => [1, 2, 3].map((i) => [`${way}-${i}`, '61.56'])),
  );
  for (const texts of [bore, standard, { ...bore, ...read }]) {
    expect(why(texts, 'in')).toMatch(/^Not judged yet: .* still the example’s; give \w+ first\.$/);
  }
  expect(why({ ...standard, ...read })).toMatch(
    /^A bore of 61.56 mm is no oversize of a standard bore of 52 mm/,
  );
});

it('a piston that does not go in fills its bore at no temperature', () => {
  const calculator = calculators.find(({ slug }) => slug === 'piston-clearance')!;
  for (const piston of ['61.55', '63.5']) {
    const { results } = evaluate(calculator, { bore: '61.55', piston }, { lengths: 'mm' });
    expect(results['cold']).toBeLessThanOrEqual(0);
    expect(results['fills-at']).toBeInstanceOf(Absent);
  }
});

it('a bore of the reader’s own is given a piston that could run in it', () => {
  const calculator = calculators.find(({ slug }) => slug === 'piston-clearance')!;
  for (const bore of [40, 51.9, 56.998, 90]) {
    const texts = { bore: String(bore) };
    const state = evaluate(calculator, texts, { lengths: 'mm', origins: allFrom(texts, 'sheet') });
    expect(state.results['cold']).toBeGreaterThan(0);
    expect(state.results['cold']).toBeLessThan(0.01 * bore);
  }
});
