import { withUnit } from '../frame/format.ts';
import { convert } from '../maths/units/units.ts';
import { units, type UnitName } from '../frame/units.ts';

/** Beyond so many tolerances, and beyond the figure's own half, a reading is more likely a slip. */
const MANY_TOLERANCES = 10;
const LARGE_SHARE = 0.5;

/** Units of one quantity that are taken for one another, or typed and not seen. */
const TAKEN_FOR: Partial<Record<UnitName, readonly string[]>> = {
  mm: ['mm', 'in', 'thou'],
  uF: ['µF', 'nF', 'pF'],
  kPa: ['kPa', 'psi', 'bar'],
};

/** Digits of a figure that somebody typed. */
const TYPED_DIGITS = 4;

/** The figure that was typed, if it has few digits in this unit. */
function typedIn(value: number, home: string, unit: string): number | undefined {
  const figure = convert(value, home, unit);
  const short = Number(figure.toPrecision(TYPED_DIGITS));
  return Math.abs(figure - short) <= Math.abs(figure) * 1e-9 ? short : undefined;
}

/** How many digits it has: of several ways to type one length the shortest was typed. */
const digitsOf = (figure: number): number =>
  figure.toExponential().replace(/e.*$/u, '').replace(/\D/gu, '').length;

/** The same digits in another unit, as which the reading would pass; nothing where there is none. */
export function meant(
  value: number,
  unit: UnitName,
  home: UnitName,
  passes: (value: number) => boolean,
): string | undefined {
  const names = TAKEN_FOR[home];
  if (names === undefined || value === 0) return undefined;
  const own: string = units[home].factor ?? home;
  const shown: string = units[unit].factor ?? unit;
  const orderly = [...new Set([shown, ...names])].filter((name) => names.includes(name));
  const [found] = orderly
    .flatMap((typed) => {
      const figure = typedIn(value, own, typed);
      if (figure === undefined) return [];
      const other = names.find((name) => name !== typed && passes(convert(figure, name, own)));
      return other === undefined ? [] : [{ figure, other }];
    })
    .sort((a, b) => digitsOf(a.figure) - digitsOf(b.figure));
  return found && withName(found.figure, found.other);
}

const withName = (figure: number, name: string): string =>
  name in units ? withUnit(String(figure), name as UnitName) : `${String(figure)} ${name}`;

/** Whether a reading is further from its figure than anything that happens. */
export const isDoubtful = (off: number, tolerance: number, figure: number): boolean =>
  Math.abs(off) > MANY_TOLERANCES * tolerance && Math.abs(off) > LARGE_SHARE * Math.abs(figure);

/** What is said after a correction that is more likely a slip, within its sentence. */
export const doubtWords = (as: string | undefined): string =>
  `, but so far off is more often a slip: before anything is changed read it once more, and see to its unit${as === undefined ? '' : ` (as ${as} it would pass)`}`;
