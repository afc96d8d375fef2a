import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { isBegun } from '../../calculators/sheet/readings.ts';
import { sheetFigures, type FigureKey } from '../../calculators/sheet/figures.ts';
import { judge, targetWords, wantedFigures } from '../../calculators/sheet/judge.ts';
import { entriesOf, type Engine } from '../../calculators/sheet/model.ts';
import { hasStep, isStepId, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { figureLine, stepLine } from '../../calculators/sheet/summary.ts';

/** What a step says of this engine: its last readings, what it is set to, or that there is no such work. */
function stepSays(engine: Engine, id: StepId, lengths: LengthDisplay): string[] {
  const { title, fallsAway } = steps[id];
  if (!hasStep(engine.figures, id)) return [`${title}: not on this engine, ${fallsAway!.why}`];
  if (isBegun(engine, id)) return [stepLine(engine, id, lengths)];
  const target = targetWords(engine, id, lengths) ?? '';
  const wanted = wantedFigures(id, engine);
  const known = wanted.some((key) => engine.figures[key] !== undefined);
  return target !== '' && (known || !target.includes('…')) ? [`${title}: ${target}`] : [];
}

/**
 * What the last readings of a step say against an answer that lives by them; nothing where they bear
 * it out, or where one of them is still missing or not judged.
 */
export function contradiction(
  engine: Engine,
  step: string,
  measured: string | undefined,
): string | undefined {
  if (measured === undefined || !isStepId(step) || !hasStep(engine.figures, step)) return undefined;
  const { reading, title } = steps[step];
  const { rows } = judge(engine, step, 'mm');
  if (!reading || rows.some(({ result }) => result !== 'pass' && result !== 'fail')) {
    return undefined;
  }
  const entries = entriesOf(engine, step);
  const figure = reading.target === undefined ? undefined : engine.figures[reading.target];
  const bearsOut = rows.some(({ result }, i) => {
    if (result !== 'fail') return false;
    if (measured === 'out' || figure === undefined) return true;
    return measured === 'early' ? entries[i]! > figure : entries[i]! < figure;
  });
  if (bearsOut) return undefined;
  const whose = `by the last readings at “${title}”`;
  const says =
    measured === 'out' ? `${whose} all are within their limits` : `${whose} none is ${measured}`;
  return `The sheet says otherwise: ${says}. One of the two is wrong: read it again before you move anything.`;
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
