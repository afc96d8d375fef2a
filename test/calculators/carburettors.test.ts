import { describe, expect, it } from 'vitest';
import { readingOf } from '../../calculators/carburettors/jet-set/readings.ts';
import airAndJet from '../../calculators/carburettors/air-and-jet/calculator.tsx';
import jetSet from '../../calculators/carburettors/jet-set/calculator.tsx';
import slideBalance from '../../calculators/carburettors/slide-balance/calculator.tsx';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { Absent, type AnyCalculator } from '../../calculators/frame/types.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';

const run = (texts: Texts) =>
  evaluate(airAndJet as unknown as AnyCalculator, texts, { lengths: 'mm' });
const share = ({ results, spreads }: ReturnType<typeof run>): number =>
  spreads['density']! / (results['density'] as number);

describe('air and jet: how exact it is', () => {
  it('counts the weather where no barometer was read', () => {
    expect(share(run({}))).toBeGreaterThan(0.015);
    expect(share(run({}))).toBeLessThan(0.03);
  });

  it('does not where one was, whatever the height', () => {
    expect(share(run({ pressure: '91' }))).toBeLessThan(0.006);
    expect(share(run({ pressure: '91', 'altitude-error': '3000' }))).toBeLessThan(0.006);
  });
});

describe('slide balance by vacuum', () => {
  it('brings two slides to the less open of them, as it does by drill', () => {
    const turns = (texts: Texts): unknown =>
      evaluate(slideBalance as unknown as AnyCalculator, texts, { lengths: 'mm' }).results['turn'];
    // 32 is more vacuum than 30, and so the less open: the other is closed to it.
    const [first, second] = turns({
      slides: '2',
      method: 'vacuum',
      'vacuum-1': '30',
      'vacuum-2': '32',
    }) as number[];
    expect(first).toBeLessThan(0);
    expect(second).toBe(0);
    const [wide, narrow] = turns({
      slides: '2',
      method: 'drill',
      'opening-1': '2',
      'opening-2': '1.5',
    }) as number[];
    expect(wide).toBeLessThan(0);
    expect(narrow).toBe(0);
  });
});

describe('a jet for one carburettor', () => {
  const bag = { jets: '3', wanted: '1', 'bore-1': '1.07', 'bore-2': '1.09', 'bore-3': '1.12' };
  const of = (texts: Texts) =>
    evaluate(jetSet as unknown as AnyCalculator, { ...bag, ...texts }, { lengths: 'mm' });

  it('is the nearest to the size wanted, and said to be so', () => {
    const near = of({ size: '1.092', tolerance: '4' });
    expect(near.results['chosen']).toEqual([2]);
    expect(remarksOf(jetSet as unknown as AnyCalculator, near)[0]).toMatch(
      /Fit jet 2: of all within 4\.0 per cent of the size wanted it is the nearest, 0\.4 per cent less area/,
    );
    expect(of({ size: '1.115', tolerance: '10' }).results['chosen']).toEqual([3]);
  });

  it('is none while no size is wanted: one jet differs from no other', () => {
    const { chosen } = of({}).results;
    expect(chosen).toBeInstanceOf(Absent);
    expect((chosen as Absent).why).toMatch(/Give the size wanted/);
  });
});

it('the answer names the best set and orders nothing: the remark does, where the set is alike', () => {
  expect(jetSet.results.chosen.label).toBe('Best set: jet');
});

it('a jet four times as large as a known one has four times its number, where numbers tell the flow', () => {
  const bench = { volume: 100, head: 300, coefficient: 0.7, 'known-number': 100, 'known-bore': 1 };
  const of = { ...bench, by: 'number', size: undefined } as const;
  expect(readingOf({ ...of, 'number-means': 'flow' }, 2)).toBeCloseTo(400, 9);
  expect(readingOf({ ...of, 'number-means': 'size' }, 2)).toBeCloseTo(200, 9);
});

describe('what cannot be is laid to the field that it lies with', () => {
  const problems = (slug: string, texts: Texts) =>
    evaluate(calculatorBySlug(slug), texts, { lengths: 'mm' }).problems.map(({ key }) => key);

  it('a clip in a groove that the needle has not got', () => {
    expect(problems('needle-and-clip', { clip: '6', clips: '5' })).toEqual(
      expect.arrayContaining(['clip']),
    );
    expect(problems('needle-and-clip', { clip: '5', clips: '5' })).toEqual([]);
  });

  // No weather has 80 kPa at the level of the sea: it was read on a mountain.
  it.each([
    ['now', ''],
    ['then', 'right-'],
  ])('a pressure of the spot that is told as of the sea, %s', (_, day) => {
    const texts = { [`${day}pressure`]: '80', [`${day}pressure-is`]: 'sea' };
    expect(problems('air-and-jet', texts)).toEqual([`${day}pressure`]);
  });
});
