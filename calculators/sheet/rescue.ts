import { SheetError } from './errors.ts';
import { isRecord, migrate } from './migrate.ts';
import { LIMITS, type Engine } from './model.ts';
import { parseJson, readDocument, readEngine } from './validate.ts';

/** What could be read of a text that should hold engines. */
export interface Rescued {
  readonly engines: readonly Engine[];
  /** What could not, each in a sentence. */
  readonly lost: readonly string[];
}

/** Where the group that starts at `from` ends, just after its brace; nothing if it is cut short. */
function endOfGroup(source: string, from: number): number | undefined {
  let depth = 0;
  let quoted = false;
  for (let at = from; at < source.length; at += 1) {
    const letter = source[at];
    if (quoted) {
      if (letter === '\\') at += 1;
      else if (letter === '"') quoted = false;
    } else if (letter === '"') quoted = true;
    else if (letter === '{' || letter === '[') depth += 1;
    else if (letter === '}' || letter === ']') {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
  }
  return undefined;
}

/** The document of a text that breaks off: the engines that stand whole in it. */
function fromBroken(source: string): unknown {
  const format = /"format"\s*:\s*("[^"\\]{0,40}")/u.exec(source)?.[1];
  const version = /"version"\s*:\s*(\d{1,6})/u.exec(source)?.[1];
  const list = /"engines"\s*:\s*\[/u.exec(source);
  if (format === undefined || version === undefined || !list) return undefined;
  const engines: unknown[] = [];
  let at = list.index + list[0].length;
  while (engines.length < LIMITS.engines) {
    at += /^[\s,]*/u.exec(source.slice(at, at + 100))![0].length;
    const end = source[at] === '{' ? endOfGroup(source, at) : undefined;
    if (end === undefined) break;
    try {
      engines.push(JSON.parse(source.slice(at, end)));
    } catch {
      engines.push(undefined);
    }
    at = end;
  }
  return { format: JSON.parse(format), version: Number(version), engines };
}

/** A file's document, or the one within what a browser keeps. */
const documentIn = (value: unknown): unknown =>
  isRecord(value) && isRecord(value.sheet) ? value.sheet : value;

/** The engines of a document that are whole, one by one; none of a version that is not known. */
function wholeOnes(document: unknown, broken: boolean): Rescued {
  const { engines } = migrate(document);
  if (!Array.isArray(engines)) return { engines: [], lost: [] };
  const whole: Engine[] = [];
  const lost: string[] = [];
  for (const [i, candidate] of (engines as unknown[]).entries()) {
    const where = `Engine ${String(i + 1)}`;
    if (whole.length === LIMITS.engines) {
      lost.push(`${where} and those after it: there is room for ${String(LIMITS.engines)}.`);
      break;
    }
    try {
      whole.push(readEngine(candidate, where));
    } catch (error) {
      if (!(error instanceof SheetError)) throw error;
      lost.push(error.message.replace(' Nothing was taken from it.', ''));
    }
  }
  if (broken) lost.push('What came after the place where the text breaks off.');
  return { engines: whole, lost };
}

/**
 * The engines of a file, or of what a browser kept, as far as they can be read; throws a SheetError
 * where none can.
 */
export function openText(source: string): Rescued {
  let value: unknown;
  let broken = false;
  let refusal: SheetError;
  try {
    value = documentIn(parseJson(source));
    return { engines: readDocument(value).engines, lost: [] };
  } catch (error) {
    if (!(error instanceof SheetError)) throw error;
    refusal = error;
  }
  if (refusal.code === 'not-json') {
    value = fromBroken(source);
    broken = true;
  }
  if (refusal.code !== 'invalid' && (refusal.code !== 'not-json' || value === undefined)) {
    throw refusal;
  }
  const rescued = wholeOnes(value, broken);
  if (rescued.engines.length === 0) throw refusal;
  return rescued;
}

/** The engines that are whole in a text that may not be. */
export function rescue(source: string): readonly Engine[] {
  try {
    return openText(source).engines;
  } catch (error) {
    if (!(error instanceof SheetError)) throw error;
    return [];
  }
}
