import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readingOf, travelOf } from '../../calculators/maths/crank/indicator-tilt.ts';
import { angleOf, arcOf } from '../../calculators/maths/crank/rim-arc.ts';
import { codeOf } from './code-of.ts';

describe('arc on a rim', () => {
  it('is the whole rim for a turn, and its inverse', () => {
    expect(arcOf(100, 360)).toBeCloseTo(Math.PI * 100, 12);
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: -720, max: 720, noNaN: true }),
        (diameter, angle) => {
          expect(angleOf(diameter, arcOf(diameter, angle))).toBeCloseTo(angle, 9);
        },
      ),
    );
  });

  it.each([
    ['diameter-not-positive', () => arcOf(0, 10)],
    ['diameter-not-positive', () => angleOf(-5, 10)],
    ['not-a-number', () => arcOf(Number.NaN, 10)],
    ['not-a-number', () => angleOf(100, Number.NaN)],
  ])('refuses with %s', (code, run) => {
    expect(codeOf(run)).toBe(code);
  });
});

describe('leaning indicator', () => {
  it('shows too much, either way it leans', () => {
    expect(readingOf(2, 0)).toBe(2);
    expect(readingOf(2, 60)).toBeCloseTo(4, 12);
    expect(readingOf(2, -60)).toBeCloseTo(4, 12);
    expect(travelOf(readingOf(2.2, 17), 17)).toBeCloseTo(2.2, 14);
  });

  it.each([
    ['tilt-too-large', () => readingOf(2, 90)],
    ['tilt-too-large', () => travelOf(2, -95)],
    ['not-a-number', () => readingOf(Number.NaN, 5)],
    ['not-a-number', () => travelOf(2, Number.NaN)],
  ])('refuses with %s', (code, run) => {
    expect(codeOf(run)).toBe(code);
  });
});
