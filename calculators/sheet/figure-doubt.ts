import { timingAt } from '../maths/plate/plate-setting.ts';
import { unusualTiming } from '../plate/usual-timing.ts';
import { DEEPEST } from './degrees-typed.ts';
import type { FigureKey } from './figures.ts';
import { besideOthers } from './figures-together.ts';
import { sliderCrankOf } from './geometry.ts';
import { attempted } from './judge-words.ts';
import type { Engine } from './model.ts';
import { steps, type StepId } from './steps.ts';

/** What speaks against a timing that no such engine is set to, by the stroke and rod in the sheet or by its depth alone. */
function timingDoubt(engine: Engine, target: number): string | undefined {
  const crank = sliderCrankOf(engine);
  if (crank === undefined) {
    return target > DEEPEST
      ? 'That is further down than such engines fire. Check the figure and its unit.'
      : undefined;
  }
  const angle = attempted(() => timingAt(crank, target));
  if (typeof angle === 'string') return angle;
  const said = unusualTiming(angle);
  return (
    said &&
    `On the stroke and rod in the sheet that is ${said} Check the figure, its unit, and stroke and rod.`
  );
}

/** What speaks against a figure that stands in the sheet: the others beside it, or common practice. */
export function figureDoubt(engine: Engine, key: FigureKey): string | undefined {
  const value = engine.figures[key];
  if (value === undefined) return undefined;
  return (
    (key === 'target' ? timingDoubt(engine, value) : undefined) ?? besideOthers(engine.figures, key)
  );
}

/** What speaks against the figures that a step without readings is done by; nothing of any other step. */
export const ownFiguresDoubt = (engine: Engine, id: StepId): string | undefined =>
  steps[id].reading === undefined
    ? steps[id].figures?.map((key) => figureDoubt(engine, key)).find(Boolean)
    : undefined;

/** What follows a figure that is doubted, where it stands away from the sentence that says why. */
export const doubtedMark = (engine: Engine, key: FigureKey): string =>
  figureDoubt(engine, key) === undefined ? '' : ', doubted: check it in the sheet';
