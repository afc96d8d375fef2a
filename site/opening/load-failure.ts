import { MathsError } from '../../calculators/maths/numeric/errors.ts';

/** How the engines of browsers say that a script could not be fetched. */
const NOT_FETCHED =
  /dynamically imported module|importing a module script failed|unable to preload css/i;

/** Whether an error says that a part of the site did not come, and not that the part is at fault. */
export const didNotCome = (error: unknown): boolean =>
  error instanceof Error && NOT_FETCHED.test(error.message);

/**
 * What to say when something asked for could not be done: that a part of the site did not come, the
 * sentence that the maths gives, or that the site is at fault.
 */
export function failureWords(error: unknown): string {
  if (didNotCome(error)) {
    return 'A part of the site that this needs did not come. Check the connection and try again; where it still fails, load the page again.';
  }
  if (error instanceof MathsError) return error.message;
  reportError(error);
  return 'The fault is the site’s, not yours: nothing that you typed is lost.';
}
