import { concernsSheet, hasDatabase } from '../opening/keeps-sheet.ts';
import { rememberedLengths } from '../opening/preferences.ts';

/** Whether the sheet has something to show that the server did not render. */
export const hasWork = (): boolean =>
  location.hash !== '' || rememberedLengths() !== 'mm' || concernsSheet();

/** Calls back where a second copy may hold what the browser has lost. */
export async function ifCopied(found: () => void): Promise<void> {
  // A browser that forbids its database has nothing in it.
  if (await hasDatabase().catch(() => false)) found();
}
