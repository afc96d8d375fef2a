import { h } from 'preact';
import { describe, expect, it } from 'vitest';
import { defineCalculator } from '../../calculators/frame/define.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { absent } from '../../calculators/frame/types.ts';
import { run } from './sample.ts';

const turn = defineCalculator({
  slug: 'turn',
  title: 'Turn',
  purpose: 'An angle and the step it stands on.',
  alsoCalled: [],
  inputs: {
    angle: {
      kind: 'number',
      label: 'Angle',
      help: 'By disc.',
      unit: 'deg',
      min: -720,
      max: 720,
      why: 'no sample is otherwise',
      default: 0,
      step: 1,
      error: 0.5,
    },
  },
  results: {
    within: { label: 'Within a turn', unit: 'deg', help: '', decimals: 1, cyclic: 360 },
    plain: { label: 'The same', unit: 'deg', help: '', decimals: 1 },
    step: { label: 'Step', unit: 'count', help: '', decimals: 0, jumps: true },
  },
  fieldOf: {},
  compute: ({ angle }) => {
    const within = ((angle % 360) + 360) % 360;
    return { within, plain: within, step: Math.floor(angle) };
  },
  picture: () => h('svg', {}),
  care: 'A sample burns nobody.',
  limits: [],
  articles: [],
});

const spreadsAt = (angle: string) => evaluate(turn, { angle }, { lengths: 'mm' }).spreads;

describe('the ± of an angle that starts again after a turn', () => {
  it.each(['0', '360', '0.2', '359.8', '-0.3', '180'])('at %s is that of its reading', (angle) => {
    expect(spreadsAt(angle)['within']).toBeCloseTo(0.5, 9);
  });

  it('would be a whole turn otherwise', () => {
    expect(spreadsAt('0')['plain']).toBeGreaterThan(200);
  });
});

it('tells no ± of a figure that goes in jumps', () => {
  expect(spreadsAt('12')['step']).toBeUndefined();
});

it('works nothing out for the sake of a figure that is shown without a ±', () => {
  let worked = 0;
  const { cyclic: _, ...plain } = turn.results.within;
  const sharp = defineCalculator({
    ...turn,
    results: { ...turn.results, within: plain, step: { ...turn.results.step, jumps: true } },
    compute: ({ angle }) => {
      worked += 1;
      // There is none beside the reading, where a ± would be sought up to the edge.
      return { within: angle, plain: angle, step: angle === 12 ? 12 : absent('between steps') };
    },
  });
  expect(evaluate(sharp, { angle: '12' }, { lengths: 'mm' }).spreads['plain']).toBeCloseTo(0.5, 9);
  // As it is, as it is once more to compare with, and to either side.
  expect(worked).toBe(4);
});

describe('what makes up a ±', () => {
  const length = {
    unit: 'mm',
    help: 'By rule.',
    why: 'no sample is otherwise',
    step: 0.1,
  } as const;
  const one = { ...length, kind: 'number', min: -99, max: 99 } as const;
  const shown = { unit: 'mm', help: '', decimals: 2 } as const;
  const sums = defineCalculator({
    slug: 'sums',
    title: 'Sums',
    purpose: 'Two lengths and two legs.',
    alsoCalled: [],
    fieldOf: {},
    picture: () => h('svg', {}),
    care: 'A sample burns nobody.',
    limits: [],
    articles: [],
    inputs: {
      a: { ...one, label: 'A', default: 10, error: 0.3 },
      b: { ...one, label: 'B', default: 9.9, error: 0.4 },
      leg: {
        ...{ ...length, kind: 'series', label: 'Leg', min: 0, max: 9, most: 2, first: 2 },
        ...{ count: () => 2, member: (i: number) => `Leg ${String(i)}`, default: () => 1 },
        error: 0.1,
      },
    },
    results: {
      sum: { ...shown, label: 'Sum' },
      apart: { ...shown, label: 'Apart' },
      fitted: { ...shown, label: 'Fitted', spreadFrom: 'scatter' },
      scatter: { ...shown, label: 'Scatter', bare: true },
      round: { ...shown, label: 'On a round', cyclic: 0.9 },
      larger: { ...shown, label: 'Larger' },
      legs: { ...shown, label: 'Legs' },
    },
    decide: ({ a, b }) => (a > b ? 'a' : 'b'),
    widened: { results: ['sum'], by: () => 2 },
    compute: ({ a, b, leg }, decided) => ({
      sum: a + b,
      apart: a - b,
      fitted: a - b,
      scatter: -1.2,
      round: (a - b) % 0.9,
      larger: (decided ?? (a > b ? 'a' : 'b')) === 'a' ? a : b,
      legs: leg[0]! + 2 * leg[1]!,
    }),
  });
  const { spreads, parts } = evaluate(sums, {}, { lengths: 'mm' });
  const partsOf = (name: string) =>
    parts[name]!.map(({ key, contribution }) => [key, Number(contribution.toFixed(9))]);

  // 3, 4 and 5; 5, 12 and 13.
  it('is joined by root-sum-square, the largest part first, with the result’s own whatever its sign', () => {
    expect(spreads['apart']).toBeCloseTo(0.5, 9);
    expect(partsOf('apart')).toEqual([
      ['b', 0.4],
      ['a', 0.3],
    ]);
    expect(spreads['fitted']).toBeCloseTo(1.3, 9);
    expect(partsOf('fitted')).toEqual([
      ['scatter', 1.2],
      ['b', 0.4],
      ['a', 0.3],
    ]);
  });

  it('is wider with all its parts only where the readings contradict each other', () => {
    expect(spreads['sum']).toBeCloseTo(1, 9);
    expect(partsOf('sum')).toEqual([
      ['b', 0.8],
      ['a', 0.6],
    ]);
  });

  it('leaves a choice as the readings made it', () => {
    expect(partsOf('larger')).toEqual([['a', 0.3]]);
  });

  it('names the members of a series by the number of their boxes', () => {
    expect(partsOf('legs')).toEqual([
      ['leg-3', 0.2],
      ['leg-2', 0.1],
    ]);
    const ofSample = run({ 'gap-error': '0.1', 'width-error': '0' });
    expect(ofSample.parts['share-2']!.map(({ key }) => key)).toEqual(['gap-2']);
  });

  it('is no more than half of a round either way, which is all of it', () => {
    expect(spreads['round']).toBe(0.45);
  });
});
