import { exampleWords } from './examples.ts';
import { fieldUnit } from './field-unit.ts';
import { edgeIn, withUnit } from '../text/format.ts';
import { asStamped, bareFraction, doubtOf, readIn, timesApart } from './other-unit.ts';
import { asTyped, IMPLIED, numberAndUnit, parse, quote } from './parse.ts';
import { proseIn } from '../text/prose.ts';
import { capital } from '../../maths/numeric/capital.ts';
import type { Sums } from './sums.ts';
import { asDecimals, asThousands, mayBeThousands } from './thousands.ts';
import { asRange, rangeTyped, slashed } from './two-figures.ts';
import { inOneUnit, readingParts, withoutEnd } from './readings.ts';
import { MOST_READINGS, repeatedReadings } from '../../maths/numeric/repeated-readings.ts';
import type { AnyValue, ChoiceInput, NumberInput, Origin } from '../types.ts';
import { quantityNouns, units, type LengthDisplay } from '../text/units.ts';

/** What one field needs of an input: the same for single, optional, series and ± fields. */
export type FieldSpec = Pick<
  NumberInput,
  | 'label'
  | 'help'
  | 'measure'
  | 'group'
  | 'unit'
  | 'min'
  | 'max'
  | 'why'
  | 'whole'
  | 'stamped'
  | 'alike'
  | 'otherwise'
  | 'step'
  | 'reads'
  | 'assumed'
  | 'judgesBy'
  | 'error'
  | 'errorIn'
  | 'usual'
> & {
  readonly optional?: boolean;
  readonly list?: number;
  /** Set where it is a firing order. */
  readonly order?: {
    readonly cylinders: number;
    /** Sets of points that fire them, where there are fewer than cylinders. */
    readonly sets?: number | undefined;
    readonly read: OrderReader;
  };
  /** Whether it is the ± of another field. */
  readonly isError?: boolean;
  /** The row it stands in with others, and its own heading there. */
  readonly inRow?: { readonly of: string; readonly index: number; readonly heading: string };
};

/** Makes a firing order of a text, or says what is wrong with it. A field brings it: few have one. */
export type OrderReader = (
  typed: string,
  cylinders: number,
  sets?: number,
) => { readonly order: readonly number[] } | { readonly problem: string };

interface FieldBase {
  readonly key: string;
  /** As typed or as found in the address; the default's text when neither. */
  readonly text: string;
  readonly given: boolean;
  /** Whose figure its value is. */
  readonly origin: Origin;
  /** The text could not be read, and the last good value still stands. */
  readonly heldOver: boolean;
  /** The text could not be read, and no good value came before it, or none that still counts: nothing stands on this field. */
  readonly unread: boolean;
  /** Its value is the last good one, which the address keeps. */
  readonly kept: boolean;
  readonly problem?: string;
}

/** The value that a field last held, and whose it was. */
export interface Held {
  readonly value: AnyValue;
  readonly origin: Origin;
  /** Set once the box was left with a text that cannot be read: nothing rests on the value any more. */
  readonly left?: true;
}

export interface FigureField extends FieldBase {
  readonly kind: 'figure';
  readonly spec: FieldSpec;
  readonly value: number | undefined;
  /** Whether a figure of the example was moved, so as not to make a given one impossible. */
  readonly gaveWay?: true;
  /** The readings whose mean the value is, in the home unit, where several were given. */
  readonly readings?: readonly number[];
  /** The ± stated for one of them, in the home unit. */
  readonly stated?: number;
  /** What speaks against a figure that is taken: it would pass in another unit. */
  readonly doubt?: string;
}

export interface ListField extends FieldBase {
  readonly kind: 'list';
  readonly spec: FieldSpec;
  readonly value: readonly number[];
}

export interface ChoiceField extends FieldBase {
  readonly kind: 'choice';
  readonly label: string;
  readonly help: string;
  readonly measure?: string;
  readonly group?: string;
  readonly options: Readonly<Record<string, string>>;
  readonly value: string;
  readonly assumed?: true;
}

export type Field = FigureField | ListField | ChoiceField;

/** A number as written in an address and in an untouched field. */
export const plainText = (value: number): string => String(value);

/** The range of a field in words, in the reader's units. */
export function rangeWords(spec: FieldSpec, lengths: LengthDisplay): string {
  const shown = fieldUnit(spec, lengths);
  const words = (figure: number): string => withUnit(plainText(figure).replace('-', '−'), shown);
  return `from ${words(edgeIn(spec.min, shown, 1, spec.step))} to ${words(edgeIn(spec.max, shown, -1, spec.step))}`;
}

function rangeProblem(
  spec: FieldSpec,
  value: number,
  typed: string,
  lengths: LengthDisplay,
): string | undefined {
  if (value >= spec.min && value <= spec.max) {
    if (spec.whole && !Number.isInteger(value)) {
      return `${capital(spec.label)} must be a whole number. ${quote(typed)} is not: type a figure such as ${Math.round(value)}.`;
    }
    return undefined;
  }
  // What is typed without a unit is kept with the one that was shown: such a figure came in a link.
  const linked = fieldUnit(spec, lengths) !== spec.unit && numberAndUnit(typed)?.unit === '';
  const as = linked ? ` (in ${units[spec.unit].label}, as a link’s figure without a unit is)` : '';
  return `${capital(spec.label)} must be ${rangeWords(spec, lengths)}: ${proseIn(spec.why, lengths)}. ${quote(typed)}${as} is outside that; check the figure and its unit.`;
}

/** The longest text that is read: more than any figure or list of them needs. */
export const LONGEST = 1000;

/** A text of no more than so many units, cut between letters and never within one. */
export function cutText(text: string, most: number): string {
  const cut = text.slice(0, most);
  return /[\uD800-\uDBFF]$/.test(cut) ? cut.slice(0, -1) : cut;
}

const tooLong = (label: string): string =>
  `${capital(label)} holds more than ${LONGEST} letters, which is no figure. Type it anew.`;

export interface Reading {
  readonly lengths: LengthDisplay;
  /** Reads sums, where they may be typed. */
  readonly sums?: Sums | undefined;
}

/** Reading what somebody typed, who can be asked what was meant; a link cannot, and means the same for ever. */
interface Hearing extends Reading {
  readonly byHand: boolean;
  /** About what is read there, where that is known. */
  readonly usual?: number | undefined;
}

/** A text as given, whose it is, and what its field held before. */
export interface Given {
  readonly text: string | undefined;
  readonly origin: Origin;
  readonly held: Held | undefined;
}

type Read<T> =
  | {
      readonly kind: 'value';
      readonly value: T;
      readonly problem?: string;
      readonly readings?: readonly number[];
      readonly doubt?: string;
    }
  | { readonly kind: 'bad'; readonly sentence: string };

const bad = (sentence: string): Read<never> => ({ kind: 'bad', sentence });

/** Whether what stands in a field cannot be read: something else is shown for it, or nothing. */
export const isUnreadable = ({ heldOver, unread }: FieldBase): boolean => heldOver || unread;

/** What every kind of field makes of its text: an unreadable one leaves what was held before. */
export function stand<T>(
  { text, origin, held }: Given,
  fallback: T,
  fallbackText: string,
  read: (text: string) => Read<T>,
): {
  text: string;
  given: boolean;
  origin: Origin;
  value: T;
  heldOver: boolean;
  unread: boolean;
  kept: boolean;
  problem?: string;
  readings?: readonly number[];
  doubt?: string;
} {
  const still = { heldOver: false, unread: false, kept: false };
  if (text === undefined) {
    return { ...still, text: fallbackText, given: false, origin: 'example', value: fallback };
  }
  const found = read(text);
  if (found.kind === 'value') return { ...still, text, given: true, origin, ...without(found) };
  const last = held
    ? { value: held.value as T, origin: held.origin, kept: true, unread: held.left === true }
    : { value: fallback, origin, unread: true };
  const waiting = { ...still, text, given: true, ...last };
  return { ...waiting, heldOver: held !== undefined && !held.left, problem: found.sentence };
}

const without = <T>({ value, problem, readings, doubt }: Extract<Read<T>, { kind: 'value' }>) => ({
  value,
  ...(problem === undefined ? {} : { problem }),
  ...(readings === undefined ? {} : { readings }),
  ...(doubt === undefined ? {} : { doubt }),
});

/** Whether it is read with a ±, so that several readings say more than one. */
export const isMeasured = ({ error, errorIn }: FieldSpec): boolean =>
  error !== undefined || errorIn !== undefined;

/** Readings of one thing are no more than so many times apart. */
const ALIKE = 2;

/** Reads several readings of one quantity: their mean counts, and their spread. */
function readRepeated(spec: FieldSpec, typed: readonly string[], reading: Hearing): Read<number> {
  const { label } = spec;
  if (!isMeasured(spec)) {
    return bad(
      `${capital(label)} takes one figure, and ${typed.length} were typed. Type the one that counts.`,
    );
  }
  if (typed.length > MOST_READINGS) {
    return bad(
      `${capital(label)} takes at most ${MOST_READINGS} readings; ${typed.length} were typed. Leave some out, or type their mean.`,
    );
  }
  const mixed = bad(
    `Some readings of ${label.charAt(0).toLowerCase()}${label.slice(1)} have units and others none. Type the unit after each.`,
  );
  const parts = inOneUnit(typed);
  if (!parts) return mixed;
  const readings: number[] = [];
  let problem: string | undefined;
  let doubt: string | undefined;
  for (const part of parts) {
    const one = readOne(spec, part, reading);
    if (one.kind === 'bad') return one;
    readings.push(one.value!);
    problem ??= one.problem;
    doubt ??= one.doubt;
  }
  // In one unit they are no readings of the same thing: those without are of another.
  const isUnitLent = parts.some((part, i) => part !== typed[i]);
  if (isUnitLent && timesApart(Math.max(...readings), Math.min(...readings)) > ALIKE) return mixed;
  const value = repeatedReadings(readings).mean;
  return {
    kind: 'value',
    value,
    readings,
    ...(problem === undefined ? {} : { problem }),
    ...(doubt === undefined ? {} : { doubt }),
  };
}

/** Whether a text is a figure that a field takes, typed by hand: what else is said of it is not asked. */
export const takes =
  (spec: FieldSpec, { lengths, sums }: Reading) =>
  (typed: string): boolean => {
    const shown = fieldUnit(spec, lengths);
    const isBare = numberAndUnit(typed)?.unit === '' && shown !== spec.unit;
    const text = isBare ? `${typed} ${units[shown].token}` : typed;
    const read = parse(text, spec.unit, undefined, sums);
    return read.kind === 'value' && rangeProblem(spec, read.value, text, lengths) === undefined;
  };

/** Kept as the unit of a bare figure that may be either, so that it is asked about. */
export const IN_OR_THOU = ' in or thou';

/**
 * What to type where the marks of a text part thousands, and the figure is then one that the field
 * takes; nothing where they cannot.
 */
function inThousands(text: string, spec: FieldSpec, reading: Reading): string | undefined {
  const plain = asThousands(text);
  // A ± is never in thousands.
  return plain !== undefined && !spec.isError && takes(spec, reading)(plain)
    ? asTyped(plain).trim()
    : undefined;
}

/** Whether a figure that stands might have been meant in thousands, a mark of it having been taken for a decimal one. */
export const mayBeMore = (text: string, spec: FieldSpec, reading: Reading): boolean =>
  mayBeThousands(text) && inThousands(text, spec, reading) !== undefined;

/** What is wrong with a figure outside its range, and the unit in which it would be taken. */
function outOfRange(
  spec: FieldSpec,
  value: number,
  figure: string,
  typed: string,
  { lengths, byHand, usual }: Hearing,
): string | undefined {
  const problem = rangeProblem(spec, value, typed, lengths);
  if (problem === undefined || !byHand) return problem;
  const stamped = asStamped(spec, figure);
  if (stamped !== undefined) return `${problem} ${stamped}`;
  if (!usual) return problem;
  // How far a temperature is from another, no quotient tells: its other unit is told of any refused one.
  const isFarOff = doubtOf(spec, value, figure, lengths, usual) !== undefined;
  if (!isFarOff && units[spec.unit].quantity !== 'temperature') return problem;
  const read = readIn(spec, figure, usual);
  return read?.remedy ? `${problem} ${read.sentence}` : problem;
}

/** What to type of a figure that may be in inches: with its unit, where the field then takes it. */
function withItsUnit(spec: FieldSpec, texts: readonly string[], reading: Reading): string {
  const taken = texts.filter(takes(spec, reading)).map((text) => `“${text}”`);
  return taken.length > 0
    ? `With its unit, type ${taken.join(' or ')}.`
    : `In inches it is out of the range of this box, ${rangeWords(spec, reading.lengths)}.`;
}

/** Reads one figure. */
function readOne(spec: FieldSpec, typed: string, reading: Hearing): Read<number | undefined> {
  const { lengths, sums } = reading;
  if (typed.trim() === '') {
    if (spec.optional) return { kind: 'value', value: undefined };
    return bad(
      `${capital(spec.label)} is empty. Type ${quantityNouns[units[spec.unit].quantity]}, ${rangeWords(spec, lengths)}.`,
    );
  }
  if (typed.length > LONGEST) return bad(tooLong(spec.label));
  const several = readingParts(typed);
  if (several) return readRepeated(spec, several, reading);
  const figure = isMeasured(spec) ? withoutEnd(typed) : typed;
  const [bare, implied] = figure.split(IMPLIED);
  if (implied === IN_OR_THOU) {
    return bad(
      `${quote(typed)} looks like inches, and a bare figure here is in thou. ${withItsUnit(spec, [`${bare!} in`], reading)}`,
    );
  }
  const fraction = reading.byHand ? bareFraction(figure, spec.unit) : undefined;
  if (fraction) {
    // Nobody divides a thou so.
    const meant = (fraction.unit === 'mm' ? ['in', 'mm'] : ['in']).map(
      (unit) => `${fraction.typed} ${unit}`,
    );
    return bad(
      `“${fraction.typed}” is a fraction, as of an inch, and a bare figure here is in ${fraction.unit}. ${withItsUnit(spec, meant, reading)}`,
    );
  }
  const named = reading.byHand ? spec.otherwise?.(asTyped(figure)) : undefined;
  if (named !== undefined) return bad(named);
  const like = () => exampleWords(spec, lengths, reading.usual);
  const parsed = parse(figure, spec.unit, like, sums);
  const thousands = inThousands(figure, spec, reading);
  if (parsed.kind !== 'value') {
    const range = rangeTyped(figure, takes(spec, reading));
    if (range !== undefined) return bad(range);
    return thousands === undefined
      ? parsed
      : bad(`${parsed.sentence} If the mark parts thousands, type “${thousands}”.`);
  }
  const outside = outOfRange(spec, parsed.value, figure, typed, reading);
  const problem =
    outside === undefined ? undefined : `${outside}${asRange(figure, takes(spec, reading))}`;
  if (thousands !== undefined && problem !== undefined) {
    const sentence = `${problem} If the mark parts thousands, type “${thousands}”.`;
    return { kind: 'value', value: parsed.value, problem: sentence };
  }
  if (thousands !== undefined && reading.byHand && mayBeThousands(figure)) {
    return bad(
      `${quote(typed)} can be read two ways, since three digits behind a mark may be thousands or decimals. Type “${thousands}” or “${asTyped(asDecimals(figure)).trim()}”.`,
    );
  }
  const doubt =
    reading.byHand && problem === undefined
      ? (doubtOf(spec, parsed.value, figure, lengths, reading.usual) ??
        slashed(figure, spec.unit, isMeasured(spec)))
      : undefined;
  return {
    kind: 'value',
    value: parsed.value,
    ...(problem === undefined ? {} : { problem }),
    ...(doubt === undefined ? {} : { doubt }),
  };
}

const heard = ({ origin }: Given, reading: Reading, usual?: number): Hearing => ({
  ...reading,
  byHand: origin === 'yours',
  usual,
});

/** A field of one figure. */
export function figureField(
  key: string,
  spec: FieldSpec,
  given: Given,
  fallback: number | undefined,
  reading: Reading,
): FigureField {
  const text = fallback === undefined ? '' : plainText(fallback);
  const read = (typed: string) =>
    readOne(spec, typed, heard(given, reading, spec.usual ?? fallback));
  return { kind: 'figure', key, spec, ...stand(given, fallback, text, read) };
}

/** Figures with decimal points that commas part, and nothing else: 1.00,1.02,1.05. */
const POINTS_AND_COMMAS = /(?<![\d.,])\d*\.\d+(?:,\d*\.\d+)+(?![\d.,])/gu;

/** A whole number and what makes a mixed one of it: 1 and 1/8. */
const WHOLE = /^[+\-−]?\d+$/u;
const PART = /^\d+[/⁄]\d/u;

/**
 * The figures of a list as they stand in its text: parted by semicolons, by commas before a blank, or
 * by blanks before a figure. A fraction behind a whole number is a part of it, as in every other box.
 */
export function listParts(typed: string): string[] {
  const parts: string[] = [];
  const parted = typed.replaceAll(POINTS_AND_COMMAS, (all) => all.replaceAll(',', ';'));
  for (const piece of parted.split(/;|,(?=\s|$)/u)) {
    let joins = false;
    for (const word of piece.split(/\s+/)) {
      if (word === '') continue;
      const mixed = PART.test(word) && WHOLE.test(parts.at(-1) ?? '');
      if (joins && (mixed || !/^[+\-−]?[\d.,]/u.test(word))) parts.push(`${parts.pop()!} ${word}`);
      else parts.push(word);
      joins = true;
    }
  }
  return parts;
}

function readAll(spec: FieldSpec, typed: string, reading: Hearing): Read<readonly number[]> {
  if (spec.order !== undefined) {
    if (typed.length > LONGEST) return bad(tooLong(spec.label));
    const read = spec.order.read(typed, spec.order.cylinders, spec.order.sets);
    return 'problem' in read ? bad(read.problem) : { kind: 'value', value: read.order };
  }
  const parts = listParts(typed);
  const most = spec.list ?? Infinity;
  if (parts.length > most) {
    return bad(
      `${capital(spec.label)} takes at most ${most} figures; ${parts.length} were typed. Leave some out.`,
    );
  }
  if (typed.length > LONGEST) return bad(tooLong(spec.label));
  const read = parts.map((part) => readOne(spec, part, reading));
  for (const one of read) {
    if (one.kind === 'bad') return one;
    if (one.kind === 'value' && one.problem !== undefined) return bad(one.problem);
  }
  const value = read.flatMap((one) => (one.kind === 'value' ? [one.value!] : []));
  return { kind: 'value', value };
}

/** A field of several figures. */
export function listField(
  key: string,
  spec: FieldSpec,
  given: Given,
  fallback: readonly number[],
  reading: Reading,
): ListField {
  const text = fallback.map(plainText).join(' ');
  const read = (typed: string) =>
    readAll(spec, typed, heard(given, reading, spec.usual ?? fallback[0]));
  return { kind: 'list', key, spec, ...stand(given, fallback, text, read) };
}

/** A field of named options. */
export function choiceField(key: string, input: ChoiceInput, given: Given): ChoiceField {
  const { label, help, options, measure, group, assumed } = input;
  const read = (typed: string): Read<string> =>
    Object.hasOwn(options, typed)
      ? { kind: 'value', value: typed }
      : bad(
          `${quote(typed)} is not a choice for “${label}”. Choose one of: ${Object.values(options).join(', ')}.`,
        );
  return {
    kind: 'choice',
    key,
    label,
    help,
    options,
    ...stand<string>(given, input.default, input.default, read),
    ...(measure === undefined ? {} : { measure }),
    ...(group === undefined ? {} : { group }),
    ...(assumed === undefined ? {} : { assumed }),
  };
}

const typedByReader = (
  text: string | undefined,
  held: AnyValue,
  origin: Origin = 'yours',
): Given => ({
  text,
  origin,
  held: held === undefined ? undefined : { value: held, origin: 'yours' },
});

/**
 * Reads one figure that a reader typed. An unreadable text changes nothing: `held` still stands.
 * `origin` is whose the text is, where it is not being typed.
 */
export const readFigure = (
  key: string,
  spec: FieldSpec,
  typed: string | undefined,
  fallback: number | undefined,
  held: number | undefined,
  reading: Reading,
  origin?: Origin,
): FigureField => figureField(key, spec, typedByReader(typed, held, origin), fallback, reading);

/** Reads several figures that a reader typed into one field, separated by spaces or semicolons. */
export const readList = (
  key: string,
  spec: FieldSpec,
  typed: string | undefined,
  fallback: readonly number[],
  held: readonly number[] | undefined,
  reading: Reading,
): ListField => listField(key, spec, typedByReader(typed, held), fallback, reading);
