import { expect, it } from 'vitest';
import { spindleSpeed } from '../../calculators/maths/plate/cutting-speed.ts';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';

it('turns as fast as the workshop rule says', () => {
  // The rule of the United States Army's Ordnance subcourse OD 1645, Lathe Operations: surface feet
  // a minute times 12, divided by pi times the diameter in inches.
  for (const [feet, inches] of [
    [100, 1],
    [300, 4],
    [90, 0.5],
  ] as const) {
    const rule = (12 * feet) / (Math.PI * inches);
    expect(spindleSpeed(feet * 0.3048, inches * 25.4)).toBeCloseTo(rule, 9);
  }
  // By hand: 31.4159 m/min round 100 mm is 100 turns.
  expect(spindleSpeed(31.415926535897932, 100)).toBeCloseTo(100, 9);
});

it('refuses what is no speed and no diameter', () => {
  for (const [speed, diameter, quantity] of [
    [0, 50, 'cuttingSpeed'],
    [NaN, 50, 'cuttingSpeed'],
    [20, 0, 'diameter'],
    [20, Infinity, 'diameter'],
  ] as const) {
    let thrown: unknown;
    try {
      spindleSpeed(speed, diameter);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(MathsError);
    expect((thrown as MathsError).quantities).toEqual([quantity]);
  }
});
