import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  discCorrection,
  discScale,
  isEitherScale,
  dwellAtTop,
  middleShift,
  offsetBias,
  tdcReading,
  tdcSpread,
} from '../../calculators/maths/crank/find-tdc.ts';
import { codeOf } from './code-of.ts';

const plain = { stroke: 51, rodLength: 104, pinOffset: 0 };
const offset = { ...plain, pinOffset: 1.5 };

describe('the kind of disc', () => {
  it.each([
    [36, 43, 'both-ways'],
    [43, 36, 'both-ways'],
    [30, 30, 'both-ways'],
    [100, 119.9, 'both-ways'],
    [310, 64, 'one-way'],
    [20, 190, 'one-way'],
    [-30, 40, 'one-way'],
    [12, 95, 'one-way'],
    [100, 120, 'one-way'],
    // Less than 20° apart, so that only what no disc with two scales shows can tell.
    [185, 190, 'one-way'],
    [185, 175, 'one-way'],
    [175, 185, 'one-way'],
    [-5, 10, 'one-way'],
    [10, -5, 'one-way'],
    [0, 10, 'both-ways'],
    [10, 0, 'both-ways'],
    [180, 170, 'both-ways'],
    [170, 180, 'both-ways'],
    // Places on a one-way disc whose arc would be all but the whole round.
    [60, 30, 'both-ways'],
    [180, 0, 'both-ways'],
  ])('%d before and %d after is %s', (before, after, scale) => {
    expect(discScale(before, after)).toBe(scale);
  });
});

describe('whether the other kind of disc would do as well', () => {
  it.each([
    [30, 50, true],
    [12, 95, true],
    [100, 120, true],
    [36, 43, false],
    [60, 30, false],
    [310, 64, false],
    [-30, 40, false],
    [20, 190, false],
  ])('%d before and %d after: %s', (before, after, either) => {
    expect(isEitherScale(before, after)).toBe(either);
  });
});

describe('the reading at TDC', () => {
  it.each([
    ['equal readings', 40, 40, 0],
    ['more after than before', 36, 43, 3.5],
    ['more before than after', 43, 36, -3.5],
    ['a one-way disc', 12, 95, 53.5],
    ['a one-way disc across its zero', 350, 12, 1],
    ['a one-way disc across its zero, top below it', 310, 40, 355],
    ['a disc with a sign', -30, 40, 5],
    ['a disc with a sign, top before its zero', -40, 20, -10],
    ['a disc with a sign, turned past its lowest', 20, -10, -175],
    ['a one-way disc read at its zero after the top', 300, 0, 330],
  ])('%s: %d and %d', (_words, before, after, expected) => {
    expect(tdcReading(before, after)).toBeCloseTo(expected, 12);
  });

  it('moves with the disc', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 25, max: 85, noNaN: true }),
        fc.double({ min: -9, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 359, noNaN: true }),
        (stop, shift, zero) => {
          expect(tdcReading(stop - shift, stop + shift)).toBeCloseTo(shift, 9);
          const place = (angle: number) => (angle + 360) % 360;
          const top = tdcReading(place(zero - stop), place(zero + stop), 'one-way');
          expect(Math.abs(Math.sin(((top - zero) * Math.PI) / 360))).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it('is undone by the correction', () => {
    expect(discCorrection(3.5)).toBe(-3.5);
    expect(discCorrection(355)).toBe(5);
    expect(discCorrection(180)).toBe(180);
    expect(discCorrection(0)).toBe(0);
  });

  it.each([
    ['no-arc', () => tdcReading(100, 100, 'one-way')],
    ['no-arc', () => tdcReading(0, 0)],
    ['reading-off-disc', () => tdcReading(400, 20)],
    ['reading-off-disc', () => tdcReading(-10, 20, 'both-ways')],
    ['not-a-number', () => tdcReading(Number.NaN, 20)],
    ['not-a-number', () => discScale(10, Number.POSITIVE_INFINITY)],
  ])('refuses with %s', (code, run) => {
    expect(codeOf(run)).toBe(code);
  });
});

describe('how wrong it can be', () => {
  it('halves nothing when both readings are out the same way', () => {
    expect(tdcSpread(1).independent).toBeCloseTo(Math.SQRT1_2, 12);
    expect(tdcSpread(1).worst).toBe(1);
    expect(codeOf(() => tdcSpread(-1))).toBe('negative');
  });

  it('dwells longer the coarser the indicator', () => {
    expect(dwellAtTop(plain, 0)).toBe(0);
    expect(dwellAtTop(plain, 0.04) / dwellAtTop(plain, 0.01)).toBeCloseTo(2, 3);
  });

  it('forgives a difference of heights more, the lower the piston', () => {
    const shifts = [0.5, 2, 5, 10, 20].map((height) => middleShift(plain, height, 0.05));
    expect(shifts).toEqual(shifts.toSorted((a, b) => b - a));
    expect(middleShift(plain, 10, -0.05)).toBeLessThan(0);
  });

  it('finds half-way off the true top only with an offset pin', () => {
    expect(offsetBias(plain, 20)).toBe(0);
    expect(offsetBias(offset, 20)).toBeGreaterThan(0);
    expect(offsetBias({ ...plain, pinOffset: -1.5 }, 20)).toBe(-offsetBias(offset, 20));
  });
});
