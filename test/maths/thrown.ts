import { MathsError } from '../../calculators/maths/errors.ts';

/** The error of the maths package that `action` throws; fails the test if it throws none. */
export function thrown(action: () => unknown): MathsError {
  try {
    action();
  } catch (error) {
    if (error instanceof MathsError) return error;
    throw error;
  }
  throw new Error('expected a MathsError, and none was thrown');
}
