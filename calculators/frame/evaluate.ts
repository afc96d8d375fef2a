import { MathsError } from '../maths/numeric/errors.ts';
import type { Field } from './field/fields.ts';
import {
  errorKey,
  gatherAll,
  seriesKeys,
  type EvaluateOptions,
  type Origins,
  type Problem,
  type Texts,
} from './gather.ts';
import { rests, type Read } from './rests-on.ts';
import { isExample, namesOf } from './whose-field.ts';
import { quote } from './field/parse.ts';
import { sentenceIn } from './text/sentence.ts';
import { capital } from '../maths/numeric/capital.ts';
import { measuredUncertainty, type Part, type Uncertainty } from './spreads.ts';
import {
  Absent,
  absent,
  impossible,
  type AnyCalculator,
  type AnyValues,
  type Input,
  type Origin,
  type ResultSpec,
  type ResultValue,
} from './types.ts';
import type { LengthDisplay } from './text/units.ts';

/** The same origin for every text. */
export const allFrom = (texts: Texts, origin: Origin): Origins =>
  Object.fromEntries(Object.keys(texts).map((key) => [key, origin]));

export type { Origins, Problem, Texts };
export { seriesKeys };

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

/** Replaces what is not a finite number by a sentence, so that no NaN reaches the page. */
function finiteOnly(value: ResultValue, lengths: LengthDisplay): ResultValue {
  const why = 'This figure has no finite value for these inputs.';
  if (value instanceof Absent) {
    return new Absent(sentenceIn(value.why, lengths), value.at, value.judges, value.all);
  }
  if (typeof value === 'number') return Number.isFinite(value) ? value : absent(why);
  return value.flat().every((entry) => Number.isFinite(entry)) ? value : absent(why);
}

function allAbsent(calculator: AnyCalculator, why: string): Record<string, ResultValue> {
  return Object.fromEntries(Object.keys(calculator.results).map((name) => [name, impossible(why)]));
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

/**
 * A fault that lies with figures of the example as well as with given ones says so; one that is a
 * verdict (`judges`) says nothing else.
 */
function namingExamples(
  sentence: string,
  { fields, demonstration }: Pick<Evaluation, 'fields' | 'demonstration'>,
  behind: readonly Field[],
  judges = false,
): string {
  const examples = behind.filter(isExample);
  const given = fields.some(({ origin }) => origin !== 'example');
  if (demonstration || !given || examples.length === 0) return sentence;
  const [is, them] = examples.length === 1 ? ['is', 'it'] : ['are', 'them'];
  const names = namesOf(examples);
  return `${judges ? 'Not judged yet:' : sentence} ${capital(names)} ${is} still the example’s; give ${them} first.`;
}

/** The fields of some keys; the name of a series stands for all its members. */
const fieldsAt = (fields: readonly Field[], keys: readonly string[]): readonly Field[] =>
  fields.filter(({ key }) => keys.includes(key) || keys.includes(key.replace(/-\d+$/, '')));

/**
 * The results, where what keeps one from being says whose figures it lies with: those that its
 * sentence names, or else all that the results it keeps away have in common. A text that cannot be
 * read is at fault by itself, whosever figures stand beside it.
 */
function namingExamplesInAll(
  calculator: AnyCalculator,
  state: Pick<Evaluation, 'fields' | 'values' | 'demonstration'>,
  results: Readonly<Record<string, ResultValue>>,
  unread: readonly Field[],
): Record<string, ResultValue> {
  const behind = new Map<string, readonly Field[]>();
  for (const [name, value] of Object.entries(results)) {
    if (!(value instanceof Absent) || value.at === undefined) continue;
    if (unread.some(({ problem }) => problem === value.why)) continue;
    const keys = value.at.map((quantity) => calculator.fieldOf[quantity] ?? quantity);
    const named = fieldsAt(state.fields, keys).filter(isExample);
    const on =
      value.all || named.length > 0 ? named : rests(calculator, state, [{ kind: 'result', name }]);
    behind.set(value.why, behind.get(value.why)?.filter((field) => on.includes(field)) ?? on);
  }
  return Object.fromEntries(
    Object.entries(results).map(([name, value]) => {
      const on = value instanceof Absent ? behind.get(value.why) : undefined;
      if (!on) return [name, value];
      const { why, at, judges } = value as Absent;
      const said = namingExamples(why, state, on, judges);
      // A verdict that waits for figures is no fault of those that are there.
      return [name, judges && said !== why ? absent(said) : impossible(said, at)];
    }),
  );
}

/** From texts to fields, values, results and their ±: the whole of a calculator's state. */
export function evaluate(
  calculator: AnyCalculator,
  texts: Texts,
  options: EvaluateOptions,
): Evaluation {
  const { fields, errorFields, values, measured, stray } = gatherAll(calculator, texts, options);
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
    const there = Object.fromEntries(
      Object.keys(calculator.results).map((name) => {
        const missing = restsOnUnread(calculator, base, unread, { kind: 'result', name });
        return [
          name,
          missing === undefined ? finiteOnly(raw[name]!, options.lengths) : impossible(missing),
        ];
      }),
    );
    const results = namingExamplesInAll(calculator, base, there, unread);
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
    const onPage = new Set(fields.map((field) => field.key));
    const keys = error.quantities.flatMap((quantity) => {
      const key = calculator.fieldOf[quantity] ?? quantity;
      return onPage.has(key) ? [key] : fields.filter((f) => f.key === `${key}-1`).map((f) => f.key);
    });
    const said = sentenceIn(error.message, options.lengths);
    const behind = fieldsAt(fields, [...keys, ...(calculator.refusedBy?.[error.code] ?? [])]);
    const sentence = namingExamples(said, base, behind);
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
