import type { Field } from '../../calculators/frame/field/fields.ts';
import { isAssumed, isExample } from '../../calculators/frame/whose-field.ts';

/** Whose a field's figure is, in a word; none for a setting that is nobody's to give. */
export function markOf(field: Field): string | undefined {
  if (field.problem !== undefined) return undefined;
  if (isExample(field)) return 'example';
  if (isAssumed(field)) return 'assumed';
  return field.origin === 'example' ? undefined : field.origin;
}

/** Whose the figures of a group are: each word once, those that nobody gave last. */
export function marksOf(fields: readonly Field[]): readonly string[] {
  const found = new Set(fields.map(markOf));
  return ['yours', 'sheet', 'link', 'example'].filter((mark) => found.has(mark));
}
