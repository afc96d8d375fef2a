import { decimalsFor, plainDecimal, toDecimals } from '../../maths/numeric/rounding.ts';
import { displayUnit, toShown, units, type LengthDisplay, type UnitName } from './units.ts';

/** A figure with its unit label: "24.1°", "2.20 mm". */
export function withUnit(figure: string, unit: UnitName): string {
  const { label, spaced } = units[unit];
  if (label === '') return figure;
  return spaced ? `${figure} ${label}` : `${figure}${label}`;
}

/** A sentence on a page, in which no line ends between a length and its unit. */
export const unbroken = (words: string): string =>
  words.replaceAll(/(?<=\d) (?=(?:mm|in|thou)\b)/g, '\u00A0');

/** Fixed decimals with a true minus sign and no "−0". */
export function fixed(value: number, decimals: number): string {
  return toDecimals(value, Math.max(0, Math.min(decimals, 12))).replace('-', '−');
}

/** How many decimals more than usual are told to keep a figure apart from a limit. */
const MOST_APART = 3;

/** Decimals, `decimals` or more, by which a figure beyond a limit does not read as the limit itself. */
export function decimalsApart(value: number, limit: number, decimals: number): number {
  const reads = (places: number): boolean => fixed(value, places) === fixed(limit, places);
  let places = decimals;
  while (places < decimals + MOST_APART && reads(places)) places += 1;
  return value === limit ? decimals : places;
}

/** Fixed decimals, or whole tens, hundreds, … where `places` is negative. */
function toPlaces(value: number, places: number): string {
  if (places >= 0) return fixed(value, places);
  const step = 10 ** -places;
  return fixed(Math.round(value / step) * step, 0);
}

/** Lengths below this are shown in thou where lengths are shown in inches, mm: a tenth of an inch. */
const SMALL = 2.54;
/** Nobody measures finer than a tenth of a thou, so inches are written to four decimals at most. */
const MOST_DECIMALS_OF_INCHES = 4;

/**
 * The unit in which figures are shown that stand together, a column or a figure and its ±. Where
 * lengths are shown in inches, those that are all below a tenth of an inch are in thou, as the trade
 * says them: a gap of 16 thou, a stroke of 2.008 in.
 */
export function shownUnit(
  together: readonly number[],
  home: UnitName,
  lengths: LengthDisplay,
): UnitName {
  const shown = displayUnit(home, lengths);
  if (shown !== 'in') return shown;
  const largest = Math.max(...together.map(Math.abs));
  return largest > 0 && largest < SMALL ? 'thou' : shown;
}

/** Decimals that carry no less after a change of unit: 0.01 mm is 0.0004 in and 0.4 thou. */
function decimalsIn(shown: UnitName, decimals: number): number {
  const finer = Math.ceil(-Math.log10(toShown(1, shown)) - 1e-9);
  const carried = Math.max(0, decimals + finer);
  return shown === 'in' ? Math.min(carried, MOST_DECIMALS_OF_INCHES) : carried;
}

export interface Shown {
  readonly figure: string;
  readonly spread?: string;
  readonly unit: UnitName;
}

export interface Manner {
  /** Whether a plus sign is written before positive values. */
  readonly signed?: boolean;
  /** Whether it is itself a ±, shown as a result: then it has no more digits than any other ±. */
  readonly bare?: boolean;
  /** Whether it is a standard's size: then it has the decimals that the standard gives it. */
  readonly standard?: boolean;
  /** Figures that stand in the same column and share its unit. */
  readonly among?: readonly number[];
}

/**
 * A result as people read it: no more digits than its ± allows, and never more than its own
 * `decimals`. Without a ± the `decimals` stand.
 */
export function showFigure(
  value: number,
  unit: UnitName,
  decimals: number,
  lengths: LengthDisplay,
  spread?: number,
  { signed = false, bare = false, standard = false, among = [] }: Manner = {},
): Shown {
  if (standard) return { figure: inputDigits(value, unit), unit };
  const together = [value, ...among, ...(spread === undefined ? [] : [spread])];
  const inUnit = shownUnit(together, unit, lengths);
  const shown = toShown(value, inUnit);
  const most = decimalsIn(inUnit, decimals);
  const sign = signed && shown > 0 ? '+' : '';
  if (spread === undefined || !(spread > 0)) {
    const places = bare && shown > 0 ? Math.min(most, decimalsFor(shown)) : most;
    return { figure: sign + toPlaces(shown, places), unit: inUnit };
  }
  const shownSpread = toShown(spread, inUnit);
  const places = Math.min(most, decimalsFor(shownSpread));
  const least = 10 ** -places;
  return {
    figure: sign + toPlaces(shown, places),
    spread: toPlaces(Math.max(shownSpread, least), places),
    unit: inUnit,
  };
}

/** One line of text: "24.1° ± 0.3°" as "24.1 ± 0.3°". */
export function shownText({ figure, spread, unit }: Shown): string {
  return withUnit(spread === undefined ? figure : `${figure} ± ${spread}`, unit);
}

/** Digits of an input: as many as any reading or drawing has. */
const INPUT_DIGITS = 5;

/** The place of the last digit of a figure, five digits at most: 2 for 0.25 and −1 for 50. */
function lastPlace(value: number): number {
  const [digits = '', power = '0'] = value.toExponential(INPUT_DIGITS - 1).split('e');
  const behind = digits.replace(/^-?\d\.?/, '').replace(/0+$/, '').length;
  return behind - Number(power);
}

/** How fine a field's figure is known: as its tool reads it, else by its step. */
export const finenessOf = ({ reads, step }: { readonly reads?: number; readonly step: number }) =>
  reads ?? step;

/** Below this a figure in thou keeps its digits: none is measured so fine, and 0.04 looks like inches. */
const LEAST_THOU = 0.1;

/**
 * Decimals with which a figure is turned into `shown`: as fine as its own last digit, or as the last
 * of its field's `step` where that is finer.
 */
function turnedPlaces(value: number, shown: UnitName, step: number | undefined): number {
  const turned = Math.abs(toShown(value, shown));
  const digits = INPUT_DIGITS - 1 - Math.floor(Math.log10(turned));
  if (toShown(1, shown) === 1 || (shown === 'thou' && turned < LEAST_THOU)) return digits;
  const own = Math.max(0, lastPlace(value), step === undefined ? 0 : lastPlace(step));
  const carried = Math.ceil(-Math.log10(toShown(10 ** -own, shown)) - 1e-9);
  return Math.min(digits, Math.max(0, carried));
}

/** Nobody reads a length finer than to so many decimals. */
const FINEST: Partial<Record<UnitName, number>> = { mm: 3, in: MOST_DECIMALS_OF_INCHES };

/** Whether a value has more digits than anybody types in `shown`: then it was turned from another unit. */
export function isTurned(value: number, shown: UnitName): boolean {
  const figure = toShown(value, shown);
  const typed = Number(figure.toFixed(FINEST[shown] ?? 12));
  return Math.abs(Number(typed.toPrecision(INPUT_DIGITS)) - figure) > 1e-9 * Math.abs(figure);
}

/** Decimals of a tenth of a step: as fine as a figure is known that was typed in another unit. */
export const placesOfTenth = (step: number): number =>
  Math.max(0, Math.round(-Math.log10(step / 10)));

/**
 * A figure with as few digits as carry it, five at most, as it may be typed back in `shown`. Turned
 * into another unit it is no finer than it was or than its field's `step` is: 2.31 mm is 90.9 thou.
 * A pressure is typed in psi as often as not, and 1 psi is not known to be 6.8948 kPa.
 */
export function inputDigits(value: number, shown: UnitName, step?: number): string {
  const turned = toShown(value, shown);
  if (shown === 'kPa' && step !== undefined && isTurned(value, shown)) {
    return plainDecimal(Number(turned.toFixed(placesOfTenth(step))));
  }
  const places = turned === 0 ? -1 : turnedPlaces(value, shown, step);
  const digits = places < 0 || places > 12 || toShown(1, shown) === 1;
  return plainDecimal(Number(digits ? turned.toPrecision(INPUT_DIGITS) : turned.toFixed(places)));
}

/**
 * One end of a range in `shown`, as many digits as an input has, rounded into the range (`inward` is
 * 1 at the lower end and −1 at the upper): what is offered may be typed.
 */
export function edgeIn(edge: number, shown: UnitName, inward: 1 | -1, step?: number): number {
  const exact = toShown(edge, shown);
  const nearest = Number(inputDigits(edge, shown, step));
  if (nearest === exact || Math.sign(nearest - exact) === inward) return nearest;
  const last = 10 ** -turnedPlaces(edge, shown, step);
  return Number((nearest + inward * last).toPrecision(INPUT_DIGITS));
}

/** An input's figure with as few digits as carry it: 51, 2.2, 0.0866; in `shown`, with its label. */
export const showIn = (value: number, shown: UnitName, step?: number): string =>
  withUnit(inputDigits(value, shown, step).replace('-', '−'), shown);

/** The same in the unit in which a figure of its size is shown, or of the largest of `among`. */
export const showInput = (
  value: number,
  unit: UnitName,
  lengths: LengthDisplay,
  step?: number,
  among: readonly number[] = [],
): string => showIn(value, shownUnit([value, ...among], unit, lengths), step);

/** A figure with fixed decimals of its home unit, for a sentence that follows the choice of lengths. */
export const showFixed = (
  value: number,
  unit: UnitName,
  decimals: number,
  lengths: LengthDisplay,
  among: readonly number[] = [],
): string => shownText(showFigure(value, unit, decimals, lengths, undefined, { among }));
