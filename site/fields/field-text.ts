import {
  IN_OR_THOU,
  listParts,
  mayBeMore,
  type FieldSpec,
  type FigureField,
  type ListField,
} from '../../calculators/frame/field/fields.ts';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import {
  finenessOf,
  fixed,
  inputDigits,
  showIn,
  shownUnit,
  withUnit,
} from '../../calculators/frame/text/format.ts';
import {
  BETWEEN,
  inOneUnit,
  readingParts,
  withoutEnd,
} from '../../calculators/frame/field/readings.ts';
import { repeatedReadings } from '../../calculators/maths/numeric/repeated-readings.ts';
import { statedAndRead } from '../../calculators/maths/numeric/stated-and-read.ts';
import { decimalsFor } from '../../calculators/maths/numeric/rounding.ts';
import {
  apart,
  IMPLIED,
  numberAndUnit,
  parse,
  withoutMarks,
} from '../../calculators/frame/field/parse.ts';
import { looksLikeSum, sumWithUnit } from '../../calculators/frame/field/sums.ts';
import { isHomeUnit } from '../../calculators/frame/field/typed-units.ts';
import {
  toShown,
  units,
  type LengthDisplay,
  type UnitName,
} from '../../calculators/frame/text/units.ts';

/** One figure's text as it stands in a field that shows it in `shown`. */
function textIn(kept: string, value: number | undefined, spec: FieldSpec, shown: UnitName): string {
  const home = spec.unit;
  // What was typed bare is still bare while its unit is asked for.
  const text = withoutMarks(kept.split(`${IMPLIED}${IN_OR_THOU}`)[0]!);
  const pieces = numberAndUnit(text);
  if (!pieces) {
    const whole = sumWithUnit(text);
    return whole && shown !== home && isHomeUnit(whole.unit, shown) ? whole.sum : text;
  }
  if (isHomeUnit(pieces.unit, home)) {
    if (shown === home) {
      return text === `${pieces.number}${units[home].token}` ? pieces.number : text;
    }
    return value === undefined
      ? apart({ ...pieces, unit: units[home].token })
      : inputDigits(value, shown, finenessOf(spec));
  }
  if (shown !== home && isHomeUnit(pieces.unit, shown)) return pieces.number;
  // “18thou”, as a link has it; but 24°30′ is written together, and what was refused stays as it is.
  const loose = value !== undefined && /^\p{L}/u.test(pieces.unit);
  return loose && text === `${pieces.number}${pieces.unit}` ? apart(pieces) : text;
}

/** More digits than anybody types. */
const MOST_TYPED = 8;
const isLong = (value: number): boolean => Number(value.toPrecision(MOST_TYPED)) !== value;

/**
 * What stands in a field for the text kept in the state. The unit is left out when it is the one
 * printed beside the field; a figure typed in the home unit is turned into that one, to as many
 * digits as an input has; one typed in a unit of its own (18 thou) stays as it was typed.
 */
export function textInField(field: FigureField, lengths: LengthDisplay): string {
  const shown = fieldUnit(field.spec, lengths);
  const several = field.readings && inOneUnit(readingParts(field.text) ?? []);
  if (several) {
    return several
      .map((part, i) => textIn(part, field.readings![i], field.spec, shown))
      .join(`${BETWEEN} `);
  }
  // What the sheet fills in was not typed here: its mm are turned though it is refused.
  const known = field.problem === undefined || field.origin === 'sheet';
  const read = known ? field.value : undefined;
  // So is what a file keeps of a figure that was typed in another unit: 1 psi is 6.8948 kPa to nobody.
  if (field.origin === 'sheet' && read !== undefined && isLong(read)) {
    return inputDigits(read, shown, finenessOf(field.spec));
  }
  const figure = withoutEnd(field.text);
  const end = field.text.slice(figure.length);
  return `${textIn(figure, read, field.spec, shown)}${end}`;
}

/** The same for several figures in one field. */
export function textInList(field: ListField, lengths: LengthDisplay): string {
  const { unit } = field.spec;
  const shown = fieldUnit(field.spec, lengths);
  if (field.problem !== undefined || shown === unit) return withoutMarks(field.text);
  return listParts(field.text)
    .map((part, i) => textIn(part, field.value[i], field.spec, shown))
    .join(' ');
}

/**
 * Whether a text as it stands in a box brings its unit with it, so that the box's own would say
 * another beside it. An exponent is no unit.
 */
export const bringsUnit = (shownText: string): boolean =>
  /[\p{L}°"″'’′”%‰]/u.test(shownText.replace(/\de[+-]?\d/giu, ''));

/** A text that is longer than this is set smaller, so that a phone's box holds it. */
const LONG = 6;
export const isLongWithUnit = (shownText: string): boolean =>
  bringsUnit(shownText) && shownText.length > LONG;

/** The classes of the box round a figure. */
export function boxClass(shownText: string): string {
  if (shownText === '') return 'field-box field-empty';
  if (isLongWithUnit(shownText)) return 'field-box field-long';
  return shownText.length > LONG ? 'field-box field-full' : 'field-box';
}

/** Whether a bare figure in a field of thou looks like one in inches: 0.014 for 14 thou. */
const isDoubtful = (number: string, spec: FieldSpec, shown: UnitName): boolean =>
  shown === 'thou' && !spec.isError && /^[+−-]?0?[.,]0\d{1,3}$/.test(number);

/** The terms of a sum that bring no unit of their own. */
const bareTerms = (sum: string): string[] =>
  sum.match(/[\d.,]+(?![\d.,]|\s*[\p{L}°"″'′’”%‰])/gu) ?? [];

/** Whether a text is one figure, such as 3/32 in, though it has a sign within. */
const isFigure = (text: string, { unit }: FieldSpec): boolean => parse(text, unit).kind === 'value';

/** What the state keeps for a typed text: a bare number means the unit printed beside the field. */
export function textToKeep(
  typed: string,
  { spec }: Pick<FigureField, 'spec'>,
  lengths: LengthDisplay,
): string {
  const shown = fieldUnit(spec, lengths);
  if (shown === spec.unit) return typed;
  const figure = withoutEnd(typed);
  if (figure !== typed) {
    return `${textToKeep(figure, { spec }, lengths)}${typed.slice(figure.length)}`;
  }
  const several = readingParts(typed);
  if (several) {
    const parts = inOneUnit(several);
    return parts
      ? parts.map((part) => textToKeep(part, { spec }, lengths)).join(`${BETWEEN} `)
      : typed;
  }
  const pieces = numberAndUnit(typed);
  if (pieces?.unit !== '') {
    if (!looksLikeSum(typed) || isFigure(typed, spec) || sumWithUnit(typed)) return typed;
    const doubtful = bareTerms(typed).some((term) => isDoubtful(term, spec, shown));
    return `(${typed})${IMPLIED}${doubtful ? IN_OR_THOU : units[shown].token}`;
  }
  return isDoubtful(pieces.number, spec, shown)
    ? `${pieces.number}${IMPLIED}${IN_OR_THOU}`
    : `${pieces.number}${IMPLIED}${units[shown].token}`;
}

/** The same for several figures in one field, where any of them is typed bare. */
export function listToKeep(typed: string, field: ListField, lengths: LengthDisplay): string {
  if (fieldUnit(field.spec, lengths) === field.spec.unit) return typed;
  const parts = listParts(typed);
  const bare = parts.some((part) => numberAndUnit(part)?.unit === '');
  return bare ? parts.map((part) => textToKeep(part, field, lengths)).join(' ') : typed;
}

/**
 * How a text with a unit, a comma or a fraction was read: “= 2.21 mm”; or that the example's figure
 * is not what it was.
 */
export function readAs(field: FigureField, lengths: LengthDisplay): string | undefined {
  if (field.problem !== undefined || field.value === undefined) return undefined;
  if (field.gaveWay) return 'Moved, so that the example goes with the figures given.';
  if (field.readings) return readAsMean(field.readings, field.stated ?? 0, field.spec, lengths);
  const { unit } = field.spec;
  const pieces = numberAndUnit(field.text);
  if (!pieces) return `= ${showIn(field.value, unit)}`;
  if (field.given && mayBeMore(field.text, field.spec, { lengths })) {
    return `= ${showIn(field.value, unit)}: the mark is read as the decimal one, not as one between thousands.`;
  }
  const isTurned = field.value !== Number(pieces.number.replace(',', '.'));
  if (units[unit].quantity === 'ratio' && isTurned && /^(?:\s*:|\s*to)\s*\d/iu.test(pieces.unit)) {
    return `= ${showIn(field.value, unit)}: read the other way round.`;
  }
  const shown = fieldUnit(field.spec, lengths);
  const home = isHomeUnit(pieces.unit, unit);
  if (shown !== unit) {
    // Nothing is nothing in any length.
    if (field.value === 0) return undefined;
    const asShown = home || isHomeUnit(pieces.unit, shown);
    return `= ${showIn(field.value, asShown ? unit : shown, finenessOf(field.spec))}`;
  }
  return home && !/[,/⁄¼-¾⅐-⅞]/u.test(field.text) ? undefined : `= ${showIn(field.value, unit)}`;
}

/** What several readings say together: their mean, their range, and how sure it is. */
function readAsMean(
  readings: readonly number[],
  stated: number,
  { unit, errorIn }: FieldSpec,
  lengths: LengthDisplay,
): string {
  const { count, mean, lowest, highest, standardError, ofMean, ofOne } = repeatedReadings(readings);
  if (!(ofMean > 0)) {
    return `Mean of ${count} readings, all alike: ${showIn(mean, shownUnit([mean], unit, lengths))}. No spread is added to the ± of the instrument.`;
  }
  const shown = shownUnit([mean, highest], unit, lengths);
  const plus = (of: number): string => showSpread(of, shown);
  const { plusMinus, verdict } = statedAndRead(stated, readings);
  const one = (): string => `the ± given for one, ± ${plus(stated)}`;
  const sure = (): string => {
    if (stated === 0) {
      return `Standard error ${plus(standardError)}: by Student’s t good to ± ${plus(ofMean)}, where one reading alone would be ± ${plus(ofOne)}.`;
    }
    if (verdict === 'borne-out') {
      return `They agree with ${one()}, which stays: what is wrong with all of them alike no number of readings shows.`;
    }
    // What is the ± of others too is for the reader to change.
    if (errorIn !== undefined)
      return `They scatter more than ${one()}: type ${plus(plusMinus)} there.`;
    const by = verdict === 'wider' ? 'a little' : 'far';
    const more = `They scatter ${by} more than readings to ± ${plus(stated)} do, of which most lie within half of it:`;
    if (plus(plusMinus) === plus(stated)) {
      return `${more} as the mean of ${count} it is good to ± ${plus(plusMinus)} all the same.`;
    }
    return verdict === 'wider'
      ? `${more} both together make it ± ${plus(plusMinus)}.`
      : `${more} the scatter tells, by Student’s t ± ${plus(plusMinus)}.`;
  };
  const digits = decimalsFor(toShown(stated === 0 ? ofMean : plusMinus, shown));
  const middle = withUnit(fixed(toShown(mean, shown), Math.max(0, digits)), shown);
  return `Mean of ${count} readings: ${middle}, from ${inputDigits(lowest, shown).replace('-', '−')} to ${showIn(highest, shown)}. ${sure()}`;
}

/** A ± with no more digits than any has. */
const showSpread = (value: number, shown: UnitName): string =>
  withUnit(fixed(toShown(value, shown), decimalsFor(toShown(value, shown))), shown);
