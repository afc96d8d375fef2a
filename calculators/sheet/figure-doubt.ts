import { DEEPEST } from './degrees-typed.ts';
import type { FigureKey } from './figures.ts';
import { besideOthers } from './figures-together.ts';
import type { Engine } from './model.ts';
import { unusualPlace } from './usual-place.ts';

/** What speaks against the timing to set: its place on the crank in the sheet, or its depth alone. */
function timingDoubt(engine: Engine, target: number): string | undefined {
  const said = unusualPlace(engine, target);
  if (said !== undefined || target <= DEEPEST) return said;
  return 'That is further down than such engines fire. Check the figure and its unit.';
}

/** What speaks against a figure that stands in the sheet: the others beside it, or common practice. */
export function figureDoubt(engine: Engine, key: FigureKey): string | undefined {
  const value = engine.figures[key];
  if (value === undefined) return undefined;
  return (
    (key === 'target' ? timingDoubt(engine, value) : undefined) ?? besideOthers(engine.figures, key)
  );
}

/** What follows a figure that is doubted, where it stands away from the sentence that says why. */
export const doubtedMark = (engine: Engine, key: FigureKey): string =>
  figureDoubt(engine, key) === undefined ? '' : ', doubted: check it in the sheet';
