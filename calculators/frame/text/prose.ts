import { foreignIn } from './foreign.ts';
import { plainDecimal } from '../../maths/numeric/rounding.ts';
import { shownUnit } from './format.ts';
import { toShown, units, type LengthDisplay, type UnitName } from './units.ts';

/** How the home units that look different in inches are written in a text. */
const written = { mm: 'mm', 'mm²': 'mm2', m: 'm' } as const satisfies Record<string, UnitName>;

const FIGURE = String.raw`[−-]?\d+(?:\.\d+)?`;
/** One figure, or several that share a unit: “36 mm”, “0.05 to 0.075 mm”, “2.2 ± 0.1 mm”. */
const MEASURES = new RegExp(
  String.raw`(?<![\d.\p{L}])(${FIGURE}(?:(?: to | and | or | by | × | ± |, )${FIGURE})*) (mm²|mm|m)(?![\p{L}\d²³/])`,
  'gu',
);
/** A figure of one digit has two when it is turned. */
const LEAST_DIGITS = 2;
/** The engine of a table is told as exactly as its figures are worked out. */
export const ENGINE_DIGITS = 4;

const digitsOf = (figure: string): number => figure.replace('.', '').replace(/^0+/, '').length;

/**
 * A text of a definition, written in millimetres, in the reader's lengths: each figure with as many
 * digits as it was written with, two at the least. What is in millimetres by its nature is written
 * with `metric` and stays. Pressures and temperatures get the other unit in brackets.
 *
 * @param least How many digits a turned figure has at the least: more where it is a figure that others
 *   are worked out from.
 */
export function proseIn(text: string, lengths: LengthDisplay, least = LEAST_DIGITS): string {
  if (lengths === 'mm') return text;
  return foreignIn(text).replaceAll(MEASURES, (_, figures: string, unit: keyof typeof written) => {
    const numbers = [...figures.matchAll(/\d+(?:\.\d+)?/g)].map(([figure]) => Number(figure));
    const shown = shownUnit(numbers, written[unit], lengths);
    const turned = figures.replaceAll(/\d+(?:\.\d+)?/g, (figure) => {
      const digits = Math.max(least, digitsOf(figure));
      return plainDecimal(Number(toShown(Number(figure), shown).toPrecision(digits)));
    });
    return `${turned} ${units[shown].label}`;
  });
}

/**
 * A length that is metric by its nature, such as a plug's thread: a space that does not break holds
 * it together, and `proseIn` leaves it.
 */
export const metric = (figure: number | string): string => `${String(figure)}\u00A0mm`;
