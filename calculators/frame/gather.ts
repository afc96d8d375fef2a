import {
  choiceField,
  figureField,
  isUnreadable,
  listField,
  type Field,
  type FieldSpec,
  type FigureField,
  type Given,
  type Held,
  type Reading,
} from './field/fields.ts';
import { statedAndRead } from '../maths/numeric/stated-and-read.ts';
import type { AnyCalculator, AnyValue, Input, NumberInput, Origin, SeriesInput } from './types.ts';
import { isExample } from './whose-field.ts';

/** Texts by key, as typed or as found in the address; only those that were given. */
export type Texts = Readonly<Record<string, string>>;
/** Whose each text is, by key. */
export type Origins = Readonly<Record<string, Origin>>;

export interface EvaluateOptions extends Reading {
  /** What each field last held. What comes by a link has held nothing yet. */
  readonly held?: Readonly<Record<string, Held>>;
  /** Whose each text is; the reader's own unless said. */
  readonly origins?: Origins;
  readonly demonstration?: boolean;
  readonly ownEngine?: boolean;
}

/** One measured number: where it sits in the values, and its ±. */
export interface Measured {
  readonly key: string;
  readonly index?: number;
  readonly error: number;
}

export interface Problem {
  /** Key of the field it belongs to; none when it concerns the address or several fields. */
  readonly key?: string;
  readonly sentence: string;
}

/** The key of the ± of a figure. */
export const errorKey = (key: string): string => `${key}-error`;

export const seriesKeys = (key: string, count: number, first = 1): string[] =>
  Array.from({ length: count }, (_, i) => `${key}-${i + first}`);

const errorSpec = (spec: FieldSpec & { error?: number }): FieldSpec => ({
  label: `± of ${spec.label.charAt(0).toLowerCase()}${spec.label.slice(1)}`,
  help: 'How far one reading may be out, either way. Several that agree with it leave it as it is; several that scatter more make it larger.',
  unit: spec.unit,
  min: 0,
  max: spec.max - spec.min,
  why: 'a reading cannot be out by less than nothing or by more than its whole range',
  step: (spec.error ?? spec.step) / 2,
  isError: true,
});

export interface Gathered {
  readonly fields: Field[];
  readonly errorFields: Field[];
  readonly values: Record<string, AnyValue>;
  readonly measured: Measured[];
  readonly stray: Problem[];
  /** What stands for figures of the example that have given way, by key. */
  readonly instead: ReadonlyMap<string, number>;
}

/** A default that was worked out from other figures, kept within its range: a link writes it out. */
const offered = (value: number, { min, max }: FieldSpec): number =>
  Number.isFinite(value) ? Math.min(max, Math.max(min, value)) : min;

/** A count that may not be legal itself, as one that is. */
const between = (least: number, count: number, most: number): number =>
  Math.max(least, Math.min(most, Math.floor(count)) || 0);

const rowOf = ({ label, first = 1 }: SeriesInput, of: string, i: number) => ({
  of,
  index: i + first,
  heading: label,
});

function gatherInput(
  key: string,
  input: Input,
  texts: Texts,
  options: EvaluateOptions,
  into: Gathered,
): void {
  const { fields, errorFields, values, measured, stray, instead } = into;
  const applies = input.when?.(values) ?? true;
  const given = (name: string): Given => ({
    text: instead.has(name) ? undefined : texts[name],
    origin: options.origins?.[name] ?? 'yours',
    held: options.held?.[name],
  });
  /** What does not apply takes no part: its default stands in, whatever was typed there. */
  const take = <F extends Field>(name: string, read: (from: Given) => F): F => {
    const field = read(given(name));
    if (applies) {
      fields.push(field);
      return field;
    }
    if (isUnreadable(field)) stray.push({ sentence: field.problem! });
    return read({ ...given(name), text: undefined });
  };

  const moved = (field: FigureField): FigureField =>
    instead.has(field.key) ? { ...field, gaveWay: true } : field;

  if (input.kind === 'choice') {
    values[key] = take(key, (from) => choiceField(key, input, from)).value;
    return;
  }
  if (input.kind === 'list') {
    const { order, ...plain } = input;
    const spec: FieldSpec = {
      ...plain,
      list: input.most,
      ...(order === undefined
        ? {}
        : { order: { cylinders: between(1, order.of(values), input.most), read: order.read } }),
    };
    const read = (from: Given) => listField(key, spec, from, input.default, options);
    values[key] = take(key, read).value;
    return;
  }

  /** The ± of a reading: the one stated for it, held against the scatter of several. */
  const noteError = (of: readonly FigureField[], inSeries: boolean): void => {
    const isExact = (value: number | undefined): boolean =>
      value === 0 && input.exactAtZero === true;
    const there = of.filter(({ value }) => value !== undefined && !isExact(value));
    const ofError = errorKey(key);
    if (input.error === undefined || !applies) return;
    if (there.length === 0 && texts[ofError] === undefined) return;
    const spec = errorSpec(input);
    const field = figureField(ofError, spec, given(ofError), input.error, options);
    errorFields.push(field);
    const own = field.problem === undefined || field.heldOver ? (field.value ?? 0) : 0;
    of.forEach((read, index) => {
      const { value, readings } = read;
      const error = readings ? statedAndRead(own, readings).plusMinus : own;
      // What is said beside the box of several readings is said of this ±.
      if (readings) fields[fields.indexOf(read)] = { ...read, stated: own };
      if (error > 0 && value !== undefined && !isExact(value)) {
        measured.push({ key, error, ...(inSeries ? { index } : {}) });
      }
    });
  };

  if (input.kind === 'series') {
    const count = between(0, input.count(values), input.most);
    const members = seriesKeys(key, count, input.first).map((member, i) => {
      const row = input.row === undefined ? {} : { inRow: rowOf(input, input.row, i) };
      const spec = { ...input, label: input.member(i + 1, values), ...row };
      const fallback = instead.get(member) ?? offered(input.default(i + 1, values), input);
      return take(member, (from) => moved(figureField(member, spec, from, fallback, options)));
    });
    values[key] = members.map(({ value }) => value!);
    noteError(members, true);
    return;
  }

  const spec = input.kind === 'optional' ? { ...input, optional: true } : input;
  const fallback = input.kind === 'optional' ? undefined : (instead.get(key) ?? input.default);
  const field = take(key, (from) => moved(figureField(key, spec, from, fallback, options)));
  values[key] = field.value;
  noteError([field], false);
}

const inputOf = ({ inputs }: AnyCalculator, key: string): Input =>
  inputs[key] ?? inputs[key.replace(/-\d+$/, '')]!;

/** Holds readings that were taken more than once against the ± that they share with others. */
function noteStated(calculator: AnyCalculator, { fields, values }: Gathered): void {
  fields.forEach((field, at) => {
    const input = inputOf(calculator, field.key);
    if (field.kind !== 'figure' || field.readings === undefined) return;
    if (!('errorIn' in input) || input.errorIn === undefined) return;
    fields[at] = { ...field, stated: values[input.errorIn] as number };
  });
}

/** What each input makes of its text, and of what gave way. */
function gather(
  calculator: AnyCalculator,
  texts: Texts,
  options: EvaluateOptions,
  instead: ReadonlyMap<string, number>,
): Gathered {
  const into: Gathered = {
    fields: [],
    errorFields: [],
    values: {},
    measured: [],
    stray: [],
    instead,
  };
  for (const [key, input] of Object.entries<Input>(calculator.inputs)) {
    gatherInput(key, input, texts, options, into);
  }
  noteStated(calculator, into);
  return into;
}

/** A figure of the example that may have to give way. */
interface Giver {
  readonly key: string;
  readonly spec: FieldSpec;
  readonly value: number;
  readonly givesWay: NonNullable<NumberInput['givesWay']>;
}

const giversOf = (calculator: AnyCalculator, { fields }: Gathered): readonly Giver[] =>
  fields.filter(isExample).flatMap((field) => {
    const input = inputOf(calculator, field.key);
    // An emptied or half typed box stands as it is: the example's figure behind it gives way to nothing.
    if (isUnreadable(field)) return [];
    if (field.kind !== 'figure' || field.value === undefined) return [];
    if (!('givesWay' in input) || input.givesWay === undefined) return [];
    const { key, spec, value } = field;
    return [{ key, spec, value, givesWay: input.givesWay }];
  });

/** As one figure of the example gives way, another may have to: a hole moves in with its plate. */
const MOST_ROUNDS = 4;

/**
 * All inputs, after each figure of the example that has to has given way.
 *
 * @param asGiven The inputs before any has.
 * @param before What has given way already, and to which figure.
 */
function afterGivingWay(
  calculator: AnyCalculator,
  texts: Texts,
  options: EvaluateOptions,
  asGiven: Gathered,
  before: ReadonlyMap<string, number> = new Map(),
): Gathered {
  let gathered = asGiven;
  const givers = giversOf(calculator, gathered);
  const instead = new Map<string, number>();
  for (const { key, value } of givers) if (before.get(key) === value) instead.set(key, value);
  if (instead.size > 0) gathered = gather(calculator, texts, options, new Map(instead));
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const was = [...instead.values()].join();
    for (const { key, spec, value, givesWay } of givers) {
      const other = givesWay(value, gathered.values);
      if (other === undefined) continue;
      const moved = before.get(key) ?? offered(Number(other.toFixed(3)), spec);
      if (moved !== value || before.has(key)) instead.set(key, moved);
    }
    if ([...instead.values()].join() === was) break;
    gathered = gather(calculator, texts, options, new Map(instead));
  }
  return gathered;
}

/**
 * All inputs, where figures of the example that would make a given one impossible have given way. One
 * that has does not go back. Where nobody gave anything, or an article shows something, all stands as
 * it is.
 */
export function gatherAll(
  calculator: AnyCalculator,
  texts: Texts,
  options: EvaluateOptions,
): Gathered {
  const gathered = gather(calculator, texts, options, new Map());
  const nobodys = gathered.fields.every(({ origin }) => origin === 'example');
  if (options.demonstration || nobodys) return gathered;
  const givers = giversOf(calculator, gathered).filter(({ key }) => texts[key] !== undefined);
  if (givers.length === 0) return afterGivingWay(calculator, texts, options, gathered);
  // What a link calls the example's had perhaps given way before the link was made.
  const keys = new Set(givers.map(({ key }) => key));
  const others = Object.fromEntries(Object.entries(texts).filter(([key]) => !keys.has(key)));
  const alone = gather(calculator, others, options, new Map());
  const { instead } = afterGivingWay(calculator, others, options, alone);
  return afterGivingWay(calculator, texts, options, gathered, instead);
}
