import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { isBegun } from '../../calculators/sheet/edit.ts';
import { sheetFigures, type FigureKey } from '../../calculators/sheet/figures.ts';
import { targetWords, wantedFigures } from '../../calculators/sheet/judge.ts';
import { cylindersOf, type Engine } from '../../calculators/sheet/model.ts';
import { hasStep, isStepId, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { figureLine, stepLine } from '../../calculators/sheet/summary.ts';

/** What a step says of this engine: its last readings, what it is set to, or that there is no such work. */
function stepSays(engine: Engine, id: StepId, lengths: LengthDisplay): string[] {
  const { title, fallsAway } = steps[id];
  if (!hasStep(engine.figures, id)) return [`${title}: not on this engine, ${fallsAway!.why}`];
  if (isBegun(engine, id)) return [stepLine(engine, id, lengths)];
  const target = targetWords(engine, id, lengths) ?? '';
  const wanted = wantedFigures(id, cylindersOf(engine));
  const known = wanted.some((key) => engine.figures[key] !== undefined);
  return target !== '' && (known || !target.includes('…')) ? [`${title}: ${target}`] : [];
}

/** What the sheet holds for an action: its step with the last readings, and its figures. */
export function ownLines(
  engine: Engine,
  step: string,
  keys: readonly string[],
  lengths: LengthDisplay,
): string[] {
  const own = keys.filter((key) => Object.hasOwn(sheetFigures, key)) as FigureKey[];
  return [
    ...(isStepId(step) ? stepSays(engine, step, lengths) : []),
    ...own
      .filter((key) => engine.figures[key] !== undefined)
      .map((key) => figureLine(engine, key, lengths)),
  ];
}
