import { sheetFigures } from '../../calculators/sheet/figures.ts';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { steps } from '../../calculators/sheet/steps.ts';
import type { Action } from '../../content/faults/types.ts';

/** The figure of the sheet that the answer's step is judged by; none where it has none. */
export const targetOf = ({ step }: Action): FigureKey | undefined =>
  step && steps[step].reading?.target;

/** The figures of the sheet that an answer rests on, that of its step first. */
export function keysOf(action: Action): FigureKey[] {
  const target = targetOf(action);
  return [...new Set([...(target ? [target] : []), ...(action.figures ?? [])])];
}

/**
 * What common practice gives where there is no manual, as the sheet says it. It begins with the
 * name of its figure, since the answer above it may speak of another.
 */
export const guidesOf = (action: Action): string[] =>
  keysOf(action).flatMap((key) => {
    const { label, help } = sheetFigures[key];
    const said = /No manual: .*$/.exec(help);
    return said ? [`${label}. ${said[0]}`] : [];
  });
