import type { SearchIndex } from './found.ts';
import { plain } from './words.ts';

/** At most this many ways of asking the same are tried, so that a long question stays quick. */
const MOST_WAYS = 24;

/** The question, and the same question with each phrase exchanged for one that means the same. */
export function waysOfAsking(question: string, alike: SearchIndex['alike']): string[] {
  const asked = ` ${plain(question)} `;
  const ways = new Set([asked.trim()]);
  for (const group of alike) {
    const phrases = group.map(plain);
    for (const phrase of phrases) {
      if (!asked.includes(` ${phrase} `)) continue;
      for (const other of phrases) ways.add(asked.replace(` ${phrase} `, ` ${other} `).trim());
    }
  }
  return [...ways].slice(0, MOST_WAYS);
}
