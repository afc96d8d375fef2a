import { expect } from 'vitest';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';

/**
 * The error of the maths package that `action` throws; fails the test if it throws none, or one that
 * would leave the reader without a whole sentence.
 */
export function thrown(action: () => unknown): MathsError {
  try {
    action();
  } catch (error) {
    if (!(error instanceof MathsError)) throw error;
    expect(error.name).toBe('MathsError');
    expect(error.message).toMatch(/^[“\p{Lu}].{15,}\.$/u);
    expect(error.message).not.toMatch(/ {2}|undefined|NaN|Infinity/);
    return error;
  }
  throw new Error('expected a MathsError, and none was thrown');
}
