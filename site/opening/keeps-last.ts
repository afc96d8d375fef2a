/** Where this browser keeps the last figures that were given to each calculator. */
export const KEY = 'gudgeon.last';

/** Whether it keeps any of a calculator, which are offered once its code has come. */
export function keepsLast(slug: string): boolean {
  try {
    return localStorage.getItem(KEY)?.includes(`"${slug}":`) ?? false;
  } catch {
    return false;
  }
}
