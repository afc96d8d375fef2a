/**
 * A number for a sentence: at most five significant figures, no exponent for sizes met at a bench.
 */
export function sayNumber(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(5))) : 'not a number';
}
