import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decimalsFor,
  plainDecimal,
  sayNumber,
  toDecimals,
} from '../../calculators/maths/numeric/rounding.ts';
import { codeOf } from './code-of.ts';
import { thrown } from './thrown.ts';

describe('digits', () => {
  it.each([
    [0.05, 2],
    [0.013, 3],
    [0.25, 2],
    [0.3, 1],
    [0.096, 2],
    [1, 1],
    [3, 0],
    [13, 0],
    [40, -1],
    [1500, -2],
    [2.9999999999999996e-3, 3],
    [1e-300, 15],
  ])('±%d leaves %d decimals', (uncertainty, decimals) => {
    expect(decimalsFor(uncertainty)).toBe(decimals);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses ±%d', (uncertainty) => {
    expect(codeOf(() => decimalsFor(uncertainty))).toBe('bad-uncertainty');
  });
});

describe('rounding as a person does it', () => {
  // By hand, with halves away from 0.
  it.each([
    [21.15, 1, '21.2'],
    [-21.15, 1, '-21.2'],
    // As a subtraction leaves it: 338.85 less 360.
    [338.85 - 360, 1, '-21.2'],
    [1.005, 2, '1.01'],
    [2.5, 0, '3'],
    [-2.5, 0, '-3'],
    [0.125, 2, '0.13'],
    [0.1 + 0.2, 12, '0.300000000000'],
    [-0.0004, 2, '0.00'],
    [1.5e-7, 7, '0.0000002'],
    [123456789012.5, 0, '123456789013'],
    [2 ** 60, 3, '1152921504606846976.000'],
  ])('%d to %d decimals is %s', (value, decimals, text) => {
    expect(toDecimals(value, decimals)).toBe(text);
  });
});

describe('plain decimals', () => {
  it.each([
    [1e-7, '0.0000001'],
    [-1.25e-9, '-0.00000000125'],
    [1.5e21, '1500000000000000000000'],
    [-1e300, `-1${'0'.repeat(300)}`],
    [123.456, '123.456'],
    [-0, '0'],
  ])('writes %d as %s', (value, text) => {
    expect(plainDecimal(value)).toBe(text);
  });

  it('turn back into the very same number', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        const text = plainDecimal(value);
        expect(text).toMatch(/^-?\d+(\.\d+)?$/);
        expect(Number(text)).toBe(value === 0 ? 0 : value);
      }),
      { numRuns: 1000 },
    );
  });

  it('have no text for what is not a number', () => {
    expect(codeOf(() => plainDecimal(Number.NaN))).toBe('not-a-number');
    expect(thrown(() => plainDecimal(Number.NaN)).quantities).toEqual(['value']);
    expect(thrown(() => decimalsFor(0)).quantities).toEqual(['uncertainty']);
    expect(plainDecimal(-0)).toBe('0');
  });

  it('are short in sentences', () => {
    expect(sayNumber(51.003612545)).toBe('51.004');
    expect(sayNumber(2e-7)).toBe('0.0000002');
    expect(sayNumber(Number.NaN)).toBe('no number at all');
  });
});
