/**
 * How high a liquid that wets a round tube stands in it above the level outside.
 *
 * In a narrow tube the simple law holds (Jurin's): rise = 4·γ·cos θ / (ρ·g·bore). It takes the
 * surface for a part of a sphere and leaves out the weight of the liquid along the wall. In a tube
 * as wide as a clear tube at a float chamber that overstates the rise, for petrol in a bore of 10 mm
 * nearly threefold. So the surface is followed from its lowest point to the wall by the equation
 * of Young and Laplace, with the curvature in the plane of the axis and the one across it:
 *
 *   dφ/ds + sin φ / x = (rise + z) / c²,   dx/ds = cos φ,   dz/ds = sin φ,   c² = γ / (ρ·g)
 *
 * where φ is the slope of the surface, s the way along it from the axis, x the distance from the axis
 * and z the height over the lowest point. The rise is the one at which the surface meets the wall at
 * the contact angle.
 *
 * Source: F. Bashforth and J. C. Adams, An Attempt to Test the Theories of Capillary Action,
 * Cambridge University Press 1883; S. Sugden, Journal of the Chemical Society, Transactions 119
 * (1921), page 1483, gives a table for tubes of all widths.
 */
import { findRoot } from '../numeric/find-root.ts';
import { assertWithin } from '../numeric/within.ts';

export interface WettedTube {
  /** Inside diameter, mm, from 0.1 to 40. */
  readonly bore: number;
  /** Surface tension of the liquid, N/m. */
  readonly surfaceTension: number;
  /** kg/m³. */
  readonly density: number;
  /** Angle within the liquid between its surface and the wall, degrees. 0 where it wets. */
  readonly contactAngle?: number;
}

/**
 * Surface tension of petrol at 20 °C, N/m, which differs little from one petrol to another.
 *
 * Source: F. M. White, Fluid Mechanics, table A.3 (recalled from memory). B. R. Munson and others,
 * Fundamentals of Fluid Mechanics, table 1.6, give 0.022 at 15.6 °C.
 */
export const PETROL_SURFACE_TENSION = 0.0216;

/** The standard acceleration of free fall, m/s². Source: ISO 80000-3. */
const GRAVITY = 9.80665;
const RADIANS_PER_DEGREE = Math.PI / 180;

/** The place of a point of the surface, in lengths of c, and the slope there in radians. */
type Point = readonly [x: number, z: number, slope: number];

/** One step by the rule of Runge and Kutta of the fourth order. */
function stepped(point: Point, step: number, slopes: (at: Point) => Point): Point {
  const moved = (by: Point, share: number): Point => [
    point[0] + share * step * by[0],
    point[1] + share * step * by[1],
    point[2] + share * step * by[2],
  ];
  const first = slopes(point);
  const second = slopes(moved(first, 0.5));
  const third = slopes(moved(second, 0.5));
  const fourth = slopes(moved(third, 1));
  const mean = (i: 0 | 1 | 2): number => (first[i] + 2 * second[i] + 2 * third[i] + fourth[i]) / 6;
  return moved([mean(0), mean(1), mean(2)], 1);
}

/**
 * Radius of the tube in which the liquid stands `rise` high, both in lengths of c.
 *
 * @param wallSlope Slope of the surface at the wall, radians, more than 0.
 */
function radiusFor(rise: number, wallSlope: number): number {
  const bend = ([x, z, slope]: Point): number =>
    x === 0 ? rise / 2 : rise + z - Math.sin(slope) / x;
  const along = (at: Point): Point => [Math.cos(at[2]), Math.sin(at[2]), bend(at)];
  const bySlope = (at: Point): Point => {
    const [dx, dz, dSlope] = along(at);
    return [dx / dSlope, dz / dSlope, 1];
  };
  const flat = 0.02 * Math.min(1, 2 / rise);
  let point: Point = [0, 0, 0];
  // Along the surface while it is flat, then slope by slope, so that it ends just at the wall.
  while (point[2] < wallSlope / 2) point = stepped(point, flat, along);
  const steps = 60;
  const step = (wallSlope - point[2]) / steps;
  for (let i = 0; i < steps; i++) point = stepped(point, step, bySlope);
  return point[0];
}

/**
 * The rise in mm, from the level outside to the lowest point of the surface in the tube.
 *
 * @returns More than 0, to about eight figures.
 * @throws MathsError `out-of-range`.
 */
export function capillaryRise({
  bore,
  surfaceTension,
  density,
  contactAngle = 0,
}: WettedTube): number {
  // Within these limits the search below is proved to end at the rise; beyond them nobody measures.
  assertWithin(
    {
      quantity: 'bore',
      words: 'The bore of the tube',
      unit: 'mm',
      min: 0.1,
      max: 40,
      why: 'In a wider tube the rise is too small to see. Measure the inside diameter, with the shank of a drill.',
    },
    bore,
  );
  assertWithin(
    {
      quantity: 'surfaceTension',
      words: 'The surface tension',
      unit: 'N/m',
      min: 0.005,
      max: 0.1,
      why: 'Petrol has about 0.022 and water 0.073 N/m.',
    },
    surfaceTension,
  );
  assertWithin(
    {
      quantity: 'density',
      words: 'The density of the liquid',
      unit: 'kg/m³',
      min: 500,
      max: 2000,
      why: 'Petrol lies between about 700 and 790, and water has 1000. 0.74 g/cc is 740 kg/m³.',
    },
    density,
  );
  assertWithin(
    {
      quantity: 'contactAngle',
      words: 'The contact angle',
      unit: '°',
      min: 0,
      max: 85,
      why: 'A liquid with a right angle at the wall does not rise. Petrol wets its tube: 0°.',
    },
    contactAngle,
  );
  const length = 1000 * Math.sqrt(surfaceTension / (density * GRAVITY));
  const radius = bore / 2 / length;
  const wallSlope = (90 - contactAngle) * RADIANS_PER_DEGREE;
  const simple = (2 * Math.sin(wallSlope)) / radius;
  const logarithm = findRoot(
    (log) => radiusFor(Math.exp(log), wallSlope) - radius,
    Math.log(simple) - radius - 5,
    Math.log(simple) + 0.01,
    1e-12,
  );
  return length * Math.exp(logarithm);
}
