import { exampleWords } from './examples.ts';
import { fieldUnit } from './field-unit.ts';
import { edgeIn, withUnit } from './format.ts';
import { parse, quote } from './parse.ts';
import type { NumberInput } from './types.ts';
import { quantityNouns, units, type LengthDisplay } from './units.ts';

/** What one field needs of an input: the same for single, optional, series and ± fields. */
export type FieldSpec = Pick<
  NumberInput,
  'label' | 'help' | 'measure' | 'group' | 'unit' | 'min' | 'max' | 'why' | 'whole' | 'step'
> & {
  readonly optional?: boolean;
  readonly list?: number;
  /** Whether it is the ± of another field. */
  readonly isError?: boolean;
};

interface FieldBase {
  readonly key: string;
  /** As typed or as found in the address; the default's text when neither. */
  readonly text: string;
  readonly given: boolean;
  readonly problem?: string;
}

export interface FigureField extends FieldBase {
  readonly kind: 'figure';
  readonly spec: FieldSpec;
  readonly value: number | undefined;
  /** The text could not be read, and the last good value still stands. */
  readonly heldOver: boolean;
}

export interface ListField extends FieldBase {
  readonly kind: 'list';
  readonly spec: FieldSpec;
  readonly value: readonly number[];
  readonly heldOver: boolean;
}

export interface ChoiceField extends FieldBase {
  readonly kind: 'choice';
  readonly label: string;
  readonly help: string;
  readonly measure?: string;
  readonly group?: string;
  readonly options: Readonly<Record<string, string>>;
  readonly value: string;
  readonly heldOver: boolean;
}

export type Field = FigureField | ListField | ChoiceField;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A number as written in an address and in an untouched field. */
export const plainText = (value: number): string => String(value);

/** The range of a field in words, in the reader's units. */
export function rangeWords(spec: FieldSpec, lengths: LengthDisplay): string {
  const shown = fieldUnit(spec, lengths);
  const words = (figure: number): string => withUnit(plainText(figure).replace('-', '−'), shown);
  return `from ${words(edgeIn(spec.min, shown, 1))} to ${words(edgeIn(spec.max, shown, -1))}`;
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
  return `${capital(spec.label)} must be ${rangeWords(spec, lengths)}: ${spec.why}. ${quote(typed)} is outside that; check the figure and its unit.`;
}

export interface Reading {
  readonly lengths: LengthDisplay;
}

/** Reads one figure. An unreadable text changes nothing: the value last good is held. */
export function readFigure(
  key: string,
  spec: FieldSpec,
  typed: string | undefined,
  fallback: number | undefined,
  held: number | undefined,
  { lengths }: Reading,
): FigureField {
  const last = held ?? fallback;
  const base = { kind: 'figure', key, spec, heldOver: false } as const;
  if (typed === undefined) {
    return {
      ...base,
      text: fallback === undefined ? '' : plainText(fallback),
      given: false,
      value: fallback,
    };
  }
  const given = { ...base, text: typed, given: true };
  if (typed.trim() === '') {
    if (spec.optional) return { ...given, value: undefined };
    return {
      ...given,
      value: last,
      heldOver: true,
      problem: `${capital(spec.label)} is empty. Type ${quantityNouns[units[spec.unit].quantity]}, ${rangeWords(spec, lengths)}.`,
    };
  }
  const parsed = parse(typed, spec.unit, () => exampleWords(spec, lengths));
  if (parsed.kind === 'bad') {
    return { ...given, value: last, heldOver: true, problem: parsed.sentence };
  }
  const problem = rangeProblem(spec, parsed.value, typed, lengths);
  return problem === undefined
    ? { ...given, value: parsed.value }
    : { ...given, value: parsed.value, problem };
}

/** The figures of a list as they stand in its text. */
export const listParts = (text: string): string[] =>
  text
    .trim()
    .split(/\s*;\s*|\s+(?=[+\-−]?[\d.,])/u)
    .filter((part) => part !== '');

/** Reads several figures from one text, separated by spaces or semicolons. */
export function readList(
  key: string,
  spec: FieldSpec,
  typed: string | undefined,
  fallback: readonly number[],
  held: readonly number[] | undefined,
  reading: Reading,
): ListField {
  const base = { kind: 'list', key, spec, heldOver: false } as const;
  if (typed === undefined) {
    return { ...base, text: fallback.map(plainText).join(' '), given: false, value: fallback };
  }
  const given = { ...base, text: typed, given: true };
  const parts = listParts(typed);
  const most = spec.list ?? Infinity;
  if (parts.length > most) {
    return {
      ...given,
      value: held ?? fallback,
      heldOver: true,
      problem: `${capital(spec.label)} takes at most ${most} figures; ${parts.length} were typed. Leave some out.`,
    };
  }
  const read = parts.map((part) => readFigure(key, spec, part, undefined, undefined, reading));
  const faulty = read.find((field) => field.problem !== undefined);
  if (faulty)
    return { ...given, value: held ?? fallback, heldOver: true, problem: faulty.problem! };
  return { ...given, value: read.map((field) => field.value!) };
}
