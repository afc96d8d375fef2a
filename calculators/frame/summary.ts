import type { Evaluation } from './evaluate.ts';
import { shownText, showIn, withUnit } from './text/format.ts';
import { inSentence } from './text/sentence.ts';
import { fieldUnit } from './field/field-unit.ts';
import { orderText } from './text/order.ts';
import type { Field, FigureField } from './field/fields.ts';
import { apart, numberAndUnit, withoutMarks } from './field/parse.ts';
import { isHomeUnit } from './field/typed-units.ts';
import { showResult, wordsOf } from './show-result.ts';
import {
  Absent,
  type AnyCalculator,
  type AnyValues,
  type ResultSpec,
  type ResultValue,
} from './types.ts';
import type { LengthDisplay, UnitName } from './text/units.ts';
import { restsOnExample } from './whose.ts';

/** One figure with its ± and the word that follows it. */
export function figureText(
  value: number,
  spec: ResultSpec,
  spread: number | undefined,
  lengths: LengthDisplay,
  values: AnyValues,
  column?: ResultValue,
): string {
  const text = shownText(showResult(value, spec, spread, lengths, column));
  const word = spec.word?.(value, values) ?? '';
  return word === '' ? text : `${text} ${word}`;
}

/** Label of a table's row, such as "Cylinder 2". */
export function rowLabel(
  calculator: AnyCalculator,
  table: string | undefined,
  values: AnyValues,
  lengths: LengthDisplay,
  index: number,
  inner?: number,
): string {
  const spec = table === undefined ? undefined : calculator.tables?.[table];
  return (
    spec?.row(values, index, inner, { lengths }) ??
    [index, inner].filter((n) => n !== undefined).join('-')
  );
}

/** What a result is called: no order while it rests on the example's figures. */
export function calledAs(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  name: string,
  lengths: LengthDisplay,
): Pick<ResultSpec, 'label' | 'short'> {
  const spec = calculator.results[name]!;
  if (spec.unjudged !== undefined && restsOnExample(calculator, evaluation, name)) {
    return { label: spec.unjudged };
  }
  const label = evaluation.computed
    ? calculator.noOrder?.(name, evaluation.values, evaluation.results)
    : undefined;
  return label === undefined ? wordsOf(spec, lengths) : { label };
}

/** The same where no heading of a column stands over it: "Cylinder 2" and not "2" alone. */
export function rowName(
  calculator: AnyCalculator,
  table: string | undefined,
  ...rest: readonly [values: AnyValues, lengths: LengthDisplay, index: number, inner?: number]
): string {
  const label = rowLabel(calculator, table, ...rest);
  const heading = table === undefined ? undefined : calculator.tables?.[table]?.rowHeading;
  return heading === undefined || label !== String(rest[2]) ? label : `${heading} ${label}`;
}

export interface SummaryLine {
  readonly label: string;
  readonly text: string;
}

/** How a figure was typed, where that is another unit, a fraction or a sum: the figure that a book has. */
function givenAs({ given, text, spec, problem }: FigureField, shown: UnitName): string {
  if (!given || problem !== undefined) return '';
  const typed = withoutMarks(text).trim();
  const pieces = numberAndUnit(typed);
  const isPlain =
    pieces !== undefined &&
    !/[/⁄]/u.test(typed) &&
    (pieces.unit === '' || isHomeUnit(pieces.unit, shown) || isHomeUnit(pieces.unit, spec.unit));
  if (isPlain) return '';
  // A mark stands at its figure, and a word apart from it.
  const hasWord = pieces !== undefined && /^\p{L}/u.test(pieces.unit);
  return ` (given as ${hasWord ? apart(pieces) : typed})`;
}

function inputLine(field: Field, lengths: LengthDisplay): SummaryLine | undefined {
  if (field.kind === 'choice') {
    return { label: field.label, text: field.options[field.value] ?? field.value };
  }
  const { label, step } = field.spec;
  const shown = fieldUnit(field.spec, lengths);
  if (field.kind === 'list') {
    if (field.value.length === 0) return undefined;
    return field.spec.order === undefined
      ? { label, text: field.value.map((v) => showIn(v, shown, step)).join(', ') }
      : { label, text: orderText(field.value) };
  }
  if (field.value === undefined) return undefined;
  const text = showIn(field.value, shown, step);
  const count = field.readings?.length;
  return {
    label,
    text:
      count === undefined
        ? `${text}${givenAs(field, shown)}`
        : `${text} (mean of ${count} readings)`,
  };
}

/** Inputs, as lines for people; none for one that has no figure yet. */
export function inputLines(fields: readonly Field[], lengths: LengthDisplay): SummaryLine[] {
  return fields.flatMap((field) => inputLine(field, lengths) ?? []);
}

export interface ResultLine extends SummaryLine {
  /** Name of the result it belongs to. */
  readonly name: string;
  /** Name of this figure of it: `error-2`. */
  readonly flat: string;
}

/** The results that exist, or those of them that are asked for by name, as lines for people. */
export function resultLines(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
  asked: (name: string) => boolean = () => true,
): ResultLine[] {
  const { results, spreads, values } = evaluation;
  const lines: ResultLine[] = [];
  for (const [name, spec] of Object.entries<ResultSpec>(calculator.results)) {
    const value = results[name];
    if (value === undefined || value instanceof Absent || !asked(name)) continue;
    const { label } = calledAs(calculator, evaluation, name, lengths);
    const line = (figure: number, flat: string, row?: string): void => {
      lines.push({
        name,
        flat,
        label: row === undefined ? label : `${row}, ${inSentence(label)}`,
        text: figureText(figure, spec, spreads[flat], lengths, values, value),
      });
    };
    if (typeof value === 'number') line(value, name);
    else {
      value.forEach((entry, i) => {
        const row = (inner?: number) =>
          rowName(calculator, spec.table, values, lengths, i + 1, inner);
        if (typeof entry === 'number') line(entry, `${name}-${i + 1}`, row());
        else entry.forEach((v, j) => line(v, `${name}-${i + 1}-${j + 1}`, row(j + 1)));
      });
    }
  }
  return lines;
}

/** The results to be read first, with the one that answers what is asked before the others. */
export function leadSpecs(
  { results, main }: AnyCalculator,
  values: AnyValues,
): (readonly [name: string, spec: ResultSpec])[] {
  const specs = Object.entries<ResultSpec>(results).filter(([, spec]) => spec.lead);
  const first = main?.(values);
  return specs.toSorted(([a], [b]) => Number(b === first) - Number(a === first));
}

/** The results to be read first, as lines for people. */
export function leads(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
): SummaryLine[] {
  return leadSpecs(calculator, evaluation.values).flatMap(([name]) =>
    typeof evaluation.results[name] === 'number'
      ? resultLines(calculator, evaluation, lengths, (other) => other === name)
      : [],
  );
}

/** The first result that exists of those to be read first, its figure and its ± apart. */
export function leadParts(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
): readonly { readonly label: string; readonly figure: string; readonly spread?: string }[] {
  const { results, spreads } = evaluation;
  return leadSpecs(calculator, evaluation.values).flatMap(([name, spec]) => {
    const value = results[name];
    if (typeof value !== 'number') return [];
    const shown = showResult(value, spec, spreads[name], lengths);
    const word = spec.word?.(value, evaluation.values) ?? '';
    return [
      {
        label: calledAs(calculator, evaluation, name, lengths).label,
        figure: `${withUnit(shown.figure, shown.unit)} ${word}`.trim(),
        ...(shown.spread === undefined ? {} : { spread: withUnit(shown.spread, shown.unit) }),
      },
    ];
  });
}

/** The results to be read first, or those named, a line each. */
export const leadLines = (
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
  names?: readonly string[],
): string[] =>
  (names
    ? resultLines(calculator, evaluation, lengths, (name) => names.includes(name))
    : leads(calculator, evaluation, lengths)
  ).map(({ label, text }) => `${label}: ${text}`);
