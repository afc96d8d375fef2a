import type { Evaluation, Texts } from './evaluate.ts';
import { numberAndUnit } from './parse.ts';
import { isHomeUnit } from './typed-units.ts';
import type { Field } from './fields.ts';
import { units } from './units.ts';

/** Longest text taken from an address for one key; longer ones are cut and then reported. */
const LONGEST = 200;

/** The texts in a query string. The last of several with one key counts. */
export function fromQuery(query: string): Texts {
  const texts: Record<string, string> = Object.create(null) as Record<string, string>;
  for (const [key, value] of new URLSearchParams(query)) {
    texts[key.slice(0, LONGEST)] = value.slice(0, LONGEST);
  }
  return { ...texts };
}

/** A field's text as an address keeps it: a bare number gets its home unit, so it stays true. */
export function addressText(field: Field): string {
  if (field.kind !== 'figure') return field.text;
  const pieces = numberAndUnit(field.text);
  if (!pieces || !isHomeUnit(pieces.unit, field.spec.unit)) return field.text.trim();
  return `${pieces.number}${units[field.spec.unit].token}`;
}

const encode = (text: string): string =>
  encodeURIComponent(text).replaceAll('%2C', ',').replaceAll('%2F', '/').replaceAll('%3A', ':');

/**
 * The query string that holds the whole state: every field that applies, with its unit, so that
 * the link means the same for ever, whatever the defaults become. The ± fields are written only
 * when given.
 */
export function toQuery({ fields, errorFields }: Evaluation): string {
  return [...fields, ...errorFields.filter((field) => field.given)]
    .filter((field) => field.text.trim() !== '' || field.given)
    .map((field) => `${encode(field.key)}=${encode(addressText(field))}`)
    .join('&');
}
