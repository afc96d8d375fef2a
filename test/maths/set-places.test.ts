import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly, setPlaces, spacingsOf } from '../../calculators/maths/plate/set-places.ts';
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

  it('holds each set against its own direction', () => {
    const { closing, places } = setPlaces([269.5, 90.5], [0, 90]);
    expect(closing).toBeCloseTo(0, 12);
    expect(places[1]).toBeCloseTo(0.5, 12);
    expect(setPlaces([180, 180], [0, 90]).places[1]).toBeCloseTo(90, 12);
  });

  it('takes a set a lobe further on for the same', () => {
    // Half-speed shaft with two lobes: an evenly firing twin opens 90° apart, or 270°.
    expect(setPlaces([270, 90], [0, 270], 2).places[1]).toBeCloseTo(0, 12);
    expect(Math.abs(setPlaces([270, 90], [0, 270], 1).places[1]!)).toBeCloseTo(180, 12);
  });

  it('sets numbered otherwise than they stand close after more than one turn', () => {
    const directions = [0, 240, 120];
    expect(spacingsOf(directions)).toEqual([240, 240, 240]);
    const { closing, places } = setPlaces([240, 240.6, 239.4], directions);
    expect(closing).toBeCloseTo(0, 12);
    expect(places[1]).toBeCloseTo(0.6, 12);
  });

  it('gives the angles between directions, all the way round', () => {
    expect(spacingsOf([0, 90])).toEqual([270, 90]);
    expect(spacingsOf(evenly(3))).toEqual([120, 120, 120]);
    expect(spacingsOf([0])).toEqual([360]);
  });

  it('needs an angle, and numbers', () => {
    expect(setPlaces([180, 180], [10, 190]).places).toEqual([0, 0]);
    expect(thrown(() => setPlaces([180, 180], [0])).code).toBe('spacings');
    expect(thrown(() => setPlaces([])).code).toBe('spacings');
    expect(thrown(() => setPlaces([180, NaN])).message).toMatch(/in degrees/);
  });
});
