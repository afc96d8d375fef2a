import { convert } from '../../maths/units/units.ts';
import { plainDecimal } from '../../maths/numeric/rounding.ts';

/**
 * Pressures, masses and temperatures in a text, which gauges, scales and thermometers of a reader in
 * inches show in other units. Both are told: unlike a length, such a figure is as often read in one
 * as in the other.
 */
const FIGURE = String.raw`[−-]?\d+(?:\.\d+)?`;
export const FOREIGN = new RegExp(
  String.raw`(?<![\d.\p{L}])(${FIGURE}(?:(?: to | and | or |, )${FIGURE})*)(?: |\u00A0|&nbsp;)(kPa|kg|°C)(?![\p{L}\d²³/·])`,
  'gu',
);
/** A text that gives the other unit itself: “7 kPa (1 psi)”, “40 kPa, about 6 psi”. */
const GIVEN = /^(?:,? \(?(?:about )?)[\d.]+(?: |\u00A0)(?:psi|hPa|inHg|lb|°F)/u;

/** A difference of temperatures has no zero: told by what stands before it or after it. */
const BEFORE_A_DIFFERENCE = /\b(?:each|every|within|by)\s$/iu;
const AFTER_A_DIFFERENCE =
  /^\s(?:more|less|warmer|colder|hotter|cooler|higher|lower|above|below|of difference)\b/u;

const rounded = (value: number, like: string): string => {
  const digits = Math.max(2, like.replace(/[.−-]/gu, '').replace(/^0+/u, '').length);
  return plainDecimal(Number(value.toPrecision(digits))).replace('-', '−');
};

/** Finer than a degree is not told of a temperature told in whole ones. */
const degrees = (value: number): string => String(Math.round(value)).replace('-', '−');

/** The figures in the unit of a reader in inches: “7.3 psi”; nothing where the text gives it. */
export function foreignTwin(
  figures: string,
  unit: string,
  before: string,
  after: string,
): string | undefined {
  if (GIVEN.test(after)) return undefined;
  const isDifference = BEFORE_A_DIFFERENCE.test(before) || AFTER_A_DIFFERENCE.test(after);
  const turn = (text: string): string => {
    const value = Number(text.replace('−', '-'));
    if (unit === 'kPa') return rounded(convert(value, 'kPa', 'psi'), text);
    if (unit === 'kg') return rounded(convert(value, 'kg', 'lb'), text);
    return degrees(isDifference ? (value * 9) / 5 : (value * 9) / 5 + 32);
  };
  const turned = figures.replaceAll(new RegExp(FIGURE, 'gu'), turn);
  return `${turned} ${{ kPa: 'psi', kg: 'lb', '°C': '°F' }[unit]!}`;
}

/** A text with the other unit in brackets behind each figure that has one. */
export const foreignIn = (text: string): string =>
  text.replaceAll(FOREIGN, (found: string, figures: string, unit: string, at: number) => {
    const twin = foreignTwin(figures, unit, text.slice(0, at), text.slice(at + found.length));
    return twin === undefined ? found : `${found} (${twin})`;
  });
