/**
 * The float of a carburettor as a lever, and the fuel level it holds.
 *
 * The float and its arm turn about the pivot as one rigid piece. The valve's needle stands beside
 * the float on the same side of the pivot and is pushed up into its seat by the tang, whose bend
 * therefore decides at which place of the float the valve shuts. On the bench, with the body upside
 * down and the tang just touching the needle, the gauge finds that place: the distance of an edge
 * of the float from the gasket face. Running, the float shuts the valve in the same place, and it
 * needs to be so deep in the fuel that the moments about the pivot balance:
 *
 *   buoyancy × arm of the float = weight × arm of the float + push on the needle × arm of the needle
 *
 * Gravity cancels out of it, so that forces may as well be kept as the mass that would weigh as much
 * (gram-force).
 *
 * The float is taken as a prism: straight walls, the same area at every height, its weight in the
 * middle. All lengths in mm, masses in g, areas in mm², densities in kg/m³.
 */
import { GAUGE_READINGS } from '../limits/gauge-readings.ts';
import { circleArea } from '../numeric/circle-area.ts';
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertNumber, assertWithin, type Limits } from '../numeric/within.ts';

export interface FloatLever {
  /** Across, from the centre of the pivot to the line of the needle. */
  readonly pivotToNeedle: number;
  /** Across, from the centre of the pivot to the middle of the float. */
  readonly pivotToFloat: number;
  /** Float, or both floats, with the arm. 0 for a float without weight. */
  readonly floatMass: number;
  /** Area of the float, or of both, seen from above. */
  readonly floatArea: number;
  /** Height of the float from its lower to its upper face. */
  readonly floatDepth: number;
}

export interface FuelFeed {
  /** Diameter of the seat's hole where the needle closes it. 0 for no push at all. */
  readonly seat: number;
  /** Height of fuel over the valve. */
  readonly head: number;
  readonly density: number;
}

/** Which face of the float the gauge is set to: the one away from the gasket face, or the near one. */
export type GaugedEdge = 'far' | 'near';

export interface Gauging {
  /** Distance from the gasket face to the gauged edge, the tang just touching the needle. */
  readonly height: number;
  readonly edge: GaugedEdge;
  /**
   * By how much the reading falls when the float, body upside down, is let rest on the needle's
   * spring with its whole weight; 0 for a solid needle.
   */
  readonly springDrop: number;
}

export interface Standing {
  /** Degrees by which the float's side of the carburettor hangs lower than its pivot's side. */
  readonly tilt: number;
}

export const upright: Standing = { tilt: 0 };

const RADIANS_PER_DEGREE = Math.PI / 180;
/** Grams in a mm³ of what has a density of 1 kg/m³. */
const GRAMS_PER_MM3 = 1e-6;

const leverLimits: readonly (Limits & { readonly quantity: keyof FloatLever })[] = [
  {
    quantity: 'pivotToNeedle',
    words: 'The distance from pivot to needle',
    unit: 'mm',
    min: 0,
    above: true,
    why: 'Without an arm the float cannot press on the needle. Measure from the centre of the pivot pin to the line of the needle.',
  },
  {
    quantity: 'pivotToFloat',
    words: 'The distance from pivot to float',
    unit: 'mm',
    min: 0,
    above: true,
    why: 'Without an arm the float has no power over the needle. Measure from the centre of the pivot pin to the middle of the float.',
  },
  {
    quantity: 'floatMass',
    words: 'The mass of the float',
    unit: 'g',
    min: 0,
    why: 'Nothing weighs less than nothing. Weigh float and arm together on a letter or kitchen scale.',
  },
  {
    quantity: 'floatArea',
    words: 'The area of the float',
    unit: 'mm²',
    min: 0,
    above: true,
    why: 'It is the area seen from above, of both floats if there are two. Draw round the float on squared paper and count.',
  },
  {
    quantity: 'floatDepth',
    words: 'The depth of the float',
    unit: 'mm',
    min: 0,
    above: true,
    why: 'It is the height of the float from its lower to its upper face. Measure it with a caliper.',
  },
];

const feedLimits: readonly (Limits & { readonly quantity: keyof FuelFeed })[] = [
  {
    quantity: 'seat',
    words: 'The diameter of the seat',
    unit: 'mm',
    min: 0,
    why: 'It is the hole that the needle closes. Find the largest drill shank that goes in by its own weight.',
  },
  {
    quantity: 'head',
    words: 'The head of fuel',
    unit: 'mm',
    min: 0,
    why: 'It is the height of the fuel in the tank over the valve. A pump’s pressure is a head too: 1 kPa is about 140 mm of petrol.',
  },
  {
    quantity: 'density',
    words: 'The density of the fuel',
    unit: 'kg/m³',
    min: 0,
    above: true,
    why: 'Petrol lies between about 700 and 790. 0.74 g/cc is 740 kg/m³.',
  },
];

const tiltLimits: Limits = {
  quantity: 'tilt',
  words: 'The tilt of the carburettor',
  unit: '°',
  min: -90,
  above: true,
  max: 90,
  below: true,
  why: 'On its side no float shuts a valve. Give the tilt in degrees, positive with the float’s side low.',
};

function assertLever(lever: FloatLever): void {
  for (const limits of leverLimits) assertWithin(limits, lever[limits.quantity]);
}

function assertFeed(feed: FuelFeed): void {
  for (const limits of feedLimits) assertWithin(limits, feed[limits.quantity]);
}

/** Area of the seat's hole, mm². */
function seatArea(seat: number): number {
  return circleArea(seat);
}

/**
 * The push of the fuel on the needle, as the mass in g that would weigh as much.
 *
 * @throws MathsError `out-of-range` for a feed outside its limits.
 */
export function needlePush(feed: FuelFeed): number {
  assertFeed(feed);
  return GRAMS_PER_MM3 * feed.density * feed.head * seatArea(feed.seat);
}

/**
 * The mass of fuel in g that the float has to displace to hold the valve shut: its own, and the push
 * on the needle reduced by the lever. With the carburettor tilted, the arm of the vertical forces on
 * the float is shorter by the cosine, while the push along the needle keeps its own.
 *
 * Source: moments about a hinge and Archimedes' principle; the same balance as for the float valve
 * of a cistern in textbooks of hydraulics.
 *
 * @throws MathsError `out-of-range`.
 */
export function displacedMass(
  lever: FloatLever,
  feed: FuelFeed,
  { tilt }: Standing = upright,
): number {
  assertLever(lever);
  assertWithin(tiltLimits, tilt);
  const arm = lever.pivotToFloat * Math.cos(tilt * RADIANS_PER_DEGREE);
  return lever.floatMass + (needlePush(feed) * lever.pivotToNeedle) / arm;
}

/**
 * How deep the float's lower face lies in the fuel when the valve has just shut, mm. With the
 * carburettor tilted, the depth along the middle of the float.
 *
 * @throws MathsError `float-sinks` when it would have to be deeper than the float is high: then the
 *   valve never shuts; `out-of-range`.
 */
export function submergedDepth(
  lever: FloatLever,
  feed: FuelFeed,
  standing: Standing = upright,
): number {
  const mass = displacedMass(lever, feed, standing);
  const depth = mass / (GRAMS_PER_MM3 * feed.density * lever.floatArea);
  if (depth > lever.floatDepth) {
    const most = GRAMS_PER_MM3 * feed.density * lever.floatArea * lever.floatDepth;
    throw new MathsError(
      'float-sinks',
      ['floatMass', 'floatArea', 'floatDepth', 'head', 'seat'],
      `This float cannot shut the valve: it would have to displace ${sayNumber(mass)} g of fuel, and quite under it displaces no more than ${sayNumber(most)} g, so that the chamber overflows. Check its mass and size (area in mm², seen from above), the seat and the head; a float that has fuel inside is heavier.`,
    );
  }
  return depth;
}

/**
 * By how much the running float stands higher than gauged, mm, because the push on the needle
 * presses its spring in. The bench gives the spring's rate: there the float's weight presses it.
 *
 * @throws MathsError `spring-without-weight` for a drop of a float that weighs nothing;
 *   `out-of-range`.
 */
export function springRise(lever: FloatLever, feed: FuelFeed, springDrop: number): number {
  assertLever(lever);
  assertWithin(
    {
      quantity: 'springDrop',
      words: 'The drop on the needle’s spring',
      unit: 'mm',
      min: 0,
      why: 'It is by how much the gauge reading falls when the float is let down on the spring. Enter 0 for a needle without one.',
    },
    springDrop,
  );
  if (springDrop === 0) return 0;
  if (lever.floatMass === 0) {
    throw new MathsError(
      'spring-without-weight',
      ['springDrop', 'floatMass'],
      'A float without weight cannot press the needle’s spring in. Enter the mass of the float, or a drop of 0 mm.',
    );
  }
  const share = (needlePush(feed) * lever.pivotToNeedle) / (lever.floatMass * lever.pivotToFloat);
  return springDrop * share;
}

/** How far the float's lower face is below the gasket face when the valve shuts, mm. */
function lowerFace(lever: FloatLever, { height, edge }: Omit<Gauging, 'springDrop'>): number {
  assertNumber(
    'height',
    'gauge reading',
    height,
    'It is the distance from the gasket face to the edge of the float, negative if the edge stands inside the body.',
  );
  return edge === 'far' ? height : height + lever.floatDepth;
}

/**
 * The fuel level, mm below the gasket face along the middle of the float; negative where the fuel
 * stands above the face.
 *
 * @throws MathsError as `submergedDepth` and `springRise`; `out-of-range` for the height.
 */
export function fuelLevel(
  lever: FloatLever,
  feed: FuelFeed,
  gauging: Gauging,
  standing: Standing = upright,
): number {
  const submerged = submergedDepth(lever, feed, standing);
  return lowerFace(lever, gauging) - springRise(lever, feed, gauging.springDrop) - submerged;
}

/**
 * The gauge reading that gives a wanted fuel level: the inverse of `fuelLevel`.
 *
 * @param level mm below the gasket face.
 * @throws MathsError as `fuelLevel`; `height-out-of-reach` where the edge would have to stand
 *   further from the face than any gauge reaches.
 */
export function heightForLevel(
  lever: FloatLever,
  feed: FuelFeed,
  gauging: Omit<Gauging, 'height'>,
  level: number,
  standing: Standing = upright,
): number {
  const atZero = fuelLevel(lever, feed, { ...gauging, height: 0 }, standing);
  const height = level - atZero;
  if (!(height >= GAUGE_READINGS.min && height <= GAUGE_READINGS.max)) {
    throw new MathsError(
      'height-out-of-reach',
      ['level'],
      `A fuel level of ${sayNumber(level)} mm would need a gauge reading of ${sayNumber(height)} mm, and readings lie from ${sayNumber(GAUGE_READINGS.min)} to ${sayNumber(GAUGE_READINGS.max)} mm. Check the wanted level: it is counted in mm below the gasket face.`,
    );
  }
  return height;
}

/** How far the tang is bent, mm at the needle, for each mm of the float's height. */
export function tangRatio({ pivotToNeedle, pivotToFloat }: FloatLever): number {
  return pivotToNeedle / pivotToFloat;
}

/**
 * How far to bend the tang, mm at the needle, to change the gauge reading. Positive towards the
 * needle, which makes the valve shut with the float further from the gasket face: a larger reading
 * and a lower fuel. For the small turns of a setting, arc and straight line are the same.
 */
export function tangBend(lever: FloatLever, from: number, to: number): number {
  return (to - from) * tangRatio(lever);
}

/**
 * By how much the fuel rises when the head grows by 100 mm. The level moves in proportion, so that
 * this holds for any head the float can bear.
 *
 * @returns mm, 0 or more.
 * @throws MathsError as `fuelLevel`.
 */
export function risePer100Head(
  lever: FloatLever,
  feed: FuelFeed,
  springDrop = 0,
  { tilt }: Standing = upright,
): number {
  const per100 = { ...feed, head: 100 };
  const push = needlePush(per100);
  const arm = lever.pivotToFloat * Math.cos(tilt * RADIANS_PER_DEGREE);
  const deeper =
    (push * lever.pivotToNeedle) / (arm * GRAMS_PER_MM3 * feed.density * lever.floatArea);
  return deeper + springRise(lever, per100, springDrop);
}

/**
 * The level at a jet that stands away from the middle of the float: the surface stays horizontal
 * while the gasket face leans.
 *
 * @param level mm below the gasket face at the middle of the float.
 * @param jetFromFloat mm along the arm from the middle of the float to the jet, positive towards the
 *   pivot.
 * @returns mm below the gasket face.
 */
export function levelAtJet(level: number, jetFromFloat: number, { tilt }: Standing): number {
  assertWithin(tiltLimits, tilt);
  return level + jetFromFloat * Math.tan(tilt * RADIANS_PER_DEGREE);
}
