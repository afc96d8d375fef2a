import { numberAndUnit } from './parse.ts';

/** Between several readings of one quantity, typed into its one box: “2.31; 2.35; 2.28”. */
export const BETWEEN = ';';
/** What else is typed between them: a comma with a blank after it, which is no decimal one. */
const PARTED = /;|,\s+(?=[+\-−]?[\d.,])/u;

/**
 * The readings in a text, one part each; nothing where there is no more than one figure. A last
 * semicolon, with the next reading still to come, changes nothing.
 */
export function readingParts(typed: string): string[] | undefined {
  if (!PARTED.test(typed)) return undefined;
  const parts = typed
    .split(PARTED)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  return parts.length < 2 ? undefined : parts;
}

/** A text of one figure without the semicolon after it. */
export const withoutEnd = (typed: string): string => typed.replace(/[\s;]*;\s*$/, '');

/**
 * The readings with the unit that was said once for all of them: “16; 17; 16 thou”. Nothing where some
 * have different units and others none, since these could be any.
 */
export function inOneUnit(parts: readonly string[]): string[] | undefined {
  const pieces = parts.map((part) => numberAndUnit(part));
  const said = [...new Set(pieces.flatMap((piece) => (piece?.unit ? [piece.unit] : [])))];
  const bare = pieces.some((piece) => piece?.unit === '');
  if (said.length > 1 && bare) return undefined;
  return parts.map((part, i) =>
    said.length === 1 && pieces[i]?.unit === '' ? `${part} ${said[0]!}` : part,
  );
}
