import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertNumber } from '../numeric/within.ts';

const RIGHT_ANGLE = 90;

/**
 * What a plunger indicator shows when it leans out of the line of the bore.
 *
 * The crown is taken as flat and square to the bore. When it sinks by the travel, the plunger, which
 * moves along its own line only, has to reach further down a slope: along a line that leans by the
 * tilt, two planes a travel apart are travel / cos(tilt) apart. So a leaning indicator always shows
 * too much. The tip wanders sideways over the crown by travel × tan(tilt) meanwhile: on a domed crown
 * the error is different, and the same only near the middle of the dome.
 *
 * Source: right-angled triangle of the travel, the wander of the tip and the plunger's line. It is
 * the other way round from the cosine error of a lever indicator.
 *
 * @param travel Piston travel in mm, any real number.
 * @param tilt Degrees between plunger and bore, less than 90 either way.
 * @returns Indicator reading in mm.
 * @throws MathsError `tilt-too-large` or `not-a-number`.
 */
export function readingOf(travel: number, tilt: number): number {
  assertNumber('pistonTravel', 'piston travel', travel, 'Enter it in millimetres.');
  return travel / cosineOf(tilt);
}

/** Piston travel in mm from what a leaning indicator shows: the inverse of `readingOf`. */
export function travelOf(reading: number, tilt: number): number {
  assertNumber('reading', 'indicator reading', reading, 'Enter it in millimetres.');
  return reading * cosineOf(tilt);
}

function cosineOf(tilt: number): number {
  assertNumber('tilt', 'tilt', tilt, 'Enter it in degrees.');
  if (!(Math.abs(tilt) < RIGHT_ANGLE)) {
    throw new MathsError(
      'tilt-too-large',
      ['tilt'],
      `An indicator that leans by ${sayNumber(tilt)}° does not follow the piston. It must lean by less than ${RIGHT_ANGLE}°, and is best within 5° of the bore: move it or use an adaptor.`,
    );
  }
  return Math.cos((tilt * Math.PI) / 180);
}
