import {
  cranks as cranksOf,
  fromMiddle,
  mostOf,
  type Order,
} from '../calculators/maths/crank/engine-balance.ts';
import { firingOf, topAngles } from '../calculators/maths/crank/firing-order.ts';

/** A crank of a row of cylinders by its pins, degrees from pin 1 the way it turns. */
export interface Crank {
  readonly name: string;
  readonly pins: readonly number[];
}

/** Cranks of a row of cylinders, as an article compares them. */
export const cranks: readonly Crank[] = [
  { name: 'Twin at 180°', pins: [0, 180] },
  { name: 'Twin at 360°', pins: [0, 0] },
  { name: 'Triple at 120°', pins: [0, 240, 120] },
  { name: 'Four at 90°', pins: [0, 180, 270, 90] },
];

const firing = ({ pins }: Crank) =>
  firingOf(
    topAngles(
      pins,
      pins.map(() => 0),
    ),
  );

/** The order in which the cylinders fire, those that fire together joined: `1 + 2`. */
export function firingOrder(crank: Crank): string {
  const { order, intervals } = firing(crank);
  return order
    .map((cylinder, i) => `${i === 0 ? '' : intervals[i - 1] === 0 ? ' + ' : ', '}${cylinder}`)
    .join('');
}

/** The different intervals between its firings, degrees. */
export const intervalsOf = (crank: Crank): readonly number[] => [
  ...new Set(firing(crank).intervals.filter((interval) => interval > 0)),
];

/**
 * What is left of the shaking of one order: force in those of one cylinder, couple in those of one
 * cylinder at an arm of one pitch.
 */
export function leftOver({ pins }: Crank, order: Order): { force: number; couple: number } {
  const throws = pins.map((pin, place) => ({ pin, lean: 0, place }));
  const most = (weights: readonly number[]): number => mostOf(cranksOf(throws, order, weights));
  return { force: most(pins.map(() => 1)), couple: most(fromMiddle(throws)) };
}
