import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
import {
  angleBefore,
  degreesPerMillimetre,
  travelAt,
} from '../../calculators/maths/crank/slider-crank.ts';
import { propagate, propagateAll } from '../../calculators/maths/numeric/uncertainty.ts';
import { codeOf } from './code-of.ts';
import { thrown } from './thrown.ts';

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

  it.each([
    ['up', -2, 4],
    ['down', -4, 2],
  ])('goes by the side that reaches further, here %s', (_, low, high) => {
    // As far as it can be followed this is a line of slope 3, and 50 of error make 150.
    const line = ([x]: readonly number[]) => (x! < low || x! > high ? Number.NaN : 3 * x!);
    expect(propagate(line, [0], [50]).plusMinus).toBeCloseTo(150, 6);
  });

  it('counts both sides where they reach equally far', () => {
    // Up to its walls at −1 and 1 it rises by 2 and falls by 1; 10 of error is ten times as far.
    const bent = ([x]: readonly number[]) => (Math.abs(x!) > 1 ? Number.NaN : x! > 0 ? 2 * x! : x!);
    expect(propagate(bent, [0], [10]).plusMinus).toBeCloseTo(10 * Math.sqrt((4 + 1) / 2), 6);
  });

  it.each([
    ['up', (x: number) => (x > 1 ? Number.NaN : x > 0 ? x : x / 10)],
    ['down', (x: number) => (x < -1 ? Number.NaN : x < 0 ? x : x / 10)],
  ])('counts what happens up to the wall where that is the more: %s', (_, f) => {
    // 2 of error: −0.2 on the open side, and 1 before the wall on the other.
    const { plusMinus } = propagate(([x]) => f(x!), [0], [2]);
    expect(plusMinus).toBeCloseTo(Math.sqrt((0.2 ** 2 + 1) / 2), 6);
  });

  it('does not stumble over a place on the way that has no answer', () => {
    const holed = ([x]: readonly number[]) =>
      Math.abs(x!) > 1 || Math.abs(Math.abs(x!) - 0.5) < 0.1 ? Number.NaN : x!;
    expect(propagate(holed, [0], [2]).plusMinus).toBeCloseTo(2, 6);
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
    expect(thrown(() => propagate(([a]) => a!, [1], [Infinity])).quantities).toEqual([
      'uncertainty',
    ]);
    const lonely = ([a, b]: readonly number[]) => (a === 1 ? b! : Number.NaN);
    const error = thrown(() => propagate(lonely, [1, 1], [1, 1]));
    expect(error.code).toBe('no-neighbour');
    expect(error.quantities).toEqual(['uncertainty']);
    const faulty = ([a]: readonly number[]) => {
      if (a !== 1) throw new TypeError('a fault');
      return a;
    };
    expect(() => propagate(faulty, [1], [1])).toThrow(TypeError);
  });
});

describe('a curve', () => {
  it('counts what both sides do, by the mean of their squares', () => {
    // 1 ± 0.5 squared is 2.25 or 0.25: changes of 1.25 and −0.75.
    const { plusMinus } = propagate(([x]) => x! ** 2, [1], [0.5]);
    expect(plusMinus).toBeCloseTo(Math.sqrt((1.25 ** 2 + 0.75 ** 2) / 2), 12);
  });

  it.each([
    ['a square root', (x: number) => (x < 0 ? Number.NaN : Math.sqrt(x)), 1],
    ['an angle from travel', (x: number) => angleBefore(engine, x), 2.2],
    ['a line between two walls', (x: number) => inside(3 * x), 1],
    ['a line with a wall at the reading', (x: number) => inside(10 - x), 0],
  ])('%s never looks better for a worse reading', (_, f, at) => {
    const error = fc.double({ min: 1e-3, max: 200, noNaN: true });
    const plusMinus = (e: number): number => propagate(([x]) => f(x!), [at], [e]).plusMinus;
    fc.assert(
      fc.property(error, error, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(plusMinus(more)).toBeGreaterThanOrEqual(plusMinus(less) * (1 - 1e-9));
      }),
    );
    expect(plusMinus(400)).toBeGreaterThan(plusMinus(200));
  });

  it('does not look better just where one side ends', () => {
    const root = (e: number) =>
      propagate(([x]) => (x! < 0 ? Number.NaN : Math.sqrt(x!)), [1], [e]).plusMinus;
    expect(root(1.01)).toBeGreaterThan(root(1));
  });

  it('does not run away where the result does, at the edge of the possible', () => {
    const { plusMinus } = propagate(([x]) => (x! > 0 ? 1 / x! : Number.NaN), [1], [1.5]);
    expect(plusMinus).toBeLessThan(5);
  });
});

describe('propagateAll', () => {
  const both = ([a, b]: readonly number[]) => [a! + b!, 2 * a!, a! > 10 ? 1 : undefined];

  it('says of every result what every reading does to it', () => {
    const [sum, twice, none] = propagateAll(both, [1, 1], [3, 4]);
    expect(sum!.plusMinus).toBeCloseTo(5, 12);
    expect(sum!.shares[0]).toBeCloseTo(9 / 25, 12);
    expect(sum!.shares[1]).toBeCloseTo(16 / 25, 12);
    expect(twice!.contributions).toEqual([6, 0]);
    expect(twice!.shares).toEqual([1, 0]);
    expect(none).toBeUndefined();
  });

  it('has no shares to give where nothing is uncertain', () => {
    expect(propagateAll(both, [1, 1], [0, 0])[0]).toEqual({
      plusMinus: 0,
      contributions: [0, 0],
      shares: [0, 0],
    });
  });

  it('works the model out once a side, however many results it has', () => {
    let times = 0;
    const model = (x: readonly number[]) => {
      times += 1;
      return Array.from({ length: 50 }, (_, i) => i * x[0]! + x[1]!);
    };
    propagateAll(model, [1, 2], [0.1, 0.2]);
    expect(times).toBe(1 + 2 * 2);
  });

  it('works the model out once more where the reading lies at the edge of the possible, not forty times', () => {
    let times = 0;
    const model = ([mass]: readonly number[]) => {
      times += 1;
      return mass! < 0 ? undefined : [mass!];
    };
    expect(propagateAll(model, [0], [0.5])[0]!.plusMinus).toBeCloseTo(0.5, 12);
    expect(times).toBe(1 + 2 + 1);
  });

  it('goes on where the model makes no engine, and has nothing where it makes none at all', () => {
    const model = ([x]: readonly number[]) => (x! < 0 ? undefined : [x!]);
    expect(propagateAll(model, [0], [1])[0]!.plusMinus).toBeCloseTo(1, 12);
    expect(propagateAll(model, [-1], [1])).toEqual([]);
  });
});

function inside(value: number): number {
  if (Math.abs(value) > 10) throw new MathsError('outside', [], 'Outside.');
  return value;
}
