import { showInput } from '../frame/text/format.ts';
import type { LengthDisplay } from '../frame/text/units.ts';
import { answerOf, sheetFigures, type FigureKey } from './figures.ts';

/** A figure of the sheet as people read it: with its unit, or the answer that it stands for. */
export function figureWords(key: FigureKey, value: number, lengths: LengthDisplay): string {
  const { unit, step } = sheetFigures[key];
  return answerOf(key, value) ?? showInput(value, unit, lengths, step);
}
