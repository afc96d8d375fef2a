import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  capillaryRise,
  PETROL_SURFACE_TENSION,
  type WettedTube,
} from '../../calculators/maths/carburettor/capillary-rise.ts';
import { thrown } from './thrown.ts';

const petrol = { surfaceTension: PETROL_SURFACE_TENSION, density: 745 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const tubes = fc.record({
  bore: between(0.2, 20),
  surfaceTension: between(0.015, 0.08),
  density: between(600, 1200),
  contactAngle: between(0, 80),
});
/** Jurin's law, mm. */
const simple = ({ bore, surfaceTension, density, contactAngle = 0 }: WettedTube): number =>
  (4e6 * surfaceTension * Math.cos((contactAngle * Math.PI) / 180)) / (density * 9.80665 * bore);

describe('the rise in a tube', () => {
  it.each([
    [3, 3.5],
    [4, 2.4],
    [6, 1.3],
    [8, 0.7],
    [10, 0.4],
  ])('of petrol in a bore of %d mm is %d mm', (bore, rise) => {
    expect(capillaryRise({ bore, ...petrol })).toBeCloseTo(rise, 1);
  });

  it('comes to the simple law in a very narrow tube', () => {
    for (const contactAngle of [0, 30, 60, 85]) {
      const tube = { bore: 0.1, ...petrol, contactAngle };
      expect(capillaryRise(tube) / simple(tube)).toBeCloseTo(1, 3);
    }
  });

  it('is less than the simple law says, and less in a wider tube', () => {
    fc.assert(
      fc.property(tubes, between(1.01, 1.9), (tube, wider) => {
        const rise = capillaryRise(tube);
        expect(rise).toBeGreaterThan(0);
        expect(rise).toBeLessThan(simple(tube));
        expect(capillaryRise({ ...tube, bore: tube.bore * wider })).toBeLessThan(rise);
      }),
      { numRuns: 40 },
    );
  });

  it('doubles when tube and liquid are alike and twice as large', () => {
    fc.assert(
      fc.property(tubes, (tube) => {
        const quarter = { ...tube, surfaceTension: 0.02 };
        const whole = { ...tube, bore: 2 * tube.bore, surfaceTension: 0.08 };
        expect(capillaryRise(whole) / capillaryRise(quarter)).toBeCloseTo(2, 7);
      }),
      { numRuns: 20 },
    );
  });

  it('can be had up to the edges of what is allowed', () => {
    for (const bore of [0.1, 40]) {
      for (const surfaceTension of [0.005, 0.1]) {
        for (const density of [500, 2000]) {
          for (const contactAngle of [0, 85]) {
            const rise = capillaryRise({ bore, surfaceTension, density, contactAngle });
            expect(rise).toBeGreaterThan(0);
            expect(Number.isFinite(rise)).toBe(true);
          }
        }
      }
    }
  });
});

it.each<[string, Partial<WettedTube>]>([
  ['bore', { bore: 0 }],
  ['bore', { bore: 41 }],
  ['surfaceTension', { surfaceTension: 21.6 }],
  ['density', { density: 0.745 }],
  ['contactAngle', { contactAngle: 90 }],
  ['contactAngle', { contactAngle: NaN }],
])('refuses a %s beyond its limits', (quantity, wrong) => {
  const error = thrown(() => capillaryRise({ bore: 6, ...petrol, ...wrong }));
  expect(error.code).toBe('out-of-range');
  expect(error.quantities).toEqual([quantity]);
  expect(error.message).toMatch(/must be/);
});
