import { h } from 'preact';
import { describe, expect, it } from 'vitest';
import { defineCalculator } from '../../calculators/frame/define.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { absent } from '../../calculators/frame/types.ts';

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
