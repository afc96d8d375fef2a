import { evenTops } from '../maths/crank/firing-order.ts';
import { MOST_CYLINDERS, type FigureKey } from './figures.ts';
import { setFigure } from './set-figure.ts';
import { orderText } from '../frame/text/order.ts';
import { fromFirst, orderWords, setOrderOf } from './firing-order.ts';
import { setsOf, turnsOf, type Engine } from './model.ts';

/** The figures that hold where each set but the first belongs, for so many sets. */
export const setKeys = (sets: number): FigureKey[] =>
  Array.from(
    { length: Math.min(sets, MOST_CYLINDERS) - 1 },
    (_, i) => `set-${String(i + 2)}` as FigureKey,
  );

/**
 * Where each set belongs, degrees on the plate from set 1 the way the cam turns; nothing until the
 * sheet says so of every set.
 */
export function directionsOf(engine: Engine): readonly number[] | undefined {
  const others = setKeys(setsOf(engine)).map((key) => engine.figures[key]);
  if (others.some((direction) => direction === undefined)) return undefined;
  return [0, ...(others as number[])];
}

/**
 * Directions of sets that fire evenly by a cam at crank speed, for sets 2, 3, …: in the firing order
 * where the sheet has it, else as they are numbered.
 */
export const evenDirections = (engine: Engine): readonly number[] => {
  const tops = evenTops(
    setOrderOf(engine) ?? Array.from({ length: setsOf(engine) }, (_, i) => i + 1),
  );
  return tops.slice(1).map((top) => Number((top / turnsOf(engine)).toFixed(6)));
};

/** The engine with its sets said to stand evenly round the plate. */
export const setEven = (engine: Engine): Engine => {
  const even = evenDirections(engine);
  return setKeys(setsOf(engine)).reduce((so, key, i) => setFigure(so, key, even[i]), engine);
};

/** Sets nearer than this fire together, degrees of the plate. */
const TOGETHER = 1;

/** What to say where the sets, as the sheet has them, do not come round in the firing order. */
export function orderAgainstSets(engine: Engine): string | undefined {
  const directions = directionsOf(engine);
  const order = setOrderOf(engine);
  if (directions === undefined || order === undefined || order.length < 3) return undefined;
  // A set may stand a lobe further on and fire at the same moment.
  const round = 360 / (engine.figures.lobes ?? 1);
  const places = directions
    .map((direction, i) => ({ set: i + 1, at: ((direction % round) + round) % round }))
    .sort((a, b) => a.at - b.at);
  const apart = places.every(
    ({ at }, i) => (i === 0 ? at + round - places.at(-1)!.at : at - places[i - 1]!.at) >= TOGETHER,
  );
  const stands = fromFirst(places.map(({ set }) => set));
  const fires = fromFirst(order);
  return !apart || orderText(stands) === orderText(fires)
    ? undefined
    : `The firing order in the sheet is ${orderWords(engine)}, and by their directions the sets come round as ${orderText(stands)}, the way the cam turns. One of the two is wrong: correct it before a hole is drilled.`;
}
