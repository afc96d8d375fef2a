import { checkSum } from './check-sum.ts';
import { SheetError } from './errors.ts';
import { documentOf, type Engine } from './model.ts';
import { parseDocument } from './validate.ts';

const KEY = 'engine';
/**
 * How the letters after `engine=` are made: plain JSON or the same deflated, as in the links of
 * old; or either after a check sum of the letters.
 */
const FORMS = {
  '0.': { deflated: false, summed: false },
  '1.': { deflated: true, summed: false },
  '2.': { deflated: false, summed: true },
  '3.': { deflated: true, summed: true },
} as const;
type Form = keyof typeof FORMS;
const isForm = (text: string): text is Form => Object.hasOwn(FORMS, text);

/** The longest fragment that is made or looked at, and the most that it unpacks to, in characters. */
const LONGEST = 200_000;
const UNPACKED = 1_000_000;

const sumOf = (form: Form, letters: string): string => `${checkSum(form + letters)}.`;

function toLetters(bytes: Uint8Array): string {
  const binary = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function fromLetters(letters: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(letters.replaceAll('-', '+').replaceAll('_', '/')), (letter) =>
    letter.charCodeAt(0),
  );
}

/**
 * Runs bytes through a stream, giving up beyond `most` bytes: a small link can unpack to a flood.
 * All in memory: to read a `Blob` is I/O in WebKit, which fails when the page is being left.
 */
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
  most: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const reader = new Response(bytes).body!.pipeThrough(stream).getReader();
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    pieces.push(value);
    size += value.length;
    if (size > most) {
      await reader.cancel();
      throw new SheetError('too-large', 'The link unpacks to more than an engine sheet can hold.');
    }
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/** What a link takes along of the log: the readings that stand now without their days, or all of it. */
export type LinkHolds = 'last' | 'all';

/**
 * The fragment of a link, without the `#`, that holds an engine; not the texts that could not be
 * read, which are sent to nobody. Throws a SheetError where it would be too long to be read.
 */
export async function engineFragment(engine: Engine, holds: LinkHolds = 'all'): Promise<string> {
  const { log } = engine;
  const sent: Engine = { ...engine, unread: {}, log: holds === 'all' ? log : [] };
  const bytes = new TextEncoder().encode(JSON.stringify(documentOf([sent])));
  const form: Form = typeof CompressionStream === 'undefined' ? '2.' : '3.';
  const letters =
    bytes.length > UNPACKED
      ? undefined
      : toLetters(
          FORMS[form].deflated
            ? await through(bytes, new CompressionStream('deflate-raw'), UNPACKED)
            : bytes,
        );
  if (letters === undefined || letters.length > LONGEST - 20) {
    throw new SheetError(
      'too-large',
      'This engine holds more than a link can carry. Save it to a file and send that.',
    );
  }
  return `${KEY}=${form}${sumOf(form, letters)}${letters}`;
}

/** Whether a fragment is meant to hold an engine. */
export const holdsEngine = (fragment: string): boolean => fragment.startsWith(`${KEY}=`);

/** Whether a letter changed on the way would show: links of old have no check sum. */
export function hasCheckSum(fragment: string): boolean {
  const form = fragment.slice(KEY.length + 1, KEY.length + 3);
  return isForm(form) && FORMS[form].summed;
}

/** The engine in a fragment (without the `#`); throws a SheetError with a sentence. */
export async function engineFromFragment(fragment: string): Promise<Engine> {
  const damaged = new SheetError(
    'damaged-link',
    'The link is cut short or changed, so its engine cannot be read. Ask for it again, or for the file. Nothing here was changed.',
  );
  const body = fragment.slice(KEY.length + 1);
  if (!holdsEngine(fragment) || body.length > LONGEST) throw damaged;
  const form = body.slice(0, 2);
  if (!isForm(form)) throw damaged;
  const { deflated, summed } = FORMS[form];
  const sumLength = summed ? sumOf(form, '').length : 0;
  const letters = body.slice(2 + sumLength);
  if (summed && body.slice(2, 2 + sumLength) !== sumOf(form, letters)) throw damaged;
  let source: string;
  try {
    const packed = fromLetters(letters);
    const bytes = deflated
      ? await through(packed, new DecompressionStream('deflate-raw'), UNPACKED)
      : packed;
    source = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    throw error instanceof SheetError ? error : damaged;
  }
  const { engines } = parseDocument(source);
  const [engine] = engines;
  if (!engine || engines.length > 1) throw damaged;
  return engine;
}
