/**
 * Where the piston is. The exact geometry of crank, rod and piston, with or without a pin offset.
 *
 * Axes through the crank centre: Y up, parallel to the bore; X to the side to which the big end
 * moves after the top. With crank throw r (half the stroke), rod length l and pin offset e, and the
 * crank at φ from the Y axis, the big end is at (r sin φ, r cos φ) and the gudgeon pin at
 *
 *     x = e,  y = r cos φ + √(l² − (r sin φ − e)²)
 *
 * At true top dead centre crank and rod lie in one line: sin φ₀ = e / (l + r). At true bottom dead
 * centre they lie folded over each other: sin(φ − 180°) = e / (l − r). Every angle below is counted
 * from φ₀, the true top.
 *
 * Source: Pythagoras on the triangle of crank centre, big end and gudgeon pin; no series, no
 * approximation.
 */
import { MathsError } from '../numeric/errors.ts';
import { findRoot } from '../numeric/find-root.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertNumber } from '../numeric/within.ts';

export interface SliderCrank {
  /** Twice the crank throw, mm. More than 0. With a pin offset the piston travels a little more. */
  readonly stroke: number;
  /** Centre to centre of big end and small end, mm. More than half the stroke. */
  readonly rodLength: number;
  /**
   * Distance of the gudgeon pin's path from the crank centre, mm: positive to the side to which the
   * big end moves after the top. Its size is less than rodLength − stroke / 2.
   */
  readonly pinOffset: number;
}

const RADIANS_PER_DEGREE = Math.PI / 180;

/**
 * Throws a MathsError unless the crank can turn all the way round: stroke more than 0, rod longer
 * than half the stroke, offset less than what is left over.
 */
export function assertGeometry({ stroke, rodLength, pinOffset }: SliderCrank): void {
  // The usual case first: this is asked at every place of every curve.
  const sound = stroke > 0 && Math.abs(pinOffset) < rodLength - stroke / 2;
  if (sound && rodLength < Infinity) return;
  for (const [name, words, value] of [
    ['stroke', 'stroke', stroke],
    ['rodLength', 'rod length', rodLength],
    ['pinOffset', 'pin offset', pinOffset],
  ] as const) {
    assertNumber(name, words, value, 'Enter it in millimetres.');
  }
  if (!(stroke > 0)) {
    throw new MathsError(
      'stroke-not-positive',
      ['stroke'],
      `A stroke of ${sayNumber(stroke)} mm moves nothing. It must be more than 0 mm: measure the piston from its highest to its lowest place.`,
    );
  }
  const crankThrow = stroke / 2;
  if (!(rodLength > crankThrow)) {
    throw new MathsError(
      'rod-too-short',
      ['rodLength', 'stroke'],
      `A rod of ${sayNumber(rodLength)} mm cannot pass a crank throw of ${sayNumber(crankThrow)} mm (half the stroke of ${sayNumber(stroke)} mm): the engine would lock. The rod must be longer than that, and in most engines is 1.7 to 2.2 times the stroke. Measure it from centre to centre of its two eyes.`,
    );
  }
  const room = rodLength - crankThrow;
  throw new MathsError(
    'offset-too-large',
    ['pinOffset'],
    `A pin offset of ${sayNumber(pinOffset)} mm stops the crank short of the bottom. Its size must be less than the rod minus the crank throw, ${sayNumber(room)} mm; real engines have 0 to about 2 mm. Leave it at 0 if you do not know of any.`,
  );
}

/** Crank throw, rod and the lean of crank and rod at true top dead centre. */
function layout(g: SliderCrank) {
  assertGeometry(g);
  const r = g.stroke / 2;
  const l = g.rodLength;
  const sinTop = g.pinOffset / (l + r);
  const cosTop = Math.sqrt((1 - sinTop) * (1 + sinTop));
  return { r, l, e: g.pinOffset, sinTop, cosTop };
}

/**
 * The state at one crank angle, in terms that lose no digits near the top: `big` is how far the big
 * end has moved sideways from its place at the top, `rodHeight` the rod's height along the bore and
 * `rodHeights` the sum of that and its height at the top.
 */
function stateAt(g: SliderCrank, angleAtdc: number) {
  assertNumber('crankAngle', 'crank angle', angleAtdc, 'Enter it in degrees.');
  const { r, l, e, sinTop, cosTop } = layout(g);
  const half = ((angleAtdc % 360) * RADIANS_PER_DEGREE) / 2;
  const sinHalf = Math.sin(half);
  const cosHalf = Math.cos(half);
  /** Cosine of the crank angle half-way between the top and here, from the line of the bore. */
  const cosMid = cosTop * cosHalf - sinTop * sinHalf;
  const big = 2 * r * cosMid * sinHalf;
  const rodAcross = big - l * sinTop;
  const rodHeight = Math.sqrt((l - rodAcross) * (l + rodAcross));
  const rodHeights = rodHeight + l * cosTop;
  return {
    r,
    l,
    e,
    sinTop,
    cosTop,
    sinHalf,
    cosHalf,
    cosMid,
    big,
    rodAcross,
    rodHeight,
    rodHeights,
  };
}

/**
 * How far the piston is below true top dead centre.
 *
 * The closed form at the head of this file subtracts two nearly equal heights near the top. Here
 * each difference of cosines is written with half-angle sines and each difference of roots as a
 * difference of squares over a sum, which leaves a common factor sin²(angle / 2) in front: a travel
 * of a millionth of a millimetre keeps all its digits.
 *
 * @param angleAtdc Crank angle in degrees after true TDC; negative before it. Any real number.
 * @returns Piston travel in mm, 0 to `totalTravel`.
 * @throws MathsError as `assertGeometry`, or `not-a-number`.
 */
export function travelAt(g: SliderCrank, angleAtdc: number): number {
  const { r, l, sinTop, cosTop, sinHalf, cosHalf, cosMid, big, rodHeights } = stateAt(g, angleAtdc);
  const shape =
    cosTop +
    (2 * l * sinTop * sinTop + 2 * r * cosMid * cosMid) / rodHeights -
    (2 * r * cosMid * sinTop * cosHalf * (big - 2 * l * sinTop)) / (rodHeights * rodHeights);
  return Math.max(0, 2 * r * sinHalf * sinHalf * shape);
}

/** Piston travel in mm at a crank angle given in degrees before true TDC. See `travelAt`. */
export function travelBefore(g: SliderCrank, angleBtdc: number): number {
  return travelAt(g, -angleBtdc);
}

/**
 * Piston velocity per degree of crank.
 *
 * @param angleAtdc Degrees after true TDC, any real number.
 * @returns mm of travel per degree; positive while the piston goes down.
 * @throws MathsError as `travelAt`.
 */
export function velocityAt(g: SliderCrank, angleAtdc: number): number {
  const { r, l, sinTop, cosTop, sinHalf, cosHalf, big, rodAcross, rodHeight, rodHeights } = stateAt(
    g,
    angleAtdc,
  );
  /** By how much the rod has become shorter along the bore since the top, mm. */
  const shortened = (big * (rodAcross - l * sinTop)) / rodHeights;
  const sinRodTurn = (big * cosTop - shortened * sinTop) / l;
  const cosRodTurn = (rodHeight * cosTop - rodAcross * sinTop) / l;
  const sinAngle = 2 * sinHalf * cosHalf;
  const cosAngle = 1 - 2 * sinHalf * sinHalf;
  const sinBetween = sinAngle * cosRodTurn + cosAngle * sinRodTurn;
  return ((r * l * sinBetween) / rodHeight) * RADIANS_PER_DEGREE;
}

/**
 * What a millimetre of piston travel is worth in degrees of crank at one place: the slope of the
 * angle against the travel. Without a size at dead centre, where the piston stands still.
 *
 * @param angleAtdc Degrees after true TDC, any real number.
 * @returns Degrees of crank per mm of travel, always positive.
 * @throws MathsError `at-dead-centre` where it would be more than 10⁶ degrees per mm, or as
 *   `travelAt`.
 */
export function degreesPerMillimetre(g: SliderCrank, angleAtdc: number): number {
  const slope = Math.abs(velocityAt(g, angleAtdc));
  if (slope < 1e-6) {
    throw new MathsError(
      'at-dead-centre',
      ['crankAngle', 'pistonTravel'],
      'At dead centre the piston stands still, so a travel tells nothing of the angle there. Take a place at least a tenth of a degree away from it.',
    );
  }
  return 1 / slope;
}

/** Degrees of crank from true TDC to true BDC on the way down; 180 when the pin is not offset. */
export function bdcAfter(g: SliderCrank): number {
  const { r, l, e } = layout(g);
  return 180 + (Math.asin(e / (l - r)) - Math.asin(e / (l + r))) / RADIANS_PER_DEGREE;
}

/** Piston travel in mm from true TDC to true BDC; the stroke itself when the pin is not offset. */
export function totalTravel(g: SliderCrank): number {
  const { r, l, e } = layout(g);
  const top = Math.sqrt((l + r - e) * (l + r + e));
  const bottom = Math.sqrt((l - r - e) * (l - r + e));
  return (4 * l * r) / (top + bottom);
}

/**
 * The crank angle on the way down at which the piston is `travel` below the top.
 *
 * A bracketed search between TDC and BDC on the square root of the travel, which is nearly straight
 * near the top. Beside BDC the piston hardly moves, so that there the angle can be no better than
 * the travel allows: a travel 10⁻⁹ mm short of the bottom is some 10⁻⁴ degrees away from it.
 *
 * @param travel mm below true TDC, 0 to `totalTravel`.
 * @returns Degrees after true TDC, 0 to `bdcAfter`.
 * @throws MathsError `travel-negative`, `travel-beyond-stroke`, `not-a-number`, or as
 *   `assertGeometry`.
 */
export function angleAfter(g: SliderCrank, travel: number): number {
  const bottom = bdcAfter(g);
  assertTravel(g, travel, bottom);
  if (travel >= travelAt(g, bottom)) return bottom;
  const wanted = Math.sqrt(travel);
  return findRoot((angle) => Math.sqrt(travelAt(g, angle)) - wanted, 0, bottom);
}

/**
 * The crank angle on the way up at which the piston is `travel` below the top: degrees before true
 * TDC, 0 to 360 − `bdcAfter`. Seen in a mirror it is the way down with the offset on the other side.
 * Errors as `angleAfter`.
 */
export function angleBefore(g: SliderCrank, travel: number): number {
  return angleAfter({ ...g, pinOffset: -g.pinOffset }, travel);
}

function assertTravel(g: SliderCrank, travel: number, bottom: number): void {
  assertNumber('pistonTravel', 'piston travel', travel, 'Enter it in millimetres below the top.');
  if (travel < 0) {
    throw new MathsError(
      'travel-negative',
      ['pistonTravel'],
      `A travel of ${sayNumber(travel)} mm would be above top dead centre, where the piston cannot go. Travel is counted downwards from the top: enter 0 mm or more.`,
    );
  }
  const whole = totalTravel(g);
  const rounding = 1e-12 * whole;
  if (travel > Math.max(whole, travelAt(g, bottom)) + rounding) {
    throw new MathsError(
      'travel-beyond-stroke',
      ['pistonTravel', 'stroke'],
      `A travel of ${sayNumber(travel)} mm is more than the piston has: it goes ${sayNumber(whole)} mm from top to bottom. Enter 0 to ${sayNumber(whole)} mm, or correct the stroke.`,
    );
  }
}
