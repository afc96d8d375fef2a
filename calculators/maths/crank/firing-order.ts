/**
 * When each cylinder of a crank comes to its top, from the angles of the crank pins and the lean of
 * the cylinders. Angles in degrees, all counted in the direction of turning.
 *
 * A cylinder without pin offset is at its top when its pin lies on its axis. With the crank turned on
 * by θ, pin N stands at θ + pin N, so cylinder N is at the top at θ = lean N − pin N. A two-stroke
 * fires at every top.
 *
 * Source: the geometry above; no approximation.
 */
import { MathsError } from '../numeric/errors.ts';
import { assertCylinderCount } from '../limits/cylinder-count.ts';
import { assertWithin } from '../numeric/within.ts';

const TURN = 360;
/** Rounding error of a sum of angles, degrees: less than this from a whole turn is the whole turn. */
const EPSILON = 1e-9;

/** An angle brought into 0 ≤ angle < 360. */
export function withinTurn(angle: number): number {
  const within = ((angle % TURN) + TURN) % TURN;
  return within < EPSILON || TURN - within < EPSILON ? 0 : within;
}

function assertAngle(quantity: string, words: string, angle: number): void {
  assertWithin(
    {
      quantity,
      words,
      unit: '°',
      min: -TURN,
      max: TURN,
      why: 'Beyond a full turn the count starts again.',
    },
    angle,
  );
}

/**
 * Crank degrees after the top of cylinder 1 at which each cylinder is at its top, 0 ≤ top < 360; the
 * first is 0.
 *
 * @param pins Degrees of each crank pin from pin 1, −360 to 360.
 * @param leans Degrees of each cylinder's axis from upright, −360 to 360; as many as pins.
 * @throws MathsError `out-of-range` for `cylinders`, `pin-N` or `lean-N`; `lean-missing`.
 */
export function topAngles(pins: readonly number[], leans: readonly number[]): readonly number[] {
  assertCylinderCount(pins.length);
  if (leans.length !== pins.length) {
    throw new MathsError(
      'lean-missing',
      ['lean'],
      'Every crank pin needs a cylinder: give as many leans as there are pins.',
    );
  }
  pins.forEach((pin, i) =>
    assertAngle(`pin-${String(i + 1)}`, `The angle of pin ${String(i + 1)}`, pin),
  );
  leans.forEach((lean, i) =>
    assertAngle(`lean-${String(i + 1)}`, `The lean of cylinder ${String(i + 1)}`, lean),
  );
  return pins.map((pin, i) => withinTurn(leans[i]! - pin - (leans[0]! - pins[0]!)));
}

export interface Firing {
  /** Numbers of the cylinders in the order in which they fire, cylinder 1 first. */
  readonly order: readonly number[];
  /**
   * Degrees from each firing to the next; the last is to cylinder 1 once more. 0 where two fire
   * together. They add up to a turn.
   */
  readonly intervals: readonly number[];
}

/** Cylinders nearer to each other than this fire together, from one set; degrees of the crank. */
export const TOGETHER = 0.1;

/**
 * The order of a two-stroke, which fires at every top. Those that fire together stand by number.
 *
 * @param tops Degrees of the crank at which each cylinder is at its top, 0 ≤ top < 360.
 */
export function firingOf(tops: readonly number[]): Firing {
  // One that comes a hair before cylinder 1 fires with it, and not last of all.
  const at = tops.map((top) => (TURN - top < TOGETHER ? 0 : top));
  const order = at.map((_, i) => i).sort((a, b) => at[a]! - at[b]! || a - b);
  const intervals = order.map((cylinder, k) => {
    const next = order[k + 1];
    return (next === undefined ? TURN : at[next]!) - at[cylinder]!;
  });
  return { order: order.map((index) => index + 1), intervals };
}

/**
 * The same firings with tops that were read a little otherwise: the order stands, and an interval of 0
 * may fall below it, since the later of two that fire together may come first.
 */
export function firingMoved({ order, intervals }: Firing, tops: readonly number[]): Firing {
  const top = (k: number): number => tops[order[k % order.length]! - 1]!;
  return {
    order,
    intervals: intervals.map((interval, k) => {
      const change = withinTurn(top(k + 1) - top(k) - interval);
      return interval + (change > TURN / 2 ? change - TURN : change);
    }),
  };
}

/**
 * Crank degrees after the top of cylinder 1 at which each cylinder is at its top, where they fire
 * evenly in an order; 0 ≤ top < 360, by the number of the cylinder.
 *
 * @param order Numbers of the cylinders as they fire, each from 1 on once, whichever is first.
 */
export function evenTops(order: readonly number[]): readonly number[] {
  const first = order.indexOf(1);
  const places = order.length;
  return order.map((_, i) => (TURN * ((order.indexOf(i + 1) - first + places) % places)) / places);
}

/** Whether two cylinders with these tops, degrees of the crank, fire together. */
const areTogether = (a: number, b: number): boolean =>
  Math.min(withinTurn(a - b), withinTurn(b - a)) < TOGETHER;

/** The directions in which sets of points stand, in the order of their cylinders: one for those that fire together. */
export const setDirections = (tops: readonly number[]): readonly number[] =>
  tops.filter((top, i) => !tops.slice(0, i).some((earlier) => areTogether(top, earlier)));

/** How many cylinders each set of points fires, in the order of the sets. */
export const firedBySets = (tops: readonly number[]): readonly number[] =>
  setDirections(tops).map((set) => tops.filter((top) => areTogether(top, set)).length);

/**
 * Longest less shortest interval, degrees, those that fire together taken as one; 0 is even.
 *
 * @param intervals As `firingOf` gives them, in degrees.
 * @param moved The same, read a little otherwise: which is the longest stands, so that it may be less
 * than nothing.
 */
export function unevenness(intervals: readonly number[], moved = intervals): number {
  const apart = intervals.map((_, k) => k).filter((k) => intervals[k]! >= TOGETHER);
  const byLength = apart.sort((a, b) => intervals[a]! - intervals[b]!);
  return moved[byLength.at(-1)!]! - moved[byLength[0]!]!;
}

/**
 * Where the lobes belong on a cam at crank speed whose sets all stand in one line: degrees from lobe 1
 * in the direction of turning. A lobe that is to come later lies further back.
 */
export const lobeDirections = (tops: readonly number[]): readonly number[] =>
  tops.map((top) => withinTurn(-top));

/**
 * How near to the bottom of the other cylinder the spare spark of a shared coil must fall, degrees
 * either way. Common practice: its ports are open there and nothing is compressed.
 */
export const SPARE_NEAR_BOTTOM = 15;

export interface Sharing {
  /** Numbers of the cylinders that come to the top with this one. */
  readonly together: readonly number[];
  /** Numbers of those that are half a turn away. */
  readonly opposite: readonly number[];
}

/**
 * Which others could share a coil with two leads with a cylinder: both plugs spark each time.
 *
 * @param cylinder Its number, from 1.
 * @param tolerance Degrees within which two tops count as one, 0 or more.
 */
export function sharing(tops: readonly number[], cylinder: number, tolerance: number): Sharing {
  const away = (other: number): number => {
    const on = withinTurn(tops[other]! - tops[cylinder - 1]!);
    return Math.min(on, TURN - on);
  };
  const others = tops.map((_, i) => i).filter((i) => i !== cylinder - 1);
  const numbers = (chosen: readonly number[]): number[] => chosen.map((i) => i + 1);
  return {
    together: numbers(others.filter((i) => away(i) <= tolerance)),
    opposite: numbers(others.filter((i) => away(i) >= TURN / 2 - SPARE_NEAR_BOTTOM)),
  };
}
