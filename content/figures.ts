import { fixed } from '../calculators/frame/format.ts';

/** A length for a sentence, which no line end parts from its unit: all its digits, or so many. */
export function mm(value: number, decimals?: number): string {
  return `${decimals === undefined ? value : fixed(value, decimals)}\u00a0mm`;
}
