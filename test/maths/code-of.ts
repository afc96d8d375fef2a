import { thrown } from './thrown.ts';

/** The code of the MathsError that `run` throws, which must have a whole sentence to say. */
export function codeOf(run: () => unknown): string {
  return thrown(run).code;
}
