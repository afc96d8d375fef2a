import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airDensity,
  standardAltitude,
  standardPressure,
  stationPressure,
  type Air,
} from '../../calculators/maths/carburettor/air.ts';
import { thrown } from './thrown.ts';

const day: Air = { temperature: 20, pressure: 101.325, humidity: 50 };
const altitude = fc.double({ min: -500, max: 6000, noNaN: true });
const airs = fc.record({
  temperature: fc.double({ min: -30, max: 54, noNaN: true }),
  pressure: fc.double({ min: 50, max: 109, noNaN: true }),
  humidity: fc.double({ min: 0, max: 95, noNaN: true }),
});

describe('density of the air', () => {
  it('falls with heat and damp, and rises with pressure', () => {
    fc.assert(
      fc.property(airs, (air) => {
        const density = airDensity(air);
        expect(airDensity({ ...air, temperature: air.temperature + 1 })).toBeLessThan(density);
        expect(airDensity({ ...air, humidity: air.humidity + 5 })).toBeLessThan(density);
        expect(airDensity({ ...air, pressure: air.pressure + 1 })).toBeGreaterThan(density);
      }),
    );
  });

  it.each<[keyof Air, number]>([
    ['temperature', -31],
    ['temperature', 288],
    ['pressure', 0],
    ['pressure', NaN],
    ['humidity', 101],
    ['humidity', -1],
  ])('refuses a %s of %s', (quantity, value) => {
    const error = thrown(() => airDensity({ ...day, [quantity]: value }));
    expect(error.code).toBe('out-of-range');
    expect(error.quantities).toEqual([quantity]);
  });
});

describe('the standard atmosphere', () => {
  it('goes from height to pressure and back', () => {
    fc.assert(
      fc.property(altitude, (h) => {
        expect(standardAltitude(standardPressure(h))).toBeCloseTo(h, 7);
      }),
    );
  });

  it('refuses heights beyond the lowest layer of the standard', () => {
    expect(thrown(() => standardPressure(11_001)).quantities).toEqual(['altitude']);
  });
});

describe('a reported pressure', () => {
  it('is the standard one where the report is standard', () => {
    fc.assert(
      fc.property(altitude, (h) => {
        expect(stationPressure(101.325, h)).toBeCloseTo(standardPressure(h), 10);
      }),
    );
  });

  it('is the pressure on the spot at sea level', () => {
    fc.assert(
      fc.property(fc.double({ min: 85, max: 110, noNaN: true }), (p) => {
        expect(stationPressure(p, 0)).toBeCloseTo(p, 9);
      }),
    );
  });

  it('is refused where it was plainly read on the spot', () => {
    const error = thrown(() => stationPressure(80, 1500));
    expect(error.quantities).toEqual(['pressure']);
    expect(error.message).toMatch(/reduced to sea level/);
  });
});
