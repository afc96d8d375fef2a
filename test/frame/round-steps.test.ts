import { expect, it } from 'vitest';
import { onRoundStep, roundStep } from '../../calculators/frame/field/round-steps.ts';

const gap = { unit: 'mm', min: 0.1, max: 5, step: 0.05 } as const;
const stroke = { unit: 'mm', min: 10, max: 200, step: 0.5 } as const;
const angle = { unit: 'deg', min: 0, max: 90, step: 0.5 } as const;
const thou = (mm: number): number => mm / 0.0254;

it('a step is a round figure of the unit shown', () => {
  expect(roundStep(gap, 'mm')).toBe(0.05);
  expect(roundStep(gap, 'thou')).toBe(2);
  expect(roundStep(stroke, 'in')).toBe(0.02);
});

it('a handle moved in millimetres stops on a round figure of the inches shown', () => {
  expect(thou(onRoundStep(2.3, 2.286, gap, 'in'))).toBeCloseTo(92, 9);
  expect(thou(onRoundStep(2.4, 2.286, gap, 'in'))).toBeCloseTo(94, 9);
  expect(onRoundStep(60.3, 60, stroke, 'in') / 25.4).toBeCloseTo(2.38, 9);
});

it('it moves on at the least step, either way, from a figure that is not round too', () => {
  expect(thou(onRoundStep(2.29, 2.286, gap, 'in'))).toBeCloseTo(92, 9);
  expect(thou(onRoundStep(2.28, 2.286, gap, 'in'))).toBeCloseTo(88, 9);
  expect(thou(onRoundStep(2.2, 2.21, gap, 'in'))).toBeLessThan(thou(2.21));
});

it('it stays within the range, and where nothing is turned it stays as it is', () => {
  expect(onRoundStep(4.999, 4.9, gap, 'in')).toBeLessThanOrEqual(5);
  expect(onRoundStep(0.1, 0.13, gap, 'in')).toBeGreaterThanOrEqual(0.1);
  expect(onRoundStep(2.31, 2.2, gap, 'mm')).toBe(2.31);
  expect(onRoundStep(31.5, 30, angle, 'in')).toBe(31.5);
  expect(thou(onRoundStep(2.3, undefined, gap, 'in'))).toBeCloseTo(90, 9);
});
