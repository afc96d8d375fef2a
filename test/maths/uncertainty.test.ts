import { describe, expect, it } from 'vitest';
import { MathsError } from '../../calculators/maths/errors.ts';
import {
  angleBefore,
  degreesPerMillimetre,
  travelAt,
} from '../../calculators/maths/slider-crank.ts';
import { propagate } from '../../calculators/maths/uncertainty.ts';
import { codeOf } from './code-of.ts';

const engine = { stroke: 51, rodLength: 104, pinOffset: 0 };

describe('propagate', () => {
  it('adds independent errors of a sum by root-sum-square', () => {
    const { value, plusMinus, contributions } = propagate(([a, b]) => a! + b!, [10, 20], [3, 4]);
    expect(value).toBe(30);
    expect(contributions[0]).toBeCloseTo(3, 12);
    expect(contributions[1]).toBeCloseTo(4, 12);
    expect(plusMinus).toBeCloseTo(5, 12);
  });

  it('weighs each error by the slope', () => {
    const { contributions } = propagate(([a, b]) => 2 * a! - 7 * b!, [1, 1], [0.1, 0.2]);
    expect(contributions[0]).toBeCloseTo(0.2, 12);
    expect(contributions[1]).toBeCloseTo(1.4, 12);
  });

  it('says what a travel is worth in degrees', () => {
    const angle = angleBefore(engine, 2.2);
    const { plusMinus } = propagate(([travel]) => angleBefore(engine, travel!), [2.2], [0.02]);
    expect(plusMinus / (0.02 * degreesPerMillimetre(engine, -angle))).toBeCloseTo(1, 3);
  });

  it('does not call a figure exact at the top of a curve', () => {
    const { plusMinus } = propagate(([angle]) => travelAt(engine, angle!), [0], [1]);
    expect(plusMinus).toBeCloseTo(travelAt(engine, 1), 12);
  });

  it('looks to one side where the other is impossible', () => {
    const { plusMinus } = propagate(([travel]) => angleBefore(engine, travel!), [0], [0.01]);
    expect(plusMinus).toBeCloseTo(angleBefore(engine, 0.01), 12);
  });

  it('looks nearer where both sides are impossible', () => {
    const { plusMinus } = propagate(([x]) => inside(3 * x!), [0], [50]);
    expect(plusMinus).toBeCloseTo(150, 9);
  });

  it('leaves out what is exact', () => {
    expect(propagate(([a]) => 1 / a!, [0.5], [0]).plusMinus).toBe(0);
    expect(propagate(([a]) => 1 / a!, [0.5], []).plusMinus).toBe(0);
  });

  it('refuses what has no answer and hides no fault of the code', () => {
    expect(codeOf(() => propagate(([a]) => a!, [1], [-1]))).toBe('bad-uncertainty');
    expect(codeOf(() => propagate(([a]) => a!, [1], [Number.NaN]))).toBe('bad-uncertainty');
    expect(codeOf(() => propagate(([a]) => (a === 1 ? 1 : Number.NaN), [1], [1]))).toBe(
      'no-neighbour',
    );
    const faulty = ([a]: readonly number[]) => {
      if (a !== 1) throw new TypeError('a fault');
      return a;
    };
    expect(() => propagate(faulty, [1], [1])).toThrow(TypeError);
  });
});

function inside(value: number): number {
  if (Math.abs(value) > 10) throw new MathsError('outside', [], 'Outside.');
  return value;
}
