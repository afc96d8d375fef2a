/**
 * The ring between a tapered needle and its jet, through which fuel passes in the middle of the
 * throttle's range.
 *
 * The needle hangs in the slide and rises with it. Its upper part is parallel; below that it tapers.
 * The ring is taken in the plane of the jet's mouth, which is where the gap is least. Lengths in mm,
 * areas in mm², angles in degrees.
 */
import { circleArea } from '../numeric/circle-area.ts';
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertNumber, assertWithin } from '../numeric/within.ts';

export interface TaperedNeedle {
  /** Diameter of the parallel part. */
  readonly diameter: number;
  /** Angle between the two sides of the taper (included angle), 0 for a parallel needle. */
  readonly taper: number;
  /** How far the needle rises from its lowest place until its taper begins at the jet's mouth. */
  readonly straight: number;
}

const HALF_RADIANS_PER_DEGREE = Math.PI / 360;

function assertNeedle({ diameter, taper, straight }: TaperedNeedle): void {
  assertWithin(
    {
      quantity: 'needleDiameter',
      words: 'The diameter of the needle',
      unit: 'mm',
      min: 0,
      above: true,
      why: 'Measure the parallel part with a micrometer.',
    },
    diameter,
  );
  assertWithin(
    {
      quantity: 'taper',
      words: 'The taper',
      unit: '°',
      min: 0,
      max: 180,
      below: true,
      why: 'It is the included angle. A needle that loses 0.26 mm of diameter in 10 mm has 1.5°.',
    },
    taper,
  );
  assertNumber(
    'straight',
    'rise to the start of the taper',
    straight,
    'It is counted from the slide shut and the clip in the top groove, and is negative where the taper then already stands above the mouth.',
  );
}

/**
 * Diameter of the needle in the jet's mouth after it has risen by `rise` from its lowest place.
 *
 * @param rise mm; negative is lower.
 * @throws MathsError `needle-out` where the taper would have come to a point below the mouth;
 *   `out-of-range`.
 */
export function needleDiameterAt(needle: TaperedNeedle, rise: number): number {
  assertNeedle(needle);
  assertNumber('rise', 'rise of the needle', rise, 'Enter it in millimetres.');
  const along = Math.max(0, rise - needle.straight);
  const diameter = needle.diameter - 2 * along * Math.tan(needle.taper * HALF_RADIANS_PER_DEGREE);
  if (diameter <= 0) {
    const point = needle.diameter / (2 * Math.tan(needle.taper * HALF_RADIANS_PER_DEGREE));
    throw new MathsError(
      'needle-out',
      ['taper', 'needleDiameter', 'straight', 'throttle'],
      `With this taper the needle would come to a point ${sayNumber(point)} mm below its parallel part, and ${sayNumber(along)} mm of the taper stand above the jet’s mouth. Check the taper: it is the angle between both sides, seldom more than 3°.`,
    );
  }
  return diameter;
}

/** Area of a round hole, mm², from its diameter in mm. */
export function holeArea(diameter: number): number {
  return circleArea(diameter);
}

/**
 * Area of the ring between needle and jet after a rise of the needle, mm².
 *
 * @param jetBore mm, more than the diameter of the needle.
 * @throws MathsError `needle-too-thick`, or as `needleDiameterAt`.
 */
export function annulus(jetBore: number, needle: TaperedNeedle, rise: number): number {
  assertWithin(
    {
      quantity: 'jetBore',
      words: 'The bore of the needle jet',
      unit: 'mm',
      min: 0,
      above: true,
      why: 'Measure it with a pin gauge or the shank of a drill.',
    },
    jetBore,
  );
  const diameter = needleDiameterAt(needle, rise);
  if (needle.diameter >= jetBore) {
    throw new MathsError(
      'needle-too-thick',
      ['needleDiameter', 'jetBore'],
      `A needle of ${sayNumber(needle.diameter)} mm does not go into a jet of ${sayNumber(jetBore)} mm. The jet must be the larger, by at least 0.02 mm; measure both again.`,
    );
  }
  const ring = jetBore - diameter;
  return (Math.PI / 4) * ring * (jetBore + diameter);
}

/**
 * How far the needle has risen from its lowest place (slide shut, clip in the top groove).
 *
 * @param lift Rise of the slide, mm, 0 or more.
 * @param groove Groove in which the clip sits, counted from the top, 1 or more. A lower groove holds
 *   the needle higher.
 * @param pitch Distance between grooves, mm.
 */
export function needleRise(lift: number, groove: number, pitch: number): number {
  return lift + (groove - 1) * pitch;
}

/**
 * The area that would pass as much as two restrictions one after the other: 1/A² = 1/A₁² + 1/A₂²,
 * since at the same flow the drops of pressure add up and each goes with 1/area². Equal coefficients
 * of discharge are taken for both.
 */
export function inSeries(first: number, second: number): number {
  return (first * second) / Math.hypot(first, second);
}

/** Share of the whole drop of pressure that falls at `first` when `second` is in series, 0 to 1. */
export function shareOfDrop(first: number, second: number): number {
  return (second / Math.hypot(first, second)) ** 2;
}
