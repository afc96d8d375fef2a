import { timingAt } from '../maths/plate/plate-setting.ts';
import { unusualTiming } from '../position/usual-timing.ts';
import { DEEPEST } from './degrees-typed.ts';
import type { FigureKey } from './figures.ts';
import { besideOthers } from './figures-together.ts';
import { sliderCrankOf } from './geometry.ts';
import { attempted } from './judge-words.ts';
import type { Engine } from './model.ts';

/** Whether no such engine is set so, by the stroke and rod in the sheet or by the depth alone. */
function isUnusual(engine: Engine, target: number): boolean {
  const crank = sliderCrankOf(engine);
  if (crank === undefined) return target > DEEPEST;
  const angle = attempted(() => timingAt(crank, target));
  return typeof angle === 'string' || unusualTiming(angle) !== undefined;
}

/** Whether a figure that stands in the sheet is doubted there: beside the others, or by common practice. */
export function isDoubted(engine: Engine, key: FigureKey): boolean {
  const value = engine.figures[key];
  if (value === undefined) return false;
  return (
    (key === 'target' && isUnusual(engine, value)) ||
    besideOthers(engine.figures, key) !== undefined
  );
}

/** What follows a figure that is doubted, where it stands away from the sentence that says why. */
export const doubtedMark = (engine: Engine, key: FigureKey): string =>
  isDoubted(engine, key) ? ', doubted: check it in the sheet' : '';
