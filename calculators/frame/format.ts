import { decimalsFor } from '../maths/rounding.ts';
import { displayUnit, toDisplay, units, type LengthDisplay, type UnitName } from './units.ts';

/** A figure with its unit label: "24.1°", "2.20 mm". */
export function withUnit(figure: string, unit: UnitName): string {
  const { label, spaced } = units[unit];
  if (label === '') return figure;
  return spaced ? `${figure} ${label}` : `${figure}${label}`;
}

/** Fixed decimals with a true minus sign and no "−0". */
export function fixed(value: number, decimals: number): string {
  const text = value.toFixed(Math.max(0, Math.min(decimals, 12)));
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
}

/** Fixed decimals, or whole tens, hundreds, … where `places` is negative. */
function toPlaces(value: number, places: number): string {
  if (places >= 0) return fixed(value, places);
  const step = 10 ** -places;
  return fixed(Math.round(value / step) * step, 0);
}

/** Decimals that carry the same information after a change of unit: 0.01 mm is 0.0004 in. */
function decimalsInDisplay(decimals: number, unit: UnitName, lengths: LengthDisplay): number {
  const scale = toDisplay(1, unit, lengths);
  return Math.max(0, decimals + Math.round(-Math.log10(scale)));
}

export interface Shown {
  readonly figure: string;
  readonly spread?: string;
  readonly unit: UnitName;
}

/**
 * A result as people read it: no more digits than its ± allows, and never more than its own
 * `decimals`. Without a ± the `decimals` stand, unless the figure is `bare`, itself a ± shown as a
 * result: of that no more digits are kept than of any other ±.
 */
export function showFigure(
  value: number,
  unit: UnitName,
  decimals: number,
  lengths: LengthDisplay,
  spread?: number,
  { signed = false, bare = false }: { signed?: boolean; bare?: boolean } = {},
): Shown {
  const shownUnit = displayUnit(unit, lengths);
  const shown = toDisplay(value, unit, lengths);
  const most = decimalsInDisplay(decimals, unit, lengths);
  const sign = signed && shown > 0 ? '+' : '';
  if (spread === undefined || !(spread > 0)) {
    const places = bare && shown > 0 ? Math.min(most, decimalsFor(shown)) : most;
    return { figure: sign + toPlaces(shown, places), unit: shownUnit };
  }
  const shownSpread = toDisplay(spread, unit, lengths);
  const places = Math.min(most, decimalsFor(shownSpread));
  const least = 10 ** -places;
  return {
    figure: sign + toPlaces(shown, places),
    spread: toPlaces(Math.max(shownSpread, least), places),
    unit: shownUnit,
  };
}

/** One line of text: "24.1° ± 0.3°" as "24.1 ± 0.3°". */
export function shownText({ figure, spread, unit }: Shown): string {
  return withUnit(spread === undefined ? figure : `${figure} ± ${spread}`, unit);
}

/** An input's figure with as few digits as carry it: 51, 2.2, 0.0866. */
export function showInput(value: number, unit: UnitName, lengths: LengthDisplay): string {
  const shown = toDisplay(value, unit, lengths);
  const figure = Number(shown.toPrecision(5)).toString();
  return withUnit(figure.replace('-', '−'), displayUnit(unit, lengths));
}
