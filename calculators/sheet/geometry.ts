import { totalTravel, type SliderCrank } from '../maths/crank/slider-crank.ts';
import { MathsError } from '../maths/numeric/errors.ts';
import type { FigureKey } from './figures.ts';
import type { Engine } from './model.ts';

/** What turns degrees into millimetres. The pin offset is 0 unless the sheet has one. */
export const crankFigures = ['stroke', 'rod'] as const satisfies readonly FigureKey[];

/** The sheet's crank and rod as the maths package takes them, or nothing while one is missing. */
export function sliderCrankOf({ figures }: Engine): SliderCrank | undefined {
  const { stroke, rod, offset = 0 } = figures;
  if (stroke === undefined || rod === undefined) return undefined;
  return { stroke, rodLength: rod, pinOffset: offset };
}

/** How far the piston goes from top to bottom, mm, as far as the sheet says; nothing without a stroke. */
export function strokeOf(engine: Engine): number | undefined {
  const crank = sliderCrankOf(engine);
  if (crank === undefined) return engine.figures.stroke;
  try {
    return totalTravel(crank);
  } catch (error) {
    if (error instanceof MathsError) return crank.stroke;
    throw error;
  }
}
