import { fixed } from '../calculators/frame/text/format.ts';

/** A length for a sentence, which no line end parts from its unit: all its digits, or so many. */
export function mm(value: number, decimals?: number): string {
  return `${decimals === undefined ? value : fixed(value, decimals)}\u00a0mm`;
}

/**
 * The change of fuel, in per cent, that is not worth another jet or groove, since jets of one number
 * differ by nearly as much among themselves: common practice.
 */
export const NOT_WORTH_A_JET = 3;
