import { showFixed } from './format.ts';
import type { LengthDisplay } from './units.ts';

const MILLIMETRES = /([−-]?)(\d+(?:\.(\d+))?) mm\b(?![²³/])/g;

/**
 * A sentence of the maths package, which knows millimetres only, in the reader's lengths: each figure
 * of it with as many digits as it was written with.
 */
export function sentenceIn(sentence: string, lengths: LengthDisplay): string {
  if (lengths === 'mm') return sentence;
  return sentence.replaceAll(
    MILLIMETRES,
    (_, sign: string, figure: string, decimals: string | undefined) =>
      showFixed((sign === '' ? 1 : -1) * Number(figure), 'mm', decimals?.length ?? 0, lengths),
  );
}
