import { h } from 'preact';
import { describe, expect, it } from 'vitest';
import { defineCalculator } from '../../calculators/frame/define.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';

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
