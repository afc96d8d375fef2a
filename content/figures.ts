import { fixed, withUnit } from '../calculators/frame/format.ts';

/** A length for a sentence, which no line end parts from its unit: all its digits, or so many. */
export function mm(value: number, decimals?: number): string {
  return withUnit(decimals === undefined ? String(value) : fixed(value, decimals), 'mm');
}
