import type { ComputedOf, ValuesOf } from '../../frame/types.ts';
import { bobWeight, pistonForce, shaking, type Throw } from '../../maths/crank/engine-balance.ts';
import {
  firingMoved,
  firingOf,
  type Firing,
  lobeDirections,
  setDirections,
  TOGETHER,
  topAngles,
  unevenness,
} from '../../maths/crank/firing-order.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
export type Computed = ComputedOf<typeof results>;

export const throwsOf = (v: Values): readonly Throw[] =>
  v.pin.map((pin, i) => ({ pin, lean: v.lean[i]!, place: v.place[i]! }));

const pistonsOf = (v: Values) => ({
  reciprocatingMass: v.reciprocating,
  stroke: v.stroke,
  rodLength: v.rod,
  speed: v.rpm,
});

/** The order as one figure: a nought joins cylinders that fire together. */
export const sequenceOf = (order: readonly number[], intervals: readonly number[]): number =>
  Number(
    order
      .map((cylinder, k) =>
        k < order.length - 1 && intervals[k]! < TOGETHER ? `${cylinder}0` : cylinder,
      )
      .join(''),
  );

/** In which order they fire, and which interval is the longest, is decided by the readings as they are. */
export const decide = (v: Values): Firing => firingOf(topAngles(v.pin, v.lean));

/** @param decided The firings that the readings as they are lead to, while a ± moves one of them. */
export function compute(v: Values, decided?: unknown): Computed {
  const tops = topAngles(v.pin, v.lean);
  const asRead = (decided as Firing | undefined) ?? firingOf(tops);
  const { order, intervals } = decided ? firingMoved(asRead, tops) : asRead;
  const pistons = pistonsOf(v);
  const factor = v.factor / 100;
  const shakes = shaking(throwsOf(v), pistons, factor);
  return {
    sequence: sequenceOf(order, intervals),
    sets: setDirections(tops).length,
    uneven: unevenness(asRead.intervals, intervals),
    top: tops,
    set: tops,
    lobe: lobeDirections(tops),
    order,
    interval: intervals,
    primary: shakes.primary,
    'primary-left': shakes.primaryLeft,
    secondary: shakes.secondary,
    'primary-couple': shakes.primaryCouple,
    'couple-left': shakes.primaryCoupleLeft,
    'secondary-couple': shakes.secondaryCouple,
    single: pistonForce(pistons),
    'bob-weight': bobWeight(v.rotating, v.reciprocating, factor),
  };
}
