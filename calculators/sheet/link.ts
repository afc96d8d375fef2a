import { SheetError } from './errors.ts';
import { LIMITS, type Engine } from './model.ts';
import { parseDocument, writeDocument } from './validate.ts';

const KEY = 'engine';
/** How the letters after `engine=` are made: plain JSON, or the same deflated. */
const PLAIN = '0.';
const DEFLATED = '1.';
/** The longest fragment that is looked at, in characters. */
const LONGEST = 200_000;

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

/** The fragment of a link, without the `#`, that holds a whole engine. */
export async function engineFragment(engine: Engine): Promise<string> {
  const compact = JSON.stringify(JSON.parse(writeDocument([engine])));
  const bytes = new TextEncoder().encode(compact);
  if (typeof CompressionStream === 'undefined') return `${KEY}=${PLAIN}${toLetters(bytes)}`;
  const packed = await through(bytes, new CompressionStream('deflate-raw'), LIMITS.text);
  return `${KEY}=${DEFLATED}${toLetters(packed)}`;
}

/** Whether a fragment is meant to hold an engine. */
export const holdsEngine = (fragment: string): boolean => fragment.startsWith(`${KEY}=`);

/** The engine in a fragment (without the `#`); throws a SheetError with a sentence. */
export async function engineFromFragment(fragment: string): Promise<Engine> {
  const damaged = new SheetError(
    'damaged-link',
    'The link is cut short or changed, so its engine cannot be read. Ask for it again, or for the file. Nothing here was changed.',
  );
  const body = fragment.slice(KEY.length + 1);
  if (!holdsEngine(fragment) || body.length > LONGEST) throw damaged;
  const form = body.slice(0, 2);
  if (form !== PLAIN && form !== DEFLATED) throw damaged;
  let source: string;
  try {
    const letters = fromLetters(body.slice(2));
    const bytes =
      form === PLAIN
        ? letters
        : await through(letters, new DecompressionStream('deflate-raw'), LIMITS.text);
    source = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    throw error instanceof SheetError ? error : damaged;
  }
  const { engines } = parseDocument(source);
  const [engine] = engines;
  if (!engine || engines.length > 1) throw damaged;
  return engine;
}
