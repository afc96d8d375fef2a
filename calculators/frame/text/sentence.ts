import { inputDigits, showFigure, withUnit, type Shown } from './format.ts';
import type { LengthDisplay } from './units.ts';

/** A label within a sentence: it keeps its capital where it is one of several, as TDC. */
export const inSentence = (label: string): string =>
  /^\p{Lu}\p{Ll}/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;

const FIGURE = String.raw`[−-]?\d+(?:\.\d+)?`;
/** One figure, or several that share the unit: “0.5 mm”, “210 × 297 mm”. */
const MILLIMETRES = new RegExp(
  String.raw`(${FIGURE}(?:(?: to | and | or | × )${FIGURE})*) mm\b(?![²³/])`,
  'gu',
);

/** Decimals of the finest millimetre that anybody reads. */
const FINEST = 3;

/**
 * A sentence of the maths package, which knows millimetres only, in the reader's lengths: each figure
 * of it with as many digits as it was written with.
 */
export function sentenceIn(sentence: string, lengths: LengthDisplay): string {
  if (lengths === 'mm') return sentence;
  return sentence.replaceAll(MILLIMETRES, (_, figures: string) => {
    const valueOf = (figure: string): number => Number(figure.replace('−', '-'));
    const parts = figures.match(new RegExp(FIGURE, 'gu'))!;
    const among = parts.map(valueOf);
    const show = (figure: string): Shown => {
      const value = valueOf(figure);
      const decimals = figure.split('.')[1]?.length ?? 0;
      const shown = showFigure(value, 'mm', decimals, lengths, undefined, { among });
      // So fine a figure was typed in inches: it goes back to what was typed.
      return decimals > FINEST
        ? { ...shown, figure: inputDigits(value, shown.unit).replace('-', '−') }
        : shown;
    };
    const turned = figures.replaceAll(new RegExp(FIGURE, 'gu'), (figure) => show(figure).figure);
    return withUnit(turned, show(parts[0]!).unit);
  });
}
