import { Absent, impossible } from './types.ts';
import { MathsError } from '../maths/numeric/errors.ts';

/**
 * What `run` returns, or its sentence where the figures allow no answer. For side questions, which
 * must not take the main results with them.
 */
export function attempt<T>(run: () => T): T | Absent {
  try {
    return run();
  } catch (error) {
    if (error instanceof MathsError) return impossible(error.message, error.quantities);
    throw error;
  }
}

/** `of(value)`, or the sentence where there is no value. */
export function ifThere<T, U>(value: T | Absent, of: (value: T) => U): U | Absent {
  return value instanceof Absent ? value : of(value);
}

/** Runs `run`; an error that blames `quantity` blames the field `key` instead. */
export function blameField<T>(key: string, quantity: string, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof MathsError)) throw error;
    const keys = error.quantities.map((name) => (name === quantity ? key : name));
    throw new MathsError(error.code, keys, error.message);
  }
}
