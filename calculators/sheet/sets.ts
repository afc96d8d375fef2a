import { MOST_CYLINDERS, type FigureKey } from './figures.ts';
import { setFigure } from './edit.ts';
import { cylindersOf, type Engine } from './model.ts';

/** The figures that hold where each set but the first belongs, for so many cylinders. */
export const setKeys = (cylinders: number): FigureKey[] =>
  Array.from(
    { length: Math.min(cylinders, MOST_CYLINDERS) - 1 },
    (_, i) => `set-${String(i + 2)}` as FigureKey,
  );

/**
 * Where each set belongs, degrees on the plate from set 1 the way the cam turns; nothing until the
 * sheet says so of every set.
 */
export function directionsOf(engine: Engine): readonly number[] | undefined {
  const others = setKeys(cylindersOf(engine)).map((key) => engine.figures[key]);
  if (others.some((direction) => direction === undefined)) return undefined;
  return [0, ...(others as number[])];
}

/** Directions of sets that fire evenly by a cam at crank speed, for sets 2, 3, …. */
export const evenDirections = (cylinders: number): readonly number[] =>
  setKeys(cylinders).map((_, i) => Number(((360 * (i + 1)) / cylinders).toFixed(6)));

/** The engine with its sets said to stand evenly round the plate. */
export const setEven = (engine: Engine): Engine => {
  const cylinders = cylindersOf(engine);
  const even = evenDirections(cylinders);
  return setKeys(cylinders).reduce((so, key, i) => setFigure(so, key, even[i]), engine);
};
