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

/** Runs `run`; an error blames the fields that `fieldsOf` gives for the quantities that it names. */
export function blameFields<T>(
  fieldsOf: (quantities: readonly string[]) => readonly string[],
  run: () => T,
): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof MathsError)) throw error;
    throw new MathsError(error.code, fieldsOf(error.quantities), error.message);
  }
}

/** Runs `run`; an error that blames `quantity` blames the field `key` instead. */
export const blameField = <T>(key: string, quantity: string, run: () => T): T =>
  blameFields((names) => names.map((name) => (name === quantity ? key : name)), run);
