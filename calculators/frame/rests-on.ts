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

type Places = ReadonlyMap<string, readonly Field[]>;
const placed = new WeakMap<readonly Field[], Places>();

/** The fields under their keys, and the members of a series under its key; made once for each state. */
function placesOf(fields: readonly Field[]): Places {
  const known = placed.get(fields);
  if (known) return known;
  const places = new Map<string, Field[]>();
  const put = (key: string, field: Field): void => {
    const there = places.get(key);
    if (there) there.push(field);
    else places.set(key, [field]);
  };
  for (const field of fields) {
    put(field.key, field);
    if (member.test(field.key)) put(field.key.replace(member, ''), field);
  }
  placed.set(fields, places);
  return places;
}

/** The fields of an input: itself, or the members of a series. */
function fieldsOf(
  input: Input | undefined,
  key: string,
  fields: readonly Field[],
  index?: number,
): readonly Field[] {
  const one = input?.kind === 'series' && index !== undefined;
  return placesOf(fields).get(one ? `${key}-${index + (input.first ?? 1)}` : key) ?? [];
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
