import { SheetError } from './errors.ts';
import { LIMITS, type Engine, type KeptResult } from './model.ts';

/** Adds a result from a calculator; throws a SheetError where the sheet has no room for it. */
export function keep(engine: Engine, result: KeptResult): Engine {
  const { label, text, query } = result;
  const what = [...label].slice(0, 60).join('');
  if (engine.kept.length >= LIMITS.kept) {
    throw new SheetError(
      'list-full',
      `The list of results holds ${String(LIMITS.kept)}, which is all it has room for. Remove some in the sheet first, or copy this one as a link.`,
    );
  }
  if ([...label].length > LIMITS.line || [...text].length > LIMITS.line) {
    throw new SheetError(
      'too-long',
      `“${what}” is longer than the ${String(LIMITS.line)} characters that the list of results has room for. Copy it as a text instead.`,
    );
  }
  if (query.length > LIMITS.query) {
    throw new SheetError(
      'too-long',
      `The link back from “${what}” has ${String(query.length)} characters, and the list of results has room for ${String(LIMITS.query)}. Copy it as a link instead.`,
    );
  }
  return { ...engine, kept: [...engine.kept, result] };
}

export function dropKept(engine: Engine, index: number): Engine {
  return { ...engine, kept: engine.kept.filter((_, i) => i !== index) };
}
