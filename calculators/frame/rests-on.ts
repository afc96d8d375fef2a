import type { Field } from './field/fields.ts';
import type { AnyCalculator, AnyValues, Input } from './types.ts';

/** Something that a remark or a table has read: an input or a result, or one member of it. */
export interface Read {
  readonly kind: 'value' | 'result';
  readonly name: string;
  /** Counted from 0. */
  readonly index?: number;
}

export const labelOf = (field: Field): string =>
  field.kind === 'choice' ? field.label : field.spec.label;

const member = /-\d+$/;

/** The fields of an input: itself, or the members of a series. */
function fieldsOf(
  input: Input | undefined,
  key: string,
  fields: readonly Field[],
  index?: number,
): readonly Field[] {
  if (input?.kind !== 'series') return fields.filter((field) => field.key === key);
  const only = index === undefined ? undefined : `${key}-${index + (input.first ?? 1)}`;
  return fields.filter((field) =>
    only === undefined
      ? field.key.startsWith(`${key}-`) && field.key.replace(member, '') === key
      : field.key === only,
  );
}

/**
 * The fields on which what was read rests: an input on itself, a result on those inputs that can
 * change it. What does not apply is no field, and takes no part.
 */
export function rests(
  { inputs, restsOn = {} }: AnyCalculator,
  { fields, values }: { readonly fields: readonly Field[]; readonly values: AnyValues },
  reads: Iterable<Read>,
): readonly Field[] {
  const found = new Set<Field>();
  const note = (key: string, index?: number): void => {
    for (const field of fieldsOf(inputs[key], key, fields, index)) found.add(field);
  };
  for (const { kind, name, index } of reads) {
    if (kind === 'value') {
      note(name, index);
      continue;
    }
    const told = restsOn[name];
    const keys = typeof told === 'function' ? told(values as never) : told;
    if (keys === undefined) return fields;
    for (const key of keys) {
      const [, series = key, member] = /^(.+)-(N|\d+)$/.exec(key) ?? [];
      const input = inputs[series];
      if (inputs[key] !== undefined || input?.kind !== 'series') note(key);
      else if (member === 'N' && index === undefined) note(series);
      // A row is counted from 1, as the members of a series are named.
      else note(series, (member === 'N' ? index! + 1 : Number(member)) - (input.first ?? 1));
    }
  }
  return [...found];
}
