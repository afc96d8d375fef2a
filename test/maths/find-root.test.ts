import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from '../../calculators/maths/numeric/find-root.ts';
import { thrown } from './thrown.ts';

describe('findRoot', () => {
  it.each<[string, (x: number) => number, number, number, number]>([
    ['a straight line', (x) => x - 3, 0, 10, 3],
    ['a cosine', Math.cos, 0, 3, Math.PI / 2],
    ['a triple root', (x) => (x - 1) ** 3, -5, 4, 1],
    ['a step', (x) => (x < 2 ? -1 : 1), 0, 100, 2],
    [
      'an exponential with all its change at one end',
      (x) => Math.exp(x) - 1e10,
      0,
      700,
      Math.log(1e10),
    ],
    ['a bracket given the wrong way round', (x) => x * x - 2, 2, 0, Math.SQRT2],
    ['a root at an end', (x) => x, 0, 1, 0],
  ])('finds the root of %s', (_words, f, low, high, root) => {
    expect(findRoot(f, low, high)).toBeCloseTo(root, 4);
  });

  it('runs down to neighbouring numbers', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-12, max: 1, noNaN: true }), (root) => {
        const found = findRoot((x) => Math.atan(x / root - 1), 0, 2);
        expect(Math.abs(found / root - 1)).toBeLessThan(1e-15 + 4 * Number.EPSILON);
      }),
    );
  });

  it('ends after few calls for every bracket', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        (root, half) => {
          let calls = 0;
          const power = 2 * half - 1;
          findRoot(
            (x) => {
              calls += 1;
              return x ** power - root ** power;
            },
            0,
            1,
          );
          expect(calls).toBeLessThan(120);
        },
      ),
    );
  });

  it('stops at the tolerance asked for', () => {
    const callsFor = (tolerance: number) => {
      let calls = 0;
      const found = findRoot(
        (x) => {
          calls += 1;
          return Math.sin(x) - 0.25;
        },
        0,
        1.5,
        tolerance,
      );
      expect(Math.abs(found - Math.asin(0.25))).toBeLessThan(tolerance + 1e-15);
      return calls;
    };
    expect(callsFor(1e-2)).toBeLessThan(callsFor(0));
  });

  // Halving alone would take some 52 calls, one for each binary digit of a number.
  it.each<[string, (x: number) => number, number, number, number, number]>([
    ['a straight line', (x) => x - 3, 0, 10, 3, 4],
    ['a parabola', (x) => x * x - 2, 0, 2, Math.SQRT2, 9],
    ['a cosine', Math.cos, 0, 3, Math.PI / 2, 9],
    ['an exponential', (x) => Math.exp(x) - 5, 0, 4, Math.log(5), 10],
    ['a logarithm', Math.log, 0.5, 4, 1, 9],
    ['an arc tangent', (x) => Math.atan(x - 1), -3, 8, 1, 10],
    ['a pole beside it', (x) => 1 / (x - 3) - 6, 3.01, 4, 3 + 1 / 6, 12],
    ['a ninth power', (x) => x ** 9 - 0.5, 0, 1, 0.5 ** (1 / 9), 12],
    ['a tenth power', (x) => x ** 10 - 1e-3, 0, 1, 1e-3 ** 0.1, 12],
  ])('needs few calls to the last digit of %s', (_words, f, low, high, root, most) => {
    let calls = 0;
    const found = findRoot(
      (x) => {
        calls += 1;
        return f(x);
      },
      low,
      high,
    );
    expect(Math.abs(found / root - 1)).toBeLessThan(3 * Number.EPSILON);
    expect(calls).toBeLessThanOrEqual(most);
  });

  it('asks no more once it has met the root itself', () => {
    const asked: number[] = [];
    const found = findRoot(
      (x) => {
        asked.push(x);
        return (x - 5) ** 3;
      },
      0,
      10,
    );
    expect(found).toBe(5);
    expect(asked).toEqual([0, 10, 5]);
  });

  it('takes a root at either end without looking further', () => {
    expect(findRoot((x) => x, 0, 1)).toBe(0);
    expect(findRoot((x) => x - 1, 0, 1)).toBe(1);
    expect(findRoot((x) => x * (x - 1), 0, 1)).toBe(0);
  });

  it('gives the best of the places it has tried', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 2.9, noNaN: true }),
        fc.double({ min: 1e-6, max: 0.3, noNaN: true }),
        (root, tolerance) => {
          const left: number[] = [];
          const f = (x: number) => Math.exp(x) - Math.exp(root);
          const found = findRoot(
            (x) => {
              left.push(Math.abs(f(x)));
              return f(x);
            },
            0,
            3,
            tolerance,
          );
          expect(Math.abs(f(found))).toBe(Math.min(...left));
        },
      ),
    );
  });

  it('does not look for ever between ends without number', () => {
    for (const [low, high] of [
      [0, Infinity],
      [-Infinity, 1],
      [0, Number.NaN],
    ] as const) {
      expect(thrown(() => findRoot((x) => x - 3, low, high)).code).toBe('no-crossing');
    }
  });

  it('says so when nothing is crossed, with both ends', () => {
    for (const f of [(x: number) => x * x + 1, (x: number) => -x * x - 1, () => Number.NaN]) {
      const error = thrown(() => findRoot(f, -1, 1.5));
      expect(error.code).toBe('no-crossing');
      expect(error.quantities).toEqual([]);
      expect(error.message).toMatch(/^No answer lies between -1 and 1\.5 for these figures/);
    }
  });
});
