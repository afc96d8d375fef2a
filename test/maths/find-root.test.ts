import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from '../../calculators/maths/find-root.ts';
import { codeOf } from './code-of.ts';

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

  it('says so when nothing is crossed', () => {
    expect(codeOf(() => findRoot((x) => x * x + 1, -1, 1))).toBe('no-crossing');
    expect(codeOf(() => findRoot(() => Number.NaN, -1, 1))).toBe('no-crossing');
  });
});
