import { MathsError } from '../maths/numeric/errors.ts';
import { repeatedReadings } from '../maths/numeric/repeated-readings.ts';
import {
  choiceField,
  figureField,
  listField,
  type Field,
  type FieldSpec,
  type FigureField,
  type Given,
  type Held,
  type Reading,
} from './fields.ts';
import { rests, type Read } from './rests-on.ts';
import { quote } from './parse.ts';
import { sentenceIn } from './sentence.ts';
import { measuredUncertainty, type Part, type Uncertainty } from './spreads.ts';
import {
  Absent,
  absent,
  type AnyCalculator,
  type AnyValue,
  type AnyValues,
  type Input,
  type Origin,
  type ResultSpec,
  type ResultValue,
  type SeriesInput,
} from './types.ts';
import type { LengthDisplay } from './units.ts';

/** Texts by key, as typed or as found in the address; only those that were given. */
export type Texts = Readonly<Record<string, string>>;
/** Whose each text is, by key. */
export type Origins = Readonly<Record<string, Origin>>;

/** The same origin for every text. */
export const allFrom = (texts: Texts, origin: Origin): Origins =>
  Object.fromEntries(Object.keys(texts).map((key) => [key, origin]));

export interface Problem {
  /** Key of the field it belongs to; none when it concerns the address or several fields. */
  readonly key?: string;
  readonly sentence: string;
}

export interface Evaluation {
  /** Fields that apply, in order. */
  readonly fields: readonly Field[];
  /** The ± of each measured figure, as fields of their own. */
  readonly errorFields: readonly Field[];
  readonly values: AnyValues;
  readonly results: Readonly<Record<string, ResultValue>>;
  /** Worked out when first asked for: a picture that is dragged may do without. */
  readonly spreads: Readonly<Record<string, number>>;
  /** What makes up each ±: the readings' parts, the largest first. */
  readonly parts: Readonly<Record<string, readonly Part[]>>;
  readonly problems: readonly Problem[];
  /** Whether the results belong to what is typed now. */
  readonly computed: boolean;
  /** Whether it stands in an article to show something, its figures nobody's. */
  readonly demonstration: boolean;
  /** Whether the reader keeps an engine of their own, of which an example tells nothing. */
  readonly ownEngine: boolean;
}

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

const errorKey = (key: string): string => `${key}-error`;

export const seriesKeys = (key: string, count: number, first = 1): string[] =>
  Array.from({ length: count }, (_, i) => `${key}-${i + first}`);

/** Every key an address may hold. */
export function knownKeys(calculator: AnyCalculator): Set<string> {
  const keys = new Set<string>();
  for (const [key, input] of Object.entries<Input>(calculator.inputs)) {
    if (input.kind === 'series') {
      for (const member of seriesKeys(key, input.most, input.first)) keys.add(member);
    } else {
      keys.add(key);
    }
    if ('error' in input && input.error !== undefined) keys.add(errorKey(key));
  }
  return keys;
}

const errorSpec = (spec: FieldSpec & { error?: number }): FieldSpec => ({
  label: `± of ${spec.label.charAt(0).toLowerCase()}${spec.label.slice(1)}`,
  help: 'How far the reading may be out, either way.',
  unit: spec.unit,
  min: 0,
  max: spec.max - spec.min,
  why: 'a reading cannot be out by less than nothing or by more than its whole range',
  step: (spec.error ?? spec.step) / 2,
  isError: true,
});

interface Gathered {
  readonly fields: Field[];
  readonly errorFields: Field[];
  readonly values: Record<string, AnyValue>;
  readonly measured: Measured[];
  readonly stray: Problem[];
}

/**
 * A default may hang on figures that are themselves out of the way. What is offered stays in the
 * field's own range, since it must be legal when a link writes it out.
 */
const offered = (value: number, { min, max }: FieldSpec): number =>
  Number.isFinite(value) ? Math.min(max, Math.max(min, value)) : min;

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
  const { fields, errorFields, values, measured, stray } = into;
  const applies = input.when?.(values) ?? true;
  const given = (name: string): Given => ({
    text: texts[name],
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
    if (field.heldOver || field.unread) stray.push({ sentence: field.problem! });
    return read({ ...given(name), text: undefined });
  };

  if (input.kind === 'choice') {
    values[key] = take(key, (from) => choiceField(key, input, from)).value;
    return;
  }
  if (input.kind === 'list') {
    const spec: FieldSpec = { ...input, list: input.most };
    const read = (from: Given) => listField(key, spec, from, input.default, options);
    values[key] = take(key, read).value;
    return;
  }

  /** The ± of a reading: the instrument's own, joined by that of the spread of several. */
  const noteError = (of: readonly FigureField[], inSeries: boolean): void => {
    const there = of.filter(({ value }) => value !== undefined);
    const ofError = errorKey(key);
    if (input.error === undefined || !applies) return;
    if (there.length === 0 && texts[ofError] === undefined) return;
    const spec = errorSpec(input);
    const field = figureField(ofError, spec, given(ofError), input.error, options);
    errorFields.push(field);
    const own = field.problem === undefined || field.heldOver ? (field.value ?? 0) : 0;
    of.forEach(({ value, readings }, index) => {
      const error = Math.hypot(own, readings ? repeatedReadings(readings).ofMean : 0);
      if (error > 0 && value !== undefined) {
        measured.push({ key, error, ...(inSeries ? { index } : {}) });
      }
    });
  };

  if (input.kind === 'series') {
    const count = Math.max(0, Math.min(input.most, Math.floor(input.count(values)) || 0));
    const members = seriesKeys(key, count, input.first).map((member, i) => {
      const row = input.row === undefined ? {} : { inRow: rowOf(input, input.row, i) };
      const spec = { ...input, label: input.member(i + 1, values), ...row };
      const fallback = offered(input.default(i + 1, values), input);
      return take(member, (from) => figureField(member, spec, from, fallback, options));
    });
    values[key] = members.map(({ value }) => value!);
    noteError(members, true);
    return;
  }

  const spec = input.kind === 'optional' ? { ...input, optional: true } : input;
  const fallback = input.kind === 'optional' ? undefined : input.default;
  const field = take(key, (from) => figureField(key, spec, from, fallback, options));
  values[key] = field.value;
  noteError([field], false);
}

/** Replaces what is not a finite number by a sentence, so that no NaN reaches the page. */
function finiteOnly(value: ResultValue, lengths: LengthDisplay): ResultValue {
  const why = 'This figure has no finite value for these inputs.';
  if (value instanceof Absent) return absent(sentenceIn(value.why, lengths));
  if (typeof value === 'number') return Number.isFinite(value) ? value : absent(why);
  return value.flat().every((entry) => Number.isFinite(entry)) ? value : absent(why);
}

function allAbsent(calculator: AnyCalculator, why: string): Record<string, ResultValue> {
  return Object.fromEntries(Object.keys(calculator.results).map((name) => [name, absent(why)]));
}

/** Why there is no result where it rests on a text that was never read; nothing where it does not. */
function restsOnUnread(
  calculator: AnyCalculator,
  state: Pick<Evaluation, 'fields' | 'values'>,
  unread: readonly Field[],
  read: Read,
): string | undefined {
  if (unread.length === 0) return undefined;
  const keys = new Set(rests(calculator, state, [read]).map(({ key }) => key));
  const found = unread.find(
    ({ key }) => keys.has(key) || [...keys].some((on) => isErrorOf(key, on)),
  );
  return found?.problem;
}

/** Whether a key is that of the ± of a field, or of the series it belongs to. */
const isErrorOf = (key: string, field: string): boolean =>
  key === errorKey(field) || key === errorKey(field.replace(/-\d+$/, ''));

/** From texts to fields, values, results and their ±: the whole of a calculator's state. */
export function evaluate(
  calculator: AnyCalculator,
  texts: Texts,
  options: EvaluateOptions,
): Evaluation {
  const gathered: Gathered = {
    fields: [],
    errorFields: [],
    values: {},
    measured: [],
    stray: [],
  };
  for (const [key, input] of Object.entries<Input>(calculator.inputs)) {
    gatherInput(key, input, texts, options, gathered);
  }
  const { fields, errorFields, values, measured, stray } = gathered;
  const everyField = [...fields, ...errorFields];
  const problems: Problem[] = everyField.flatMap((field) =>
    field.problem === undefined ? [] : [{ key: field.key, sentence: field.problem }],
  );
  problems.push(...stray);
  const known = knownKeys(calculator);
  for (const key of Object.keys(texts)) {
    if (!known.has(key)) {
      problems.push({
        sentence: `The address holds ${quote(key)}, which this calculator does not know. It was left out; nothing else is changed.`,
      });
    }
  }
  const blocking = fields.find(
    ({ problem, heldOver, unread }) => problem !== undefined && !heldOver && !unread,
  );
  const unread = everyField.filter((field) => field.unread);
  const { demonstration = false, ownEngine = false } = options;
  const base = { fields, errorFields, values, demonstration, ownEngine };
  if (blocking) {
    return {
      ...base,
      results: allAbsent(calculator, blocking.problem!),
      spreads: {},
      parts: {},
      problems,
      computed: false,
    };
  }
  try {
    const raw = calculator.compute(values) as Record<string, ResultValue>;
    const results = Object.fromEntries(
      Object.keys(calculator.results).map((name) => {
        const missing = restsOnUnread(calculator, base, unread, { kind: 'result', name });
        return [
          name,
          missing === undefined ? finiteOnly(raw[name]!, options.lengths) : absent(missing),
        ];
      }),
    );
    let found: Uncertainty | undefined;
    const uncertainty = (): Uncertainty =>
      (found ??= measuredUncertainty(calculator, values, measured, results));
    return {
      ...base,
      results,
      get spreads() {
        return uncertainty().spreads;
      },
      get parts() {
        return uncertainty().parts;
      },
      problems,
      computed: unread.length === 0,
    };
  } catch (error) {
    if (!(error instanceof MathsError)) throw error;
    const sentence = sentenceIn(error.message, options.lengths);
    const onPage = new Set(fields.map((field) => field.key));
    const keys = error.quantities.flatMap((quantity) => {
      const key = calculator.fieldOf[quantity] ?? quantity;
      return onPage.has(key) ? [key] : fields.filter((f) => f.key === `${key}-1`).map((f) => f.key);
    });
    return {
      ...base,
      fields: fields.map((field) =>
        keys.includes(field.key) && field.problem === undefined
          ? { ...field, problem: sentence }
          : field,
      ),
      results: allAbsent(calculator, sentence),
      spreads: {},
      parts: {},
      problems: [
        ...(keys[0] === undefined ? [{ sentence }] : [{ key: keys[0], sentence }]),
        ...problems,
      ],
      computed: false,
    };
  }
}

export type { ResultSpec };
