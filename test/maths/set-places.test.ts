import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setPlaces } from '../../calculators/maths/set-places.ts';
import { thrown } from './thrown.ts';

describe('sets round a plate', () => {
  it('one set that stands on is out once, though two angles show it', () => {
    const { closing, places } = setPlaces([120, 121.5, 118.5]);
    expect(closing).toBeCloseTo(0, 12);
    [0, 1.5, 0].forEach((place, i) => expect(places[i]).toBeCloseTo(place, 12));
  });

  it('shares out what the angles have too much', () => {
    const { closing, places } = setPlaces([120.3, 120.3, 120.3]);
    expect(closing).toBeCloseTo(0.9, 12);
    for (const place of places) expect(place).toBeCloseTo(0, 12);
  });

  it('finds sets again where they were put', () => {
    const errors = fc.array(fc.double({ min: -5, max: 5, noNaN: true }), {
      minLength: 2,
      maxLength: 8,
    });
    fc.assert(
      fc.property(errors, (put) => {
        const even = 360 / put.length;
        const spacings = put.map((error, i) => even + error - put.at(i - 1)!);
        const { closing, places } = setPlaces(spacings);
        expect(closing).toBeCloseTo(0, 9);
        places.forEach((place, i) => expect(place).toBeCloseTo(put[i]! - put[0]!, 9));
      }),
    );
  });

  it('needs an angle, and numbers', () => {
    expect(thrown(() => setPlaces([])).code).toBe('spacings');
    expect(thrown(() => setPlaces([180, NaN])).message).toMatch(/in degrees/);
  });
});
