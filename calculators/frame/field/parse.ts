import { convert, type Unit } from '../../maths/units/units.ts';
import { exampleWords } from './examples.ts';
import { looksLikeSum, type Sums } from './sums.ts';
import { unitTyped } from './typed-units.ts';
import { quantityNouns, units, type Quantity, type UnitName } from '../text/units.ts';

export type Parsed =
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'bad'; readonly sentence: string };

const NUMBER = /^([+\-−]?)\s*(\d+(?:[.,]\d*)?|[.,]\d+)(e[+-]?\d+)?\s*(.*)$/iu;
const FRACTION = /^([+\-−]?)\s*(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+)\s*(.*)$/u;
const DEGREES_AND_MINUTES =
  /^([+\-−]?)\s*(\d+)\s*(?:°|deg)\s*(\d+(?:[.,]\d*)?)\s*(?:['’′]|arcmin|min)$/iu;
/** The single characters for halves, quarters and the like that a telephone offers. */
const SINGLE_FRACTION = /[¼-¾⅐-⅞]/gu;
/** A length in feet and inches: 4 ft 6 in, 5′ 3 1/2″. */
const FEET_AND_INCHES =
  /^([+\-−]?)\s*(\d+)\s*(?:ft|foot|feet|['’′])\.?\s*((?:\d+[\s-]+)?\d+\s*[/⁄]\s*\d+|\d+(?:[.,]\d*)?)\s*(?:in|inch|inches|["″”]|'')\.?$/iu;
/** A ratio the other way round, oil first: 1:25 is 25 to 1. */
const ONE_TO = /^1\s*(?::|to)\s*(\d+(?:[.,]\d*)?)$/iu;
const MINUTES_IN_A_DEGREE = 60;
const INCHES_IN_A_FOOT = 12;
const LONGEST_QUOTE = 40;
/** Beyond any figure of any quantity, and far enough from overflow to be reckoned with. */
const LARGEST = 1e100;

/**
 * Stands in a kept text between a figure that was typed bare and the unit that it was read in (a word
 * joiner, which nobody sees): what is quoted to the reader is what the reader typed.
 */
export const IMPLIED = '\u2060';
/** Ends the text of an address that was copied from where it was shown short. */
export const CUT_OFF = '…';

/** A kept text as it is shown and written in an address. */
export const withoutMarks = (text: string): string => text.replaceAll(IMPLIED, '');

/** A kept text as it was typed: a sum is kept within brackets that nobody typed. */
export function asTyped(kept: string): string {
  const [typed = '', implied] = kept.split(IMPLIED);
  return implied === undefined ? typed : typed.replace(/^\((.*)\)$/u, '$1');
}

export const quote = (kept: string): string => quoted(asTyped(kept));

const quoted = (text: string): string =>
  `“${text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE).replace(/\p{Surrogate}$/u, '')}…` : text}”`;

/** What is said of a sum that nothing reads yet. */
const WAITING: Readonly<Record<Extract<Sums, string>, (text: string) => string>> = {
  coming: (text) => `${quote(text)} is being worked out: the part that reads sums is on its way.`,
  failed: (text) =>
    `${quote(text)} was not worked out, since the part that reads sums did not come. Check the connection and type it again, or type what it comes to.`,
};

interface Pieces {
  readonly sign: 1 | -1;
  /** What the number comes to without its sign; not finite where a fraction divides by zero. */
  readonly magnitude: number;
  readonly unit: string;
}

const signOf = (sign: string | undefined): 1 | -1 => (sign === '' || sign === '+' ? 1 : -1);
const decimal = (digits: string): number => Number(digits.replace(',', '.'));

/** A text with such a character written out, ` 1/2` for ½. */
export const writtenOut = (text: string): string =>
  text.replaceAll(SINGLE_FRACTION, (one) => ` ${one.normalize('NFKC')}`).trim();

function split(text: string): Pieces | undefined {
  const written = writtenOut(text);
  const fraction = FRACTION.exec(written);
  if (fraction) {
    const [, sign, whole, numerator, denominator, unit] = fraction;
    const parts = Number(whole ?? 0) * Number(denominator) + Number(numerator);
    return { sign: signOf(sign), magnitude: parts / Number(denominator), unit: unit!.trim() };
  }
  const plain = NUMBER.exec(written);
  if (!plain) return undefined;
  const [, sign, digits, exponent, unit] = plain;
  const magnitude = decimal(digits! + (exponent ?? ''));
  return { sign: signOf(sign), magnitude, unit: unit!.trim() };
}

/** Figure and unit as typed together, apart by a space: “18 thou”. */
export const apart = ({ number, unit }: { number: string; unit: string }): string =>
  unit === '' ? number : `${number} ${unit}`;

/** Splits typed text into its number and its unit, or nothing when it does not start as a number. */
export function numberAndUnit(text: string): { number: string; unit: string } | undefined {
  const trimmed = withoutMarks(text).trim();
  const pieces = split(trimmed);
  if (!pieces) return undefined;
  const end = trimmed.length - pieces.unit.length;
  return { number: trimmed.slice(0, end).trim(), unit: pieces.unit };
}

/** Where a piston's place is carried from a length to an angle and back. */
const PLACE =
  'A place of the piston is turned from degrees into a length, or back, by the calculator Piston position.';

/** What a unit of a length or an angle measures, where the other of the two is asked for. */
function elsewhere(unit: string, quantity: Quantity): string | undefined {
  const other = quantity === 'length' ? 'angle' : 'length';
  if (quantity !== 'length' && quantity !== 'angle') return undefined;
  // The mark of feet is that of minutes too.
  if (quantity === 'angle' && /^['’′]$/u.test(unit)) return undefined;
  return unitTyped(unit, other).kind === 'unit' ? quantityNouns[other] : undefined;
}

/** An angle in degrees and minutes: 24°30′. */
function degreesAndMinutes(text: string): Parsed | undefined {
  const read = DEGREES_AND_MINUTES.exec(text);
  if (!read) return undefined;
  const [, sign, degrees, minutes] = read;
  if (decimal(minutes!) >= MINUTES_IN_A_DEGREE) {
    return {
      kind: 'bad',
      sentence: `${quote(text)} has more than 59 minutes to the degree. Type the angle in degrees alone, or with minutes below 60, such as 24°30′.`,
    };
  }
  const value = Number(degrees) + decimal(minutes!) / MINUTES_IN_A_DEGREE;
  return { kind: 'value', value: signOf(sign) * value };
}

/** A length in feet and inches: 4 ft 6 in. */
function feetAndInches(text: string, home: UnitName): Parsed | undefined {
  const read = FEET_AND_INCHES.exec(text);
  if (!read) return undefined;
  const [, sign, feet, typed] = read;
  const { magnitude } = split(typed!)!;
  if (!Number.isFinite(magnitude)) {
    return { kind: 'bad', sentence: `${quote(text)} divides by zero. Check the fraction.` };
  }
  if (magnitude >= INCHES_IN_A_FOOT) {
    return {
      kind: 'bad',
      sentence: `${quote(text)} has more than 11 inches to the foot. Type it in inches alone, or with inches below 12, such as 4 ft 6 in.`,
    };
  }
  const inches = INCHES_IN_A_FOOT * Number(feet) + magnitude;
  return { kind: 'value', value: convert(signOf(sign) * inches, 'in', units[home].factor ?? 'in') };
}

/** What is said of threads to the inch where a length is asked for: 26 tpi is a pitch of 0.9769 mm. */
function threadsToAnInch(value: number, unit: string, text: string): Parsed | undefined {
  if (!/^t\.?p\.?i\.?$/iu.test(unit) || !(value > 0)) return undefined;
  const pitch = (unit: Unit): string =>
    `${String(Number(convert(1 / value, 'in', unit).toPrecision(4)))} ${unit}`;
  return {
    kind: 'bad',
    sentence: `${quote(text)} counts the threads to an inch, and this field takes the length of one: type “${pitch('mm')}” or “${pitch('in')}”.`,
  };
}

/** No engine is run on more oil: a part of it to so many of petrol. */
const LEAST_RATIO = 5;

/** What is said of a share where a ratio is asked for: 4% of the petrol is 25 : 1. */
function shareForRatio(value: number, unit: string, text: string): Parsed | undefined {
  const typed = unitTyped(unit, 'share');
  if (typed.kind !== 'unit' || !(value > 0)) return undefined;
  const percent = convert(value, typed.unit, '%');
  const ratio = Number((100 / percent).toPrecision(4));
  const remedy =
    ratio < LEAST_RATIO
      ? 'more oil than any engine is run on'
      : `so type “${String(ratio)}”, or choose per cent where a field above offers it`;
  return {
    kind: 'bad',
    sentence: `${quote(text)} is a share of the petrol, and this field takes parts of petrol to one of oil. That share is ${String(ratio)} : 1, ${remedy}.`,
  };
}

/**
 * Reads what a person typed as a figure in `home`. Accepts a decimal point or comma, a unit of the
 * same quantity, fractions such as `3/32 in` or `1 1/4 in`, an angle as `24°30′`, and sums of these
 * where they are offered.
 *
 * @param like Says what may be typed instead, where it cannot be read.
 * @param sums Reads a text that is no figure but looks like a sum.
 */
export function parse(
  text: string,
  home: UnitName,
  like: () => string = () => exampleWords({ unit: home, min: 0, max: 100 }, 'mm'),
  sums?: Sums,
): Parsed {
  const { quantity, factor } = units[home];
  const noun = quantityNouns[quantity];
  const bad = (what: string): Parsed => ({
    kind: 'bad',
    sentence: `${what} Type a figure such as ${like()}.`,
  });
  const figure = (value: number): Parsed =>
    Math.abs(value) <= LARGEST
      ? { kind: 'value', value }
      : bad(`${quote(text)} is larger than any ${noun.replace(/^an? /, '')} there is.`);
  const trimmed = withoutMarks(text).trim();
  const unreadable = (): Parsed => {
    if (trimmed.endsWith(CUT_OFF)) {
      return bad(
        `${quote(text)} is cut off, as a long link is where it is shown short: open the link itself.`,
      );
    }
    if (sums === undefined || !looksLikeSum(trimmed)) {
      return bad(`${quote(text)} cannot be read as ${noun}.`);
    }
    if (typeof sums === 'string') return { kind: 'bad', sentence: WAITING[sums](text) };
    const total = sums(text.trim(), home, like);
    return total.kind === 'value' ? figure(total.value) : total;
  };
  const angle = quantity === 'angle' ? degreesAndMinutes(trimmed) : undefined;
  if (angle) return angle;
  const feet = quantity === 'length' ? feetAndInches(trimmed, home) : undefined;
  if (feet) return feet.kind === 'value' ? figure(feet.value) : feet;
  const turned = quantity === 'ratio' ? ONE_TO.exec(trimmed) : null;
  if (turned) return figure(decimal(turned[1]!));
  const pieces = split(trimmed);
  if (!pieces) return unreadable();
  if (/[/⁄]\s*0+(?!\d)/u.test(trimmed) && !Number.isFinite(pieces.magnitude)) {
    return { kind: 'bad', sentence: `${quote(text)} divides by zero. Check the fraction.` };
  }
  const value = pieces.sign * pieces.magnitude;
  if (pieces.unit === '') return figure(value);

  const typed = unitTyped(pieces.unit, quantity);
  if (typed.kind === 'unit') return figure(convert(value, typed.unit, factor ?? typed.unit));
  if (typed.kind === 'refused') return { kind: 'bad', sentence: typed.sentence };
  const share = quantity === 'ratio' ? shareForRatio(value, pieces.unit, text) : undefined;
  if (share) return share;
  const threads = quantity === 'length' ? threadsToAnInch(value, pieces.unit, text) : undefined;
  if (threads) return threads;
  const other = elsewhere(pieces.unit, quantity);
  if (other !== undefined) {
    return {
      kind: 'bad',
      sentence: `${quote(text)} is ${other}, and this field takes ${noun}. ${PLACE}`,
    };
  }
  return /^[\p{L}\p{M}µμ°"″'%²³/. ]{1,12}$/u.test(pieces.unit) &&
    !(sums !== undefined && looksLikeSum(trimmed))
    ? bad(`${quote(pieces.unit)} is not a unit this field knows.`)
    : unreadable();
}
