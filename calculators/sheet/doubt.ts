import { withUnit } from '../frame/text/format.ts';
import { TAKEN_FOR } from '../frame/field/other-unit.ts';
import { convert } from '../maths/units/units.ts';
import { units, type UnitName } from '../frame/text/units.ts';

/** Beyond so many tolerances, and beyond the figure's own half, a reading is more likely a slip. */
const MANY_TOLERANCES = 10;
const LARGE_SHARE = 0.5;

/** Digits of a figure that somebody typed. */
const TYPED_DIGITS = 4;
/** The finest parts into which an inch is divided by halves, on rules and drills. */
const PARTS_OF_INCH = 64;

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= Math.abs(a) * 1e-9;

/** The figure that was typed, if in this unit it has few digits or is a fraction as of an inch. */
function typedIn(value: number, home: string, unit: string): number | undefined {
  const figure = convert(value, home, unit);
  const short = Number(figure.toPrecision(TYPED_DIGITS));
  const parts = Math.round(figure * PARTS_OF_INCH) / PARTS_OF_INCH;
  return [short, parts].find((typed) => isNear(figure, typed));
}

/** A figure as it was typed: one of many digits as a fraction, 0.015625 as 1/64. */
function asTyped(figure: number): string {
  if (isNear(figure, Number(figure.toPrecision(TYPED_DIGITS)))) return String(figure);
  let parts = PARTS_OF_INCH;
  while (Number.isInteger((figure * parts) / 2)) parts /= 2;
  return `${String(figure * parts)}/${String(parts)}`;
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
  const names: readonly string[] | undefined = TAKEN_FOR[home];
  if (names === undefined || value === 0) return undefined;
  const own: string = units[home].factor ?? home;
  const shown: string = units[unit].factor ?? unit;
  const orderly = [...new Set([shown, ...names])].filter((name) => names.includes(name));
  const typed = orderly.flatMap((name) => {
    const figure = typedIn(value, own, name);
    return figure === undefined ? [] : [{ figure, name }];
  });
  const least = Math.min(...typed.map(({ figure }) => digitsOf(figure)));
  const [found] = typed.flatMap(({ figure, name }) => {
    if (digitsOf(figure) > least) return [];
    const other = names.find((each) => each !== name && passes(convert(figure, each, own)));
    return other === undefined ? [] : [withName(figure, other)];
  });
  return found;
}

/** With its unit: millimetres are spelled, for a sentence's others are turned into the reader's own unit. */
function withName(figure: number, name: string): string {
  const typed = asTyped(figure);
  if (name === 'mm') return `${typed} millimetres`;
  return name in units ? withUnit(typed, name as UnitName) : `${typed} ${name}`;
}

/**
 * Whether a reading is further from its figure than anything that happens, or so far from it that it
 * would pass `as` the same digits in another unit.
 */
export const isDoubtful = (
  off: number,
  tolerance: number,
  figure: number,
  as: string | undefined,
): boolean =>
  Math.abs(off) > LARGE_SHARE * Math.abs(figure) &&
  (as !== undefined || Math.abs(off) > MANY_TOLERANCES * tolerance);

/** What is said after a correction that is more likely a slip, within its sentence. */
export const doubtWords = (as: string | undefined): string =>
  `, but so far off is more often a slip: before anything is changed read it once more, and see to its unit${as === undefined ? '' : ` (as ${as} it would pass)`}`;
