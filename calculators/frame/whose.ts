import type { Evaluation } from './evaluate.ts';
import type { Field } from './field/fields.ts';
import { labelOf, rests, type Read } from './rests-on.ts';
import { Absent, type AnyCalculator, type Known, type Remark, type ResultSpec } from './types.ts';
import { toGiveWords } from './to-give.ts';
import { capital } from '../maths/numeric/capital.ts';
import type { LengthDisplay } from './text/units.ts';
import { isAssumed, isAssumedLimit, isExample, namesOf } from './whose-field.ts';

/** Whether anybody has given a figure at all. */
export const touched = ({ fields }: Evaluation): boolean =>
  fields.some(({ origin }) => origin !== 'example');

/** Whether all stands as the example, for a reader who has no engine of their own to ask about. */
const untouched = (evaluation: Evaluation): boolean =>
  !touched(evaluation) && !evaluation.ownEngine;

/** Whether all stands as the worked example, to be told so and no more. */
const worked = (evaluation: Evaluation): boolean =>
  evaluation.demonstration || untouched(evaluation);

/** Those of the fields that something rests on which hold a figure of the example. */
export const examplesBehind = (
  calculator: AnyCalculator,
  evaluation: Evaluation,
  reads: Iterable<Read>,
): readonly Field[] => rests(calculator, evaluation, reads).filter(isExample);

/** What was read, each once. */
type Kept = Map<string, Read>;

const keyOf = ({ kind, name, index }: Read): string => `${kind} ${name} ${index ?? ''}`;

/** A proxy of an object that records which of its members are read. */
function watched<T extends object>(
  target: T,
  kind: Read['kind'],
  into: () => Kept,
  nameOf: (property: string) => Read | undefined = (name) => ({ kind, name }),
  hasMembers: (name: string) => boolean = () => true,
): T {
  const note = (read: Read | undefined): void => {
    if (read) into().set(keyOf(read), read);
  };
  return new Proxy(target, {
    get: (of, property, receiver) => {
      const value: unknown = Reflect.get(of, property, receiver);
      if (typeof property === 'symbol') return value;
      const read = nameOf(property);
      if (!Array.isArray(value) || !read || !hasMembers(read.name)) {
        note(read);
        return value;
      }
      const { name } = read;
      return watched(value, kind, into, (place) =>
        // How many there are goes by the count of them, which is an input of its own.
        /^\d+$/.test(place) ? { kind, name, index: Number(place) } : undefined,
      );
    },
    has: (of, property) => {
      if (typeof property === 'string') note(nameOf(property));
      return Reflect.has(of, property);
    },
    ownKeys: (of) => {
      for (const property of Object.keys(of)) note(nameOf(property));
      return Reflect.ownKeys(of);
    },
  });
}

/** `error-2` as row 2 of `error`, where that is a result. */
function resultRead(calculator: AnyCalculator, flat: string): Read {
  if (calculator.results[flat]) return { kind: 'result', name: flat };
  const [, name, row] = /^(.*?)-(\d+)(?:-\d+)?$/.exec(flat) ?? [];
  return name !== undefined && calculator.results[name]
    ? { kind: 'result', name, index: Number(row) - 1 }
    : { kind: 'result', name: flat };
}

/** A calculator's state that records which of its figures are read. */
class Watch {
  private kept: Kept = new Map();
  readonly values;
  readonly results;
  readonly known: Known;

  constructor(calculator: AnyCalculator, evaluation: Evaluation, lengths: LengthDisplay) {
    const into = (): Kept => this.kept;
    const isSeries = (key: string): boolean => calculator.inputs[key]?.kind === 'series';
    this.values = watched(evaluation.values, 'value', into, undefined, isSeries);
    this.results = watched(evaluation.results, 'result', into);
    const assumed = new Set(evaluation.fields.filter(isAssumed).map(({ key }) => key));
    this.known = {
      lengths,
      isAssumed: (key) => assumed.has(key),
      get spreads() {
        return watched(evaluation.spreads, 'result', into, (flat) => resultRead(calculator, flat));
      },
    };
  }

  /** What `run` returns, and all that it read. */
  run<T>(run: () => T): { readonly said: T; readonly reads: readonly Read[] } {
    const before = this.kept;
    this.kept = new Map();
    try {
      const said = run();
      return { said, reads: [...this.kept.values()] };
    } finally {
      this.kept = before;
    }
  }
}

/**
 * What may be said of figures whose origin is known. A remark that tells the reader to do something is
 * said only where every figure behind it was given; where none was, it is said of the example; where
 * some were, it is replaced by the names of those still to give.
 */
function told(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  sentence: string,
  reads: readonly Read[],
  notYet: (missing: readonly Field[]) => string,
): string {
  const behind = rests(calculator, evaluation, reads);
  if (worked(evaluation)) {
    return behind.some(({ origin }) => origin === 'example')
      ? `In this example: ${sentence}`
      : sentence;
  }
  const missing = behind.filter(isExample);
  return missing.length === 0 ? sentence : notYet(missing);
}

const are = (fields: readonly Field[]): string => (fields.length === 1 ? 'is' : 'are');
const them = (fields: readonly Field[]): string => (fields.length === 1 ? 'it' : 'them');

/** The remarks of one kind, as they may be said. */
function remarksThat(
  asked: (remark: Remark) => boolean,
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
): readonly string[] {
  if (!evaluation.computed || !calculator.remarks) return [];
  const watch = new Watch(calculator, evaluation, lengths);
  const { values, results, known } = watch;
  const all = watch.run(() => calculator.remarks!(values as never, results as never, known));
  const lines = all.said.flatMap((entry) => {
    const remark: Remark =
      typeof entry === 'string'
        ? { about: 'what follows from the figures', say: () => entry }
        : entry;
    if (!asked(remark)) return [];
    const { said, reads } = watch.run(remark.say);
    if (said === undefined) return [];
    const on = [...all.reads, ...reads];
    const line = told(calculator, evaluation, said, on, (missing) =>
      remark.quiet
        ? ''
        : `Not judged yet: ${remark.about}. ${capital(namesOf(missing))} ${are(missing)} still the example’s; give ${them(missing)} first.`,
    );
    return line === '' ? [] : [line];
  });
  return [...new Set(lines)];
}

/** The calculator's remarks as they may be said, or none where there is no result to remark on. */
export const remarksOf = (
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay = 'mm',
): readonly string[] => remarksThat(() => true, calculator, evaluation, lengths);

/** How those remarks begin without which nobody is to go by the answer: a sentence of each. */
export const leadingRemarks = (
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
): readonly string[] =>
  remarksThat(({ leads }) => leads === true, calculator, evaluation, lengths).map(
    (remark) => remark.split(/(?<=[.:]) (?=\p{Lu})/u, 1)[0]!,
  );

/** Begins the words of a verdict that waits for figures of the reader. */
export const NOT_YET = 'not judged yet, since';

/** The words of a table's verdict on a row, as they may be said; of the example, as its caption says. */
export function verdictOf(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  table: string,
  lengths: LengthDisplay,
  index: number,
  inner?: number,
): string {
  const verdict = calculator.tables?.[table]?.verdict;
  if (!verdict || !evaluation.computed) return '';
  const watch = new Watch(calculator, evaluation, lengths);
  const { said, reads } = watch.run(() =>
    verdict.say(watch.values, watch.results, index, inner, watch.known),
  );
  if (said === '' || worked(evaluation)) return said;
  return told(
    calculator,
    evaluation,
    said,
    reads,
    (missing) => `${NOT_YET} ${namesOf(missing)} ${are(missing)} still the example’s.`,
  );
}

/** Whether a table's verdicts judge the worked example, to be said once above them all. */
export const judgesExample = (
  calculator: AnyCalculator,
  evaluation: Evaluation,
  table: string,
): boolean => calculator.tables?.[table]?.verdict !== undefined && worked(evaluation);

/**
 * The figures by which a table's verdicts judge and which nobody gave; none beside a worked example,
 * where nobody gave any.
 */
export function assumedLimits(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  table: string,
  lengths: LengthDisplay,
): readonly Field[] {
  const verdict = calculator.tables?.[table]?.verdict;
  if (!verdict || !evaluation.computed || worked(evaluation)) return [];
  const watch = new Watch(calculator, evaluation, lengths);
  const rows = Object.entries<ResultSpec>(calculator.results).flatMap(([name, spec]) => {
    const column = evaluation.results[name];
    return spec.table === table && Array.isArray(column) ? column.length : [];
  });
  const { reads } = watch.run(() => {
    for (let row = 1; row <= Math.max(0, ...rows); row += 1) {
      verdict.say(watch.values, watch.results, row, undefined, watch.known);
    }
  });
  return rests(
    calculator,
    evaluation,
    reads.filter(({ kind }) => kind === 'value'),
  ).filter(isAssumedLimit);
}

const resultReads = (names: readonly string[]): Read[] =>
  names.map((name) => ({ kind: 'result', name }));

/** Whether a result rests on figures of the example that others of the reader's stand beside. */
export const restsOnExample = (
  calculator: AnyCalculator,
  evaluation: Evaluation,
  name: string,
): boolean =>
  !worked(evaluation) && examplesBehind(calculator, evaluation, resultReads([name])).length > 0;

/** Names of the results to be read first; all of them where none leads. */
function leading(calculator: AnyCalculator): string[] {
  const specs = Object.entries<ResultSpec>(calculator.results);
  const leads = specs.filter(([, spec]) => spec.lead);
  return (leads.length > 0 ? leads : specs).map(([name]) => name);
}

const INVENTED = 'Worked example of an invented engine.';

const missingOf = new WeakMap<Evaluation, readonly Field[]>();

/** Fields behind the results that lead which hold a figure of the example; found once for each state. */
function missingLeads(calculator: AnyCalculator, evaluation: Evaluation): readonly Field[] {
  const known = missingOf.get(evaluation);
  if (known) return known;
  const there = leading(calculator).filter((name) => !(evaluation.results[name] instanceof Absent));
  const found = examplesBehind(calculator, evaluation, resultReads(there));
  missingOf.set(evaluation, found);
  return found;
}

function countOf(missing: readonly Field[]): string {
  return missing.length === 1
    ? '1 figure is still the example’s'
    : `${String(missing.length)} figures are still the example’s`;
}

/** Whose an answer is that rests on figures nobody gave; nothing where all are given. */
export function whoseAnswer(calculator: AnyCalculator, evaluation: Evaluation): string | undefined {
  if (evaluation.demonstration) return 'Worked example. Change any figure to see what it does.';
  const missing = missingLeads(calculator, evaluation);
  if (untouched(evaluation)) {
    return missing.length === 0
      ? `${INVENTED} Give your own figures.`
      : `${INVENTED} Give your own figures: ${namesOf(missing)}.`;
  }
  return missing.length === 0 ? undefined : `${countOf(missing)}: ${namesOf(missing)}.`;
}

/** The same in one line, as it stands beneath the answer: which figures they are is said by `stillToGive`. */
export function whoseBrief(calculator: AnyCalculator, evaluation: Evaluation): string | undefined {
  if (evaluation.demonstration || untouched(evaluation)) return INVENTED;
  const missing = missingLeads(calculator, evaluation);
  return missing.length === 0 ? undefined : `${countOf(missing)}.`;
}

/** Which figures the reader has still to give for an answer of their own; nothing where none. */
export function stillToGive(calculator: AnyCalculator, evaluation: Evaluation): string | undefined {
  const missing = missingLeads(calculator, evaluation);
  return missing.length === 0 ? undefined : `Give your own: ${toGiveWords(calculator, missing)}.`;
}

/**
 * What stands beside a result that rests on more of the example than the answer above it says;
 * nothing where it does not, or where all is the example's.
 */
export function whoseBeside(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  name: string,
): string | undefined {
  if (worked(evaluation) || evaluation.results[name] instanceof Absent) return undefined;
  const said = new Set(examplesBehind(calculator, evaluation, resultReads(leading(calculator))));
  const more = examplesBehind(calculator, evaluation, resultReads([name])).filter(
    (field) => !said.has(field),
  );
  return more.length === 0 ? undefined : `with the example’s ${namesOf(more)}`;
}

/** A word in brackets for results that rest on the example, by their names; nothing where none does. */
export function whoseResults(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  names: readonly string[],
): string {
  if (worked(evaluation)) return ' (worked example)';
  const missing = examplesBehind(calculator, evaluation, resultReads(names));
  return missing.length === 0 ? '' : ` (with the example’s ${namesOf(missing)})`;
}

/** The same for the results that lead. */
export const whoseLeads = (calculator: AnyCalculator, evaluation: Evaluation): string =>
  whoseResults(calculator, evaluation, leading(calculator));

/**
 * Why a calculation may not be copied, saved or sent as it stands: what is shown would not be what
 * is typed. Nothing where it may.
 */
export function whyNotShared(evaluation: Evaluation): string | undefined {
  const all = [...evaluation.fields, ...evaluation.errorFields];
  const wrong = all.find(({ problem }) => problem !== undefined);
  if (wrong) {
    return `“${labelOf(wrong)}” cannot be taken as it is typed. Put it right first: what leaves this page is what it shows.`;
  }
  return evaluation.computed
    ? undefined
    : 'There is no result yet. Put the figures above right first.';
}
