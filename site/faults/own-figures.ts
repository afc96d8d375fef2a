import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { isBegun } from '../../calculators/sheet/edit.ts';
import { sheetFigures, type FigureKey } from '../../calculators/sheet/figures.ts';
import { targetWords } from '../../calculators/sheet/judge.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { isStepId, steps } from '../../calculators/sheet/steps.ts';
import { activeEngine } from '../../calculators/sheet/store.ts';
import { figureLine, stepLine } from '../../calculators/sheet/summary.ts';
import { rememberedLengths, watchLengths } from '../browser/preferences.ts';
import { keptStore } from '../sheet/keeper.ts';

/** What the sheet holds for an action: its step with the last readings, and its figures. */
export function ownLines(
  engine: Engine,
  step: string,
  keys: readonly string[],
  lengths: LengthDisplay,
): string[] {
  const lines: string[] = [];
  if (isStepId(step)) {
    const target = targetWords(engine, step, lengths) ?? '';
    if (isBegun(engine, step)) lines.push(stepLine(engine, step, lengths));
    else if (target !== '' && !target.startsWith('…')) {
      lines.push(`${steps[step].title}: ${target}`);
    }
  }
  const own = keys.filter((key) => Object.hasOwn(sheetFigures, key)) as FigureKey[];
  return [
    ...lines,
    ...own
      .filter((key) => engine.figures[key] !== undefined)
      .map((key) => figureLine(engine, key, lengths)),
  ];
}

/** Writes the figures of the engine in use beside each action; nothing where no sheet is kept. */
export function showOwnFigures(): void {
  const engine = activeEngine(keptStore());
  if (!engine) return;
  const lengths = rememberedLengths();
  const whose = engine.invented ? `${engine.name} (invented)` : engine.name;
  for (const place of document.querySelectorAll<HTMLElement>('[data-own]')) {
    const { step = '', figures = '' } = place.dataset;
    const lines = ownLines(engine, step, figures.split(' '), lengths);
    const name = document.createElement('b');
    name.textContent = `By the sheet of ${whose}: `;
    const missing = 'its figure is not entered yet.';
    place.replaceChildren(name, lines.length === 0 ? missing : `${lines.join('. ')}.`);
    place.hidden = false;
  }
}

watchLengths(showOwnFigures);
