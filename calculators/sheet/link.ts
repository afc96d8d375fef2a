import { checkSum } from './check-sum.ts';
import { recounted } from './clock.ts';
import { SheetError } from './errors.ts';
import { linkDays, withLinkDays } from './link-days.ts';
import { mendedFragment } from './link-letters.ts';
import { isRecord } from './migrate.ts';
import { documentOf, type Engine } from './model.ts';
import { parseJson, readDocument, readEngine } from './validate.ts';

const KEY = 'engine';
/**
 * How the letters after `engine=` are made: plain JSON or the same deflated, as in the links of
 * old; or either after a check sum of the letters; or either of these with the days of the readings
 * that stand, where the log itself is left behind.
 */
const FORMS = {
  '0.': { deflated: false, summed: false, dated: false },
  '1.': { deflated: true, summed: false, dated: false },
  '2.': { deflated: false, summed: true, dated: false },
  '3.': { deflated: true, summed: true, dated: false },
  '4.': { deflated: false, summed: true, dated: true },
  '5.': { deflated: true, summed: true, dated: true },
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

/** What a link takes along of the log: the readings that stand now with their days, or all of it. */
export type LinkHolds = 'last' | 'all';

/**
 * The fragment of a link, without the `#`, that holds an engine; not the texts that could not be
 * read, which are sent to nobody. Throws a SheetError where it would be too long to be read.
 */
export async function engineFragment(engine: Engine, holds: LinkHolds = 'all'): Promise<string> {
  const plain = typeof CompressionStream === 'undefined';
  const form: Form = holds === 'all' ? (plain ? '2.' : '3.') : plain ? '4.' : '5.';
  const sent = holds === 'all' ? { ...engine, unread: {} } : recounted({ ...engine, unread: {} });
  const told = FORMS[form].dated
    ? { ...documentOf([{ ...sent, log: [] }]), days: linkDays(sent) }
    : documentOf([sent]);
  const bytes = new TextEncoder().encode(JSON.stringify(told));
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

const startsWithKey = (fragment: string): boolean => fragment.startsWith(`${KEY}=`);

/** So much of a longest link may be breaks that a page has put in, coded with nine letters each. */
const WITH_BREAKS = 4 * LONGEST;

const mended = (fragment: string): string =>
  fragment.length > WITH_BREAKS ? fragment : mendedFragment(fragment);

/** Whether a fragment is meant to hold an engine. */
export const holdsEngine = (fragment: string): boolean => startsWithKey(mended(fragment));

/** Whether a letter changed on the way would show: links of old have no check sum. */
export function hasCheckSum(fragment: string): boolean {
  const form = mended(fragment).slice(KEY.length + 1, KEY.length + 3);
  return isForm(form) && FORMS[form].summed;
}

/** Marks of emphasis that a forum may have left at the end: `-` and `_` are letters of links as well. */
const UNMARKED = /[_-]{1,3}$/u;

/**
 * The engine in a fragment (without the `#`), whatever a page or a forum has put in or after it;
 * throws a SheetError with a sentence.
 */
export async function engineFromFragment(fragment: string): Promise<Engine> {
  const whole = mended(fragment);
  const marks = hasCheckSum(whole) ? (UNMARKED.exec(whole)?.[0].length ?? 0) : 0;
  for (let cut = 1; cut <= marks; cut += 1) {
    const fewer = whole.slice(0, -cut);
    if (isAsSummed(fewer)) return engineOf(fewer);
  }
  return engineOf(whole);
}

/** Whether the letters of a link with a check sum are those that it was made of. */
function isAsSummed(fragment: string): boolean {
  const [form = '', sum = '', letters = ''] = fragment.slice(KEY.length + 1).split('.');
  return isForm(`${form}.`) && sumOf(`${form}.` as Form, letters) === `${sum}.`;
}

async function engineOf(fragment: string): Promise<Engine> {
  const damaged = new SheetError(
    'damaged-link',
    'The link is cut short or changed, so its engine cannot be read. Ask for it again, or for the file. Nothing here was changed.',
  );
  const body = fragment.slice(KEY.length + 1);
  if (!startsWithKey(fragment) || body.length > LONGEST) throw damaged;
  const form = body.slice(0, 2);
  if (!isForm(form)) throw damaged;
  const { deflated, summed, dated } = FORMS[form];
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
  const value = parseJson(source);
  const { days, ...document } = isRecord(value) ? value : {};
  const { engines } = readDocument(dated ? document : value);
  const [engine] = engines;
  if (!engine || engines.length > 1) throw damaged;
  if (!dated) return engine;
  const whole = withLinkDays(engine, days);
  if (!whole) throw damaged;
  return readEngine(whole);
}
