import type { Field } from './fields.ts';

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
