import { keepTyped, keptTyped } from './keeper.ts';

/** Enough for every box of several engines; the oldest go first. */
const MOST = 1000;

type Entry = readonly [place: string, text: string, means: string];

function entries(): readonly Entry[] {
  try {
    const read: unknown = JSON.parse(keptTyped() ?? '[]');
    if (!Array.isArray(read)) return [];
    return read.filter(
      (entry): entry is Entry =>
        Array.isArray(entry) &&
        entry.length === 3 &&
        entry.every((part) => typeof part === 'string'),
    );
  } catch {
    return [];
  }
}

/** The text last typed into a box, as long as it means the figure that stands there. */
export const rememberedText = (place: string, stands: string): string | undefined =>
  entries().find(([other, , means]) => other === place && means === stands)?.[1];

/**
 * Remembers how a figure was typed, where that differs from how it is written: 18 thou stays 18 thou
 * when the page comes back. The figure itself is kept in the sheet; this is only its wording.
 */
export function rememberText(place: string, text: string, means: string): void {
  const others = entries().filter(([other]) => other !== place);
  const next = text === means ? others : [...others, [place, text, means] as const];
  keepTyped(JSON.stringify(next.slice(-MOST)));
}
