import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  annulus,
  holeArea,
  inSeries,
  needleDiameterAt,
  needleRise,
  shareOfDrop,
  type TaperedNeedle,
} from '../../calculators/maths/carburettor/needle.ts';
import { thrown } from './thrown.ts';

const needle: TaperedNeedle = { diameter: 2.5, taper: 1.5, straight: 5 };
const area = fc.double({ min: 0.01, max: 10, noNaN: true });

describe('the needle in the mouth of the jet', () => {
  it('is parallel first, then tapers', () => {
    expect(needleDiameterAt(needle, -10)).toBe(2.5);
    expect(needleDiameterAt(needle, 5)).toBe(2.5);
    expect(needleDiameterAt(needle, 15)).toBeCloseTo(
      2.5 - 20 * Math.tan((0.75 * Math.PI) / 180),
      12,
    );
  });

  it('leaves a ring that only grows as it rises', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 40, noNaN: true }),
        fc.double({ min: 0.01, max: 10, noNaN: true }),
        (rise, more) => {
          expect(annulus(2.6, needle, rise + more)).toBeGreaterThanOrEqual(
            annulus(2.6, needle, rise),
          );
        },
      ),
    );
  });

  it('is a ring between two circles', () => {
    expect(annulus(2.6, needle, 0)).toBeCloseTo(holeArea(2.6) - holeArea(2.5), 12);
    expect(annulus(2.6, { ...needle, taper: 0 }, 30)).toBeCloseTo(annulus(2.6, needle, 0), 12);
  });

  it('rises with the slide and by a pitch for each groove down', () => {
    expect(needleRise(10, 1, 1)).toBe(10);
    expect(needleRise(10, 3, 1.2)).toBeCloseTo(12.4, 12);
  });
});

describe('two restrictions one after the other', () => {
  it('pass less than either, and as much as the smaller when the other is huge', () => {
    fc.assert(
      fc.property(area, area, (a, b) => {
        expect(inSeries(a, b)).toBeLessThan(Math.min(a, b));
        expect(inSeries(a, 1e9)).toBeCloseTo(a, 9);
      }),
    );
  });

  it('share the drop of pressure out between them', () => {
    fc.assert(
      fc.property(area, area, (a, b) => {
        expect(shareOfDrop(a, b) + shareOfDrop(b, a)).toBeCloseTo(1, 12);
        expect(shareOfDrop(a, b)).toBeCloseTo((inSeries(a, b) / a) ** 2, 12);
      }),
    );
    expect(shareOfDrop(1, 1)).toBeCloseTo(0.5, 12);
  });
});

describe('what cannot be', () => {
  it('a needle thicker than its jet', () => {
    const error = thrown(() => annulus(2.5, needle, 0));
    expect(error.code).toBe('needle-too-thick');
    expect(error.quantities).toEqual(['needleDiameter', 'jetBore']);
  });

  it('a taper that ends in a point below the mouth', () => {
    const error = thrown(() => annulus(2.6, { ...needle, taper: 20 }, 30));
    expect(error.code).toBe('needle-out');
    expect(error.quantities).toEqual(['taper', 'needleDiameter', 'straight', 'throttle']);
    expect(error.message).toMatch(/7\.0891 mm/);
  });

  it.each<[string, () => unknown]>([
    ['jetBore', () => annulus(0, needle, 0)],
    ['needleDiameter', () => annulus(2.6, { ...needle, diameter: 0 }, 0)],
    ['taper', () => annulus(2.6, { ...needle, taper: -1 }, 0)],
    ['straight', () => annulus(2.6, { ...needle, straight: NaN }, 0)],
    ['rise', () => annulus(2.6, needle, NaN)],
  ])('%s beyond its limits', (quantity, run) => {
    expect(thrown(run).quantities).toEqual([quantity]);
  });
});
