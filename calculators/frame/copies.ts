/** The calculation in words to take away: fetched when somebody wants one. */
import { csv } from './csv.ts';
import type { Evaluation } from './evaluate.ts';
import type { Field } from './field/fields.ts';
import { labelOf, rests } from './rests-on.ts';
import { flatten } from './spreads.ts';
import { inSentence } from './text/sentence.ts';
import { inputLines, leads, resultLines, type SummaryLine } from './summary.ts';
import { Absent, type AnyCalculator, type ResultSpec } from './types.ts';
import { plainDecimal } from '../maths/numeric/rounding.ts';
import { units, type LengthDisplay } from './text/units.ts';
import { isAssumed, isAssumedLimit, isExample } from './whose-field.ts';
import { remarksOf, touched, whoseAnswer, whoseBeside, whoseLeads } from './whose.ts';

/** What to paste into a message as plain text. */
export function plainSummary(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
  link: string,
): string {
  const write = ({ label, text }: SummaryLine): string => `  ${label}: ${text}`;
  const remarks = remarksOf(calculator, evaluation, lengths);
  const whose = whoseAnswer(calculator, evaluation);
  const marked = touched(evaluation) || evaluation.ownEngine;
  return [
    calculator.title,
    'From:',
    ...evaluation.fields.flatMap((field) => {
      const whoseIt = isExample(field)
        ? ' (the example’s)'
        : isAssumedLimit(field)
          ? ' (assumed)'
          : '';
      const mark = marked ? whoseIt : '';
      return inputLines([field], lengths).map((line) => `${write(line)}${mark}`);
    }),
    'Result:',
    ...resultLines(calculator, evaluation, lengths).map((line) => {
      const beside = whoseBeside(calculator, evaluation, line.name);
      return beside === undefined ? write(line) : `${write(line)} (${beside})`;
    }),
    ...(whose === undefined ? [] : [`  ${whose}`]),
    ...remarks.map((remark) => `  ${remark}`),
    link,
  ].join('\n');
}

/** The lead results in words, for the text of a link. */
function linkWords(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
): string {
  const words = leads(calculator, evaluation, lengths)
    .map(({ label, text }) => `${inSentence(label)} ${text}`)
    .join(', ');
  return words === ''
    ? calculator.title
    : `${calculator.title}: ${words}${whoseLeads(calculator, evaluation)}${behind(calculator, evaluation, lengths)}`;
}

/** Labels that what is chosen completes: “It was given for another engine”. */
const BEGUN = /\b(?:as|by|counts|for|from|have|means|stood|to|turns|was)$/;

/** Every input that can change the lead results, for the words of a link. */
function behind(calculator: AnyCalculator, evaluation: Evaluation, lengths: LengthDisplay): string {
  const names = Object.entries<ResultSpec>(calculator.results).flatMap(([name, spec]) =>
    spec.lead && !(evaluation.results[name] instanceof Absent) ? [name] : [],
  );
  const on = rests(
    calculator,
    evaluation,
    names.map((name) => ({ kind: 'result', name })),
  );
  const shown = evaluation.fields.filter((field) => on.includes(field));
  const labels = new Set(shown.map(labelOf));
  const words = shown.flatMap((field) =>
    inputLines([field], lengths).flatMap(({ label, text }) => {
      if (field.kind !== 'choice') return [`${inSentence(label)} ${text}`];
      // What was chosen to be typed says so itself.
      if (labels.has(text)) return [];
      return [`${inSentence(label)}${BEGUN.test(label) ? '' : ':'} ${inSentence(text)}`];
    }),
  );
  return words.length === 0 ? '' : `; from ${words.join(', ')}`;
}

const escapeMarkdown = (text: string): string => text.replaceAll(/([\\`*_[\]<>])/g, '\\$1');

/** A Markdown link whose words are the lead results. */
export function markdownLink(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
  link: string,
): string {
  const words = escapeMarkdown(linkWords(calculator, evaluation, lengths));
  return `[${words}](${link.replaceAll('(', '%28').replaceAll(')', '%29')})`;
}

/** The same as BBCode, for forums that take it. */
export function bbcodeLink(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
  link: string,
): string {
  const words = linkWords(calculator, evaluation, lengths).replaceAll(/[[\]]/g, '');
  return `[url=${link.replaceAll('[', '%5B').replaceAll(']', '%5D')}]${words}[/url]`;
}

/** Beyond these a figure is the arithmetic's, and no reading's or machine's. */
const DIGITS = 10;
const SMALLEST = 1e-9;
const DIGITS_OF_SPREAD = 3;

const written = (value: number, digits: number): string =>
  Math.abs(value) < SMALLEST ? '0' : plainDecimal(Number(value.toPrecision(digits)));

/** Whose a figure is, in the words of the page. */
const whoseIs = (field: Field): string => (isAssumed(field) ? 'assumed' : field.origin);

/** Inputs and results as comma-separated values to reckon on with, one row each. */
export function csvSummary(calculator: AnyCalculator, evaluation: Evaluation): string {
  const rows: string[][] = [['name', 'label', 'value', 'unit', 'plus or minus', 'whose']];
  for (const field of evaluation.fields) {
    const { key } = field;
    if (field.kind === 'choice') rows.push([key, field.label, field.value, '', '', field.origin]);
    else {
      const value = field.kind === 'list' ? field.value.join(' ') : String(field.value ?? '');
      rows.push([key, field.spec.label, value, units[field.spec.unit].label, '', whoseIs(field)]);
    }
  }
  for (const [name, figure] of flatten(evaluation.results)) {
    const spec = calculator.results[name] ?? calculator.results[name.replace(/(-\d+)+$/, '')];
    if (!spec) continue;
    const spread = evaluation.spreads[name];
    rows.push([
      name,
      spec.label,
      written(figure, DIGITS),
      units[spec.unit].label,
      spread === undefined ? '' : written(spread, DIGITS_OF_SPREAD),
      '',
    ]);
  }
  return csv(rows);
}
