/**
 * What was done on a bench, in words: `put:stop,turn:-30,zero`. The words are a part of the address
 * and never change their meaning.
 */
import type { Act } from './bench.ts';
import type { FloatAct } from './float.ts';
import type { SlidesAct } from './slides.ts';

/** What follows the colon: a figure, one of several counted from 1, or one of some words. */
type Kind = 'figure' | 'place' | 'switch' | readonly string[];
export type Words = Readonly<
  Record<
    string,
    readonly [field: string, kind: Kind] | readonly [field?: undefined, kind?: undefined]
  >
>;

export const crankWords = {
  turn: ['by', 'figure'],
  kick: [],
  put: ['inHole', ['nothing', 'indicator', 'stop']],
  straighten: [],
  zero: [],
  cylinder: ['cylinder', 'place'],
  disc: ['by', 'figure'],
  'disc-zero': [],
  coil: ['on', 'switch'],
  screw: ['by', 'figure'],
  plate: ['by', 'figure'],
  slot: ['by', 'figure'],
  note: [],
  'strike-out': ['note', 'place'],
  pointer: ['by', 'figure'],
  'pointer-zero': [],
} as const satisfies Words & Record<Act['act'], unknown>;

export const slidesWords = {
  slide: ['slide', 'place'],
  adjust: ['by', 'figure'],
  try: ['drill', 'figure'],
  grip: [],
} as const satisfies Words & Record<SlidesAct['act'], unknown>;

export const floatWords = {
  fill: [],
  drain: [],
  bend: ['by', 'figure'],
} as const satisfies Words & Record<FloatAct['act'], unknown>;

/** No act moves anything further at once: ten turns of the crank. */
const FURTHEST = 3600;

function argumentOf(kind: Kind, text: string): unknown {
  if (kind === 'switch') return text === 'on' ? true : text === 'off' ? false : undefined;
  if (kind === 'place') return /^[1-9]\d?$/.test(text) ? Number(text) - 1 : undefined;
  if (kind !== 'figure') return kind.includes(text) ? text : undefined;
  const figure = text === '' ? Number.NaN : Number(text);
  return Math.abs(figure) <= FURTHEST ? figure : undefined;
}

function writtenArgument(kind: Kind, value: unknown): string {
  if (kind === 'switch') return value === true ? 'on' : 'off';
  return kind === 'place' ? String((value as number) + 1) : String(value);
}

/** Acts in words. */
export const writeActs = (words: Words, acts: readonly { readonly act: string }[]): string =>
  acts
    .map((act) => {
      const [field, kind] = words[act.act]!;
      if (field === undefined) return act.act;
      return `${act.act}:${writtenArgument(kind, (act as Record<string, unknown>)[field])}`;
    })
    .join(',');

/** The acts that words tell of; nothing where any of them cannot be read. */
export function readActs<A>(words: Words, text: string): A[] | undefined {
  if (text === '') return [];
  const acts: A[] = [];
  for (const word of text.split(',')) {
    const [name = '', argument] = word.split(':', 2);
    const spec = Object.hasOwn(words, name) ? words[name]! : undefined;
    if (spec === undefined || (spec[0] === undefined) !== (argument === undefined))
      return undefined;
    if (spec[0] === undefined) {
      acts.push({ act: name } as A);
      continue;
    }
    const value = argumentOf(spec[1], argument!);
    if (value === undefined) return undefined;
    acts.push({ act: name, [spec[0]]: value } as A);
  }
  return acts;
}
