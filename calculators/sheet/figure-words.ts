import { finenessOf, shownUnit, withUnit } from '../frame/text/format.ts';
import type { LengthDisplay } from '../frame/text/units.ts';
import { answerOf, sheetFigures, type FigureKey } from './figures.ts';
import { toldDigits } from './step-units.ts';

/** A figure of the sheet as people read it: with its unit, or the answer that it stands for. */
export function figureWords(key: FigureKey, value: number, lengths: LengthDisplay): string {
  const spec = sheetFigures[key];
  const shown = shownUnit([value], spec.unit, lengths);
  return answerOf(key, value) ?? withUnit(toldDigits(value, shown, finenessOf(spec)), shown);
}
