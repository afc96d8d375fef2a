import {
  converterName,
  plainNames,
  quantityWords,
  typedUnits,
  units,
  type UnitName,
} from './units.ts';

/** What turns typed units and fractions into home units. Loaded only when one is typed. */
export interface Converter {
  readonly convert: (value: number, from: string, to: string) => number;
  readonly fraction: (numerator: string, denominator: string) => number;
}

export type Parsed =
  | { readonly kind: 'value'; readonly value: number }
  /** The converter is needed and not there yet. */
  | { readonly kind: 'pending' }
  | { readonly kind: 'bad'; readonly sentence: string };

const NUMBER = /^([+\-−]?)\s*(\d+(?:[.,]\d*)?|[.,]\d+)(e[+-]?\d+)?\s*(.*)$/iu;
const FRACTION = /^([+\-−]?)\s*(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+)\s*(.*)$/u;
const LONGEST_QUOTE = 40;
/** Beyond any figure of any quantity, and far enough from overflow to be reckoned with. */
const LARGEST = 1e100;

export const quote = (text: string): string =>
  `“${text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE).replace(/\p{Surrogate}$/u, '')}…` : text}”`;

interface Pieces {
  readonly sign: 1 | -1;
  readonly whole: string;
  readonly over?: readonly [numerator: string, denominator: string];
  readonly unit: string;
}

function split(text: string): Pieces | undefined {
  const fraction = FRACTION.exec(text);
  if (fraction) {
    const [, sign, whole, numerator, denominator, unit] = fraction;
    return {
      sign: sign === '' || sign === '+' ? 1 : -1,
      whole: whole ?? '0',
      over: [numerator!, denominator!],
      unit: unit!.trim(),
    };
  }
  const plain = NUMBER.exec(text);
  if (!plain) return undefined;
  const [, sign, digits, exponent, unit] = plain;
  return {
    sign: sign === '' || sign === '+' ? 1 : -1,
    whole: digits!.replace(',', '.') + (exponent ?? ''),
    unit: unit!.trim(),
  };
}

/** Splits typed text into its number and its unit, or nothing when it does not start as a number. */
export function numberAndUnit(text: string): { number: string; unit: string } | undefined {
  const trimmed = text.trim();
  const pieces = split(trimmed);
  if (!pieces) return undefined;
  const end = trimmed.length - pieces.unit.length;
  return { number: trimmed.slice(0, end).trim(), unit: pieces.unit };
}

/** Whether a typed unit is the home unit itself, so that nothing needs converting. */
export function isHomeUnit(typed: string, home: UnitName): boolean {
  const spec = units[home];
  const lower = typed.toLowerCase();
  if (lower === '' || lower === spec.token.toLowerCase() || typed === spec.label) return true;
  if (plainNames[spec.quantity]?.includes(lower)) return true;
  const known = typedUnits[spec.quantity];
  return known !== undefined && known[lower] === converterName(home);
}

/**
 * Reads what a person typed as a figure in `home`. Accepts a decimal point or comma, a unit of the
 * same quantity, and (with the converter) fractions such as `3/32 in` or `1 1/4 in`.
 */
export function parse(text: string, home: UnitName, converter?: Converter): Parsed {
  const { quantity } = units[home];
  const words = quantityWords[quantity];
  const unreadable: Parsed = {
    kind: 'bad',
    sentence: `${quote(text)} cannot be read as ${words.noun}. Type a figure such as ${words.like}.`,
  };
  const figure = (value: number): Parsed =>
    Math.abs(value) <= LARGEST
      ? { kind: 'value', value }
      : {
          kind: 'bad',
          sentence: `${quote(text)} is larger than any ${words.noun.replace(/^an? /, '')} there is. Type a figure such as ${words.like}.`,
        };
  const pieces = split(text.trim());
  if (!pieces) return unreadable;

  let magnitude = Number(pieces.whole);
  if (pieces.over) {
    if (Number(pieces.over[1]) === 0) {
      return { kind: 'bad', sentence: `${quote(text)} divides by zero. Check the fraction.` };
    }
    if (!converter) return { kind: 'pending' };
    magnitude += converter.fraction(...pieces.over);
  }
  const value = pieces.sign * magnitude;
  if (isHomeUnit(pieces.unit, home)) return figure(value);

  const known = typedUnits[quantity]?.[pieces.unit.toLowerCase()];
  if (known === undefined || !Object.hasOwn(typedUnits[quantity]!, pieces.unit.toLowerCase())) {
    if (!/^[\p{L}\p{M}µμ°"″'%²³/. ]{1,12}$/u.test(pieces.unit)) return unreadable;
    return {
      kind: 'bad',
      sentence: `${quote(pieces.unit)} is not a unit this field knows. Type ${words.noun} such as ${words.like}.`,
    };
  }
  if (!converter) return { kind: 'pending' };
  return figure(converter.convert(value, known, converterName(home)));
}
