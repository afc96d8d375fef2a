import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ethanolDensity,
  fuelDensity,
  petrolDensity,
  USUAL_OIL,
  USUAL_PETROL,
  type FuelMix,
} from '../../calculators/maths/fuel/fuel-density.ts';
import { thrown } from './thrown.ts';

const plain: FuelMix = {
  petrolDensity: USUAL_PETROL,
  ethanolPercent: 0,
  oilRatio: Infinity,
  oilDensity: USUAL_OIL,
};
const temperature = fc.double({ min: -20, max: 60, noNaN: true });

describe('density of fuel', () => {
  it('is that of the petrol alone without ethanol and oil', () => {
    expect(fuelDensity(plain, 15)).toBeCloseTo(745, 10);
    expect(fuelDensity(plain, 40)).toBeCloseTo(petrolDensity(745, 40), 10);
  });

  it('is that of ethanol alone at a hundred per cent', () => {
    expect(fuelDensity({ ...plain, ethanolPercent: 100 }, 30)).toBeCloseTo(ethanolDensity(30), 10);
  });

  it('is the mean by volume at 15 °C', () => {
    const e10 = fuelDensity({ ...plain, ethanolPercent: 10 }, 15);
    expect(e10).toBeCloseTo(0.9 * 745 + 0.1 * ethanolDensity(15), 9);
    const mixed = fuelDensity({ ...plain, oilRatio: 24 }, 15);
    expect(mixed).toBeCloseTo((24 * 745 + 870) / 25, 9);
  });

  // Steps by hand with tables 54B and 54D: petrol 1.21315e-3 per degree, so that 45 degrees make
  // 0.054592 and it shrinks to 0.94462; oil 7.2161e-4, 0.032472 and 0.96723. Five parts of 745 and one
  // of 870 are 4595 in 5 / 0.94462 + 1 / 0.96723 = 6.3270 parts.
  it('lets petrol and oil each expand by itself', () => {
    expect(fuelDensity({ ...plain, oilRatio: 5 }, 60)).toBeCloseTo(4595 / 6.327, 1);
  });

  it('falls with heat, and rises with ethanol and with oil', () => {
    fc.assert(
      fc.property(temperature, fc.double({ min: 0.5, max: 5, noNaN: true }), (t, step) => {
        const at = Math.min(t, 60 - step);
        expect(fuelDensity(plain, at + step)).toBeLessThan(fuelDensity(plain, at));
        expect(fuelDensity({ ...plain, ethanolPercent: 10 }, t)).toBeGreaterThan(
          fuelDensity(plain, t),
        );
        expect(fuelDensity({ ...plain, oilRatio: 20 }, t)).toBeGreaterThan(
          fuelDensity({ ...plain, oilRatio: 50 }, t),
        );
      }),
    );
  });

  it.each<[string, Partial<FuelMix>, number]>([
    ['petrolDensity', { petrolDensity: 0.745 }, 15],
    ['ethanolPercent', { ethanolPercent: 101 }, 15],
    ['oilRatio', { oilRatio: 0 }, 15],
    ['oilDensity', { oilDensity: 0 }, 15],
    ['temperature', {}, 61],
    ['temperature', {}, NaN],
  ])('refuses %s beyond its limits', (quantity, mix, t) => {
    const error = thrown(() => fuelDensity({ ...plain, ...mix }, t));
    expect(error.code).toBe('out-of-range');
    expect(error.quantities).toEqual([quantity]);
  });
});
