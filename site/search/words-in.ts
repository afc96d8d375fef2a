import { tellingWords } from './words.ts';

/** The telling words of a text, each once: what is searched and never shown need not be kept whole. */
export const wordsIn = (text: string, said = ''): string => {
  const known = new Set(tellingWords(said));
  return [...new Set(tellingWords(text))].filter((word) => !known.has(word)).join(' ');
};
