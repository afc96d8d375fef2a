/**
 * What an engine shakes with: the inertia of its pistons, first and second order.
 *
 * A piston of mass m on a crank of throw r and a rod of length l, turning at ω, pushes the engine along
 * its own axis by m r ω² (cos α + (r / l) cos 2α), α after its top; what the series leaves out is less
 * than (r / l)³ / 4 of the whole. Each cosine along a line is the sum of two cranks of half the length:
 * one that turns forwards (the direct crank) and its mirror image in the cylinder's axis, which turns
 * backwards (the reverse crank). The direct cranks of all cylinders keep their figure as they turn, so
 * they are added up once, and so are the reverse ones. The two sums turn against each other: the most
 * over a turn is where they point the same way, the sum of their lengths.
 *
 * The same with each crank multiplied by its distance from the middle of the engine gives the couples
 * that rock it end for end. A balancing weight opposite a pin turns forwards, and takes from the direct
 * crank alone.
 *
 * Method: direct and reverse cranks, theory of machines. The cases of rows and vees are those of
 * R. L. Norton, Design of Machinery, McGraw-Hill, chapter 14 (Multicylinder engines): forces in a row
 * section 14.3 (page 646), couples 14.5 (650), vees 14.7 (661), balancing 14.9 (675; the secondary of a
 * row of four, 679), by the contents of the edition whose chapter 14 begins on page 639.
 */
import { assertCylinderCount } from '../limits/cylinder-count.ts';
import { assertGeometry } from './slider-crank.ts';
import { assertWithin } from '../numeric/within.ts';

/** Angles in degrees in the direction of turning, place in mm along the crank. */
export interface Throw {
  /** Of the crank pin, from pin 1. */
  readonly pin: number;
  /** Of the cylinder's axis, from upright. */
  readonly lean: number;
  readonly place: number;
}

export interface Pistons {
  /** What goes up and down with one piston, g, above 0. */
  readonly reciprocatingMass: number;
  /** mm */
  readonly stroke: number;
  /** mm, more than half the stroke. */
  readonly rodLength: number;
  /** rpm, 0 or more. */
  readonly speed: number;
}

/** X in the direction of turning from upright, Y up. */
export interface Vector {
  readonly x: number;
  readonly y: number;
}

export type Order = 'primary' | 'secondary';

/** The cranks of one order, in the order of the cylinders. */
export interface Cranks {
  readonly direct: readonly Vector[];
  readonly reverse: readonly Vector[];
}

const MM = 1000;
const GRAMS = 1000;
const RADIANS = Math.PI / 180;

function assertPistons({ reciprocatingMass, stroke, rodLength, speed }: Pistons): void {
  assertGeometry({ stroke, rodLength, pinOffset: 0 });
  assertWithin(
    {
      quantity: 'reciprocatingMass',
      words: 'The reciprocating mass',
      unit: 'g',
      min: 0,
      above: true,
      why: 'Weigh piston, rings, gudgeon pin and the upper part of the rod together.',
    },
    reciprocatingMass,
  );
  assertWithin(
    {
      quantity: 'speed',
      words: 'The speed',
      unit: 'rpm',
      min: 0,
      why: 'Give 0 for a crank that stands still.',
    },
    speed,
  );
}

/** The primary force of one piston alone at its top, m r ω², N. */
export function pistonForce(pistons: Pistons): number {
  assertPistons(pistons);
  const { reciprocatingMass, stroke, speed } = pistons;
  const omega = (speed * 2 * Math.PI) / 60;
  return (reciprocatingMass / GRAMS) * (stroke / 2 / MM) * omega ** 2;
}

const towards = (length: number, degrees: number): Vector => ({
  x: length * Math.sin(degrees * RADIANS),
  y: length * Math.cos(degrees * RADIANS),
});

export const sumOf = (vectors: readonly Vector[]): Vector =>
  vectors.reduce((sum, { x, y }) => ({ x: sum.x + x, y: sum.y + y }), { x: 0, y: 0 });

/** Rounding error of a polygon that closes, of the length of all its sides together. */
const EPSILON = 1e-12;

/** Length of the sum of vectors; exactly 0 where their polygon closes. */
export function lengthOfSum(vectors: readonly Vector[]): number {
  const { x, y } = sumOf(vectors);
  const length = Math.hypot(x, y);
  const sides = vectors.reduce((sum, side) => sum + Math.hypot(side.x, side.y), 0);
  return length <= EPSILON * sides ? 0 : length;
}

/**
 * The direct and reverse cranks, each of half its weight, with the crank turned on by `turned` degrees
 * from the top of cylinder 1.
 *
 * @param weights What each cylinder counts: 1 for forces, its distance from the middle for couples.
 */
export function cranks(
  throws: readonly Throw[],
  order: Order,
  weights: readonly number[],
  turned = 0,
): Cranks {
  const first = throws[0]!;
  const times = order === 'primary' ? 1 : 2;
  const each = throws.map(({ pin, lean }, i) => {
    // After the top of this cylinder; the cylinder's own axis is upright for it.
    const after = first.lean + turned + pin - first.pin - lean;
    return { half: weights[i]! / 2, lean, after: times * after };
  });
  return {
    direct: each.map(({ half, lean, after }) => towards(half, lean + after)),
    reverse: each.map(({ half, lean, after }) => towards(half, lean - after)),
  };
}

/** The most over a turn of what the cranks add up to, in the unit of their weights. */
export const mostOf = ({ direct, reverse }: Cranks): number =>
  lengthOfSum(direct) + lengthOfSum(reverse);

/** Each cylinder's distance from the middle between the first and the last place, mm. */
export function fromMiddle(throws: readonly Throw[]): readonly number[] {
  const places = throws.map(({ place }) => place);
  const middle = (Math.min(...places) + Math.max(...places)) / 2;
  return places.map((place) => place - middle);
}

export interface Shaking {
  /** Most over a turn, N. */
  readonly primary: number;
  readonly secondary: number;
  /** Most over a turn about the middle of the places, N m. */
  readonly primaryCouple: number;
  readonly secondaryCouple: number;
  /** The primary ones with the balancing weights of the given factor. */
  readonly primaryLeft: number;
  readonly primaryCoupleLeft: number;
}

/**
 * What the pistons shake the engine with, rotating masses balanced by themselves.
 *
 * @param throws One for each of 1 to 8 cylinders.
 * @param balanceFactor Share of each reciprocating mass that a weight opposite its pin balances, 0 to 1.
 * @throws MathsError `out-of-range`; as `assertGeometry` for stroke and rod.
 */
export function shaking(
  throws: readonly Throw[],
  pistons: Pistons,
  balanceFactor: number,
): Shaking {
  assertCylinderCount(throws.length);
  assertWithin(
    {
      quantity: 'balanceFactor',
      words: 'The balance factor',
      unit: '',
      min: 0,
      max: 1,
      why: 'A weight of more than the whole piston shakes the engine across instead.',
    },
    balanceFactor,
  );
  const force = pistonForce(pistons);
  const ratio = pistons.stroke / 2 / pistons.rodLength;
  const arms = fromMiddle(throws).map((arm) => arm / MM);
  const level = throws.map(() => 1);
  const primary = cranks(throws, 'primary', level);
  const couple = cranks(throws, 'primary', arms);
  // A weight is a whole crank turning forwards, against two halves.
  const left = ({ direct, reverse }: Cranks): number =>
    Math.abs(1 - 2 * balanceFactor) * lengthOfSum(direct) + lengthOfSum(reverse);
  return {
    primary: force * mostOf(primary),
    secondary: force * ratio * mostOf(cranks(throws, 'secondary', level)),
    primaryCouple: force * mostOf(couple),
    secondaryCouple: force * ratio * mostOf(cranks(throws, 'secondary', arms)),
    primaryLeft: force * left(primary),
    primaryCoupleLeft: force * left(couple),
  };
}

/**
 * The weight to hang on each crank pin while the crank is balanced on knife edges, g: all of what
 * rotates with the pin, and the chosen share of what goes up and down.
 *
 * @param rotatingMass Big end, its bearing and the lower part of the rod, g, 0 or more.
 */
export function bobWeight(
  rotatingMass: number,
  reciprocatingMass: number,
  balanceFactor: number,
): number {
  assertWithin(
    {
      quantity: 'rotatingMass',
      words: 'The rotating mass',
      unit: 'g',
      min: 0,
      why: 'Weigh the big end of the rod, the rod level, and its bearing.',
    },
    rotatingMass,
  );
  return rotatingMass + balanceFactor * reciprocatingMass;
}
