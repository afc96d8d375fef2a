import { ASIDE, hasDatabase, KEY } from '../opening/keeps-sheet.ts';
import { rememberedLengths } from '../opening/preferences.ts';

/** Whether the browser keeps a sheet, has put one aside, or lets the page keep nothing, which is to be said. */
function isKept(): boolean {
  try {
    return [KEY, ASIDE].some((key) => localStorage.getItem(key) !== null);
  } catch {
    return true;
  }
}

/** Whether the sheet has something to show that the server did not render. */
export const hasWork = (): boolean =>
  location.hash !== '' || rememberedLengths() !== 'mm' || isKept();

/** Calls back where a second copy may hold what the browser has lost. */
export async function ifCopied(found: () => void): Promise<void> {
  // A browser that forbids its database has nothing in it.
  if (await hasDatabase().catch(() => false)) found();
}
