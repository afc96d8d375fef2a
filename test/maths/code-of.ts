import { MathsError } from '../../calculators/maths/errors.ts';

/** The code of the MathsError that `run` throws. */
export function codeOf(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof MathsError) return error.code;
    throw error;
  }
  return 'no error';
}
