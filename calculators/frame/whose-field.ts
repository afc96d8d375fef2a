import { listed } from '../maths/numeric/listed.ts';
import type { Field } from './field/fields.ts';
import { labelOf } from './rests-on.ts';
import { inSentence } from './text/sentence.ts';

const assumed = (field: Field): boolean =>
  (field.kind === 'choice' ? field.assumed : field.spec.assumed) ?? false;

/** Whether a field holds a figure that nobody gave and that is more than a neutral setting. */
export function isExample(field: Field): boolean {
  if (field.origin !== 'example' || assumed(field)) return false;
  if (field.kind === 'list') return field.value.length > 0;
  return field.value !== undefined;
}

/** Whether a field holds a neutral setting that nobody has touched. */
export const isAssumed = (field: Field): boolean =>
  field.origin === 'example' && assumed(field) && field.kind !== 'choice';

/** Whether a field holds a limit that nobody gave: something is judged by it. */
export const isAssumedLimit = (field: Field): boolean =>
  isAssumed(field) && field.kind !== 'choice' && field.spec.judgesBy === true;

const NAMED = 3;

/** The first few of some fields by name: "stroke, rod length and 2 more". */
export function namesOf(fields: readonly Field[]): string {
  const names = [...new Set(fields.map((field) => inSentence(labelOf(field))))];
  const shown = names.length > NAMED + 1 ? names.slice(0, NAMED) : names;
  const words = shown.length < names.length ? [...shown, `${names.length - NAMED} more`] : shown;
  return listed(words);
}

/** What a file says of figures in it that nobody gave, since it goes on without its page; nothing where all are given. */
export function whoseFile(fields: readonly Field[]): string | undefined {
  const examples = fields.filter(isExample);
  if (examples.length === 0) return undefined;
  return fields.every(({ origin }) => origin === 'example')
    ? 'All figures are an invented example’s.'
    : `Still an invented example’s: ${namesOf(examples)}.`;
}
