import type { Evaluation, Origins, Texts } from './evaluate.ts';
import { cutText, LONGEST, plainText, type Field } from './field/fields.ts';
import { CUT_OFF, numberAndUnit, withoutMarks } from './field/parse.ts';
import { isHomeUnit } from './field/typed-units.ts';
import { isAssumedLimit, isExample } from './whose-field.ts';
import { BETWEEN, inOneUnit, readingParts, withoutEnd } from './field/readings.ts';
import { units, type UnitName } from './text/units.ts';

/**
 * The key that names those figures of an address which nobody gave, so that a link makes nobody
 * answer for the example's: their keys, `all`, or `all,-key` with those that were given.
 */
const EXAMPLE = 'example';
const ALL = 'all';

const baseOf = (key: string): string => key.replace(/-\d+$/, '');

/** What a forum breaks a long link with: line ends, and marks that are not seen. */
const BREAKS = /[\r\n\t\u00AD\u200B-\u200D\u2060\uFEFF]/gu;
/** What follows a link in a sentence and is taken into it. */
const TRAILING = /[.,;:!?>\]}]+$/u;
/** Quotation marks are taken for such behind a unit alone: behind a figure they may be inches or minutes. */
const QUOTES = /(?<=\p{L}[.,!?]?)["'»”’]+$/u;

/** How a page shows a long link short: the figure before it may have lost digits. */
const SHORTENED = /(?<=\d)(?:\.{3}|…)$/u;

/** A value without what the end of a sentence has put behind it. */
function withoutTrail(value: string): string {
  if (SHORTENED.test(value)) return value.replace(SHORTENED, CUT_OFF);
  const cut = value.replace(QUOTES, '').replace(TRAILING, '');
  const opened = [...cut].filter((letter) => letter === '(').length;
  const shut = [...cut].filter((letter) => letter === ')').length;
  return cut.endsWith(')') && shut > opened ? withoutTrail(cut.slice(0, -1)) : cut;
}

/** A letter written for an address: `%20`. No text that is read as a figure holds one. */
const ESCAPED = /%[\dA-F]{2}/i;

/** A text that was written for an address more than once, for as long as it holds what betrays that. */
function decodedAgain(text: string, sign: RegExp): string {
  if (!sign.test(text)) return text;
  try {
    return decodedAgain(decodeURIComponent(text), sign);
  } catch {
    // A stray mark beside it: what it meant cannot be told.
    return text;
  }
}

/**
 * The query as it was before a page or a forum handled it: with `&` for `&amp;`, without the breaks
 * of long lines, and without the end of the sentence that it stood in.
 */
function mended(query: string): [string, string][] {
  const whole = /=/.test(query) ? query : decodedAgain(query, /%(?:25)*3D/i);
  const pairs = [...new URLSearchParams(whole.replace(/&(?:amp;)+/gi, '&'))].map(
    ([key, value]): [string, string] => [
      key.replace(BREAKS, '').trim(),
      decodedAgain(value, ESCAPED).replace(BREAKS, ''),
    ],
  );
  const last = pairs.at(-1);
  if (last) last[1] = withoutTrail(last[1]);
  return pairs;
}

/** The last of several texts with one key counts. What is too long to be a figure is cut, and says so. */
function everyText(query: string): Record<string, string> {
  const texts: Record<string, string> = Object.create(null) as Record<string, string>;
  for (const [written, value] of mended(query)) {
    // Whose the figures are is not lost to a capital that a phone puts first.
    const key = written.toLowerCase() === EXAMPLE ? EXAMPLE : written;
    texts[cutText(key, LONGEST)] = key === EXAMPLE ? value : cutText(value, LONGEST + 2);
  }
  return { ...texts };
}

/** The texts in a query string, by key. */
export function fromQuery(query: string): Texts {
  const { [EXAMPLE]: _, ...texts } = everyText(query);
  return texts;
}

/** Whose the texts of a query string are: the link's, but for those it calls the example's. */
export function originsIn(query: string): Origins {
  const { [EXAMPLE]: named = '', ...texts } = everyText(query);
  const names = new Set(named.toLowerCase().split(/[,;\s]+/));
  const whose = (key: string): boolean => {
    if (names.has(key) || names.has(baseOf(key))) return true;
    return names.has(ALL) && !names.has(`-${key}`) && !names.has(`-${baseOf(key)}`);
  };
  return Object.fromEntries(
    Object.keys(texts).map((key) => [key, whose(key) ? 'example' : 'link']),
  );
}

/**
 * Whose figures an address cannot tell: the reader's own and those of the sheet, which would come
 * back as a link's.
 */
export const ownIn = ({
  fields,
  errorFields,
}: Pick<Evaluation, 'fields' | 'errorFields'>): Origins =>
  Object.fromEntries(
    [...fields, ...errorFields].flatMap(({ key, origin }) =>
      origin === 'yours' || origin === 'sheet' ? [[key, origin] as const] : [],
    ),
  );

/** The origins in a query, where something remembers which of its figures the reader gave. */
export function withOwn(origins: Origins, own: unknown): Origins {
  if (typeof own !== 'object' || own === null) return origins;
  return Object.fromEntries(
    Object.entries(origins).map(([key, origin]) => {
      const kept: unknown = Object.hasOwn(own, key)
        ? (own as Record<string, unknown>)[key]
        : origin;
      return [key, origin === 'link' && (kept === 'yours' || kept === 'sheet') ? kept : origin];
    }),
  );
}

/** A value as an address keeps it, with its unit, so that it stays true. */
function valueText(field: Field): string {
  if (field.kind === 'choice') return field.value;
  if (field.kind === 'list') return field.value.map(plainText).join(' ');
  return field.value === undefined
    ? ''
    : `${plainText(field.value)}${units[field.spec.unit].token}`;
}

/**
 * A field's text as an address keeps it: a bare number gets its home unit, and what cannot be read
 * leaves the value that still stands, so that the link gives what the page shows.
 */
export function addressText(field: Field): string {
  if (field.kept) return valueText(field);
  if (field.kind !== 'figure') return withoutMarks(field.text);
  const { unit } = field.spec;
  const several = field.readings && inOneUnit(readingParts(field.text) ?? []);
  if (several) return several.map((one) => oneText(one, unit)).join(BETWEEN);
  return oneText(field.problem === undefined ? withoutEnd(field.text) : field.text, unit);
}

/** A bare figure with its home unit. */
function oneText(text: string, unit: UnitName): string {
  const pieces = numberAndUnit(text);
  if (!pieces || !isHomeUnit(pieces.unit, unit)) return withoutMarks(text).trim();
  return `${pieces.number}${units[unit].token}`;
}

const encode = (text: string): string =>
  encodeURIComponent(text.replaceAll(/\p{Surrogate}/gu, '\uFFFD'))
    .replaceAll('%2C', ',')
    .replaceAll('%2F', '/')
    .replaceAll('%3A', ':');

/** Names of some of the keys: the members of a series by one name where all of them are meant. */
function namesFor(keys: readonly string[], others: ReadonlySet<string>): string[] {
  const split = new Set([...others].map(baseOf));
  return [...new Set(keys.map((key) => (split.has(baseOf(key)) ? key : baseOf(key))))];
}

/** Figures that nobody gave: the example's, and those that are assumed to judge by. */
const isNobodys = (field: Field): boolean => isExample(field) || isAssumedLimit(field);

/** The shorter way to name those figures that nobody gave; nothing where there are none. */
function exampleText(fields: readonly Field[]): string {
  const example = fields.filter(isNobodys).map(({ key }) => key);
  const given = fields.filter((field) => !isNobodys(field)).map(({ key }) => key);
  if (example.length === 0) return '';
  if (fields.every(({ origin }) => origin === 'example')) return ALL;
  const named = namesFor(example, new Set(given)).join(',');
  const others = [ALL, ...namesFor(given, new Set(example)).map((key) => `-${key}`)].join(',');
  return named.length <= others.length ? named : others;
}

/**
 * The query string that holds the whole state: every field that applies, with its unit, and the ±
 * of every reading, so that the link means the same for ever, whatever the defaults become; and
 * which of the figures are nobody's. That comes first: a link that is cut short loses figures, and
 * never makes the sender answer for those that stay.
 */
export function toQuery({
  fields,
  errorFields,
}: Pick<Evaluation, 'fields' | 'errorFields'>): string {
  const example = exampleText(fields);
  return [
    ...(example === '' ? [] : [`${EXAMPLE}=${encode(example)}`]),
    ...[...fields, ...errorFields]
      .filter((field) => field.text.trim() !== '' || field.given)
      .map((field) => `${encode(field.key)}=${encode(addressText(field))}`),
  ].join('&');
}
