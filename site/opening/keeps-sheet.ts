/** Whether this browser keeps an engine sheet at all; only then is its code fetched. */
export function keepsSheet(): boolean {
  try {
    return localStorage.getItem('gudgeon.sheet') !== null;
  } catch {
    return false;
  }
}
