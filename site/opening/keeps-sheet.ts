/** Where this browser keeps the engine sheet, and what could not be read of it. */
export const KEY = 'gudgeon.sheet';
export const ASIDE = 'gudgeon.sheet.aside';
/** Where its second copy lies. */
export const DATABASE = 'gudgeon';

/** Whether this browser keeps an engine sheet at all; only then is its code fetched. */
export function keepsSheet(): boolean {
  try {
    return localStorage.getItem(KEY) !== null;
  } catch {
    return false;
  }
}

/** Whether it keeps one, has put one aside, or lets the page keep nothing, which the sheet has to say. */
export function concernsSheet(): boolean {
  try {
    return [KEY, ASIDE].some((key) => localStorage.getItem(key) !== null);
  } catch {
    return true;
  }
}

/** Whether the database of the second copy has been made; a browser that cannot tell is asked as if it were. */
export async function hasDatabase(): Promise<boolean> {
  const all = indexedDB.databases as (() => Promise<IDBDatabaseInfo[]>) | undefined;
  if (!all) return true;
  const made = await all.call(indexedDB);
  return made.some(({ name }) => name === DATABASE);
}
