import { MathsError } from './errors.ts';

/** Digits for a figure that is exact, such as a count or a conversion: more than any bench needs. */
const EXACT_DIGITS = 12;

/**
 * How many decimals a figure may show, given how uncertain it is: down to the last digit of the
 * uncertainty that says anything. Two significant figures of it are kept when it begins with 1 or
 * 2, otherwise one: rounding then moves the figure by a sixth of its uncertainty at the most.
 *
 * @param uncertainty The ± of the figure in its own unit, more than 0.
 * @returns Decimals, −15 to 15. Negative where whole tens, hundreds, … are meant.
 * @throws MathsError `bad-uncertainty` when it is 0, negative or not a number.
 */
export function decimalsFor(uncertainty: number): number {
  if (!(uncertainty > 0) || !Number.isFinite(uncertainty)) {
    throw new MathsError(
      'bad-uncertainty',
      ['uncertainty'],
      `The uncertainty must be a number above 0, not ${sayNumber(uncertainty)}.`,
    );
  }
  const [digits, exponent] = uncertainty.toExponential(14).split('e');
  const kept = digits!.startsWith('1') || digits!.startsWith('2') ? 2 : 1;
  return Math.max(-15, Math.min(15, kept - 1 - Number(exponent)));
}

/**
 * A figure to so many decimals as a person rounds it: halves away from 0, whatever trace the reckoning
 * has left behind its twelfth digit. Never −0; the sign is the ASCII hyphen.
 *
 * @param value Finite, less than 1e21 from 0.
 * @param decimals 0 to 15.
 */
export function toDecimals(value: number, decimals: number): string {
  const [digits, exponent = '0'] = value.toPrecision(EXACT_DIGITS).split('e');
  const shifted = Number(`${digits!}e${String(Number(exponent) + decimals)}`);
  const whole = Math.sign(shifted) * Math.round(Math.abs(shifted));
  // One so long has no half to be moved.
  const rounded = Number.isSafeInteger(whole)
    ? Number(`${String(whole)}e-${String(decimals)}`)
    : value;
  const text = rounded.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/**
 * A number as plain decimal text that `Number()` turns back into the very same number; never in
 * exponent form.
 *
 * @throws MathsError `not-a-number` for anything that is not finite.
 */
export function plainDecimal(value: number): string {
  if (!Number.isFinite(value)) {
    throw new MathsError(
      'not-a-number',
      ['value'],
      'This figure has no value that could be written.',
    );
  }
  const [mantissa, exponent] = String(value).split('e');
  if (exponent === undefined) return mantissa!;
  const sign = value < 0 ? '-' : '';
  const [whole, fraction = ''] = mantissa!.replace('-', '').split('.');
  const power = Number(exponent);
  const digits = whole! + fraction;
  return power < 0
    ? `${sign}0.${'0'.repeat(-power - whole!.length)}${digits}`
    : `${sign}${digits.padEnd(whole!.length + power, '0')}`;
}

/** A number for a sentence: at most five significant figures. */
export function sayNumber(value: number): string {
  return Number.isFinite(value) ? plainDecimal(Number(value.toPrecision(5))) : 'no number at all';
}
