/** What a sentence tells the reader to type, in the quotes of a text: type “0.014 in” or “0.014 thou”. */
const OFFERED = /\btype “[^“”]+”(?: or “[^“”]+”)?/giu;

/** The texts that a sentence about a field offers to type in place of what stands there. */
export const offeredIn = (sentence: string): string[] => [
  ...new Set(
    [...sentence.matchAll(OFFERED)].flatMap(([words]) =>
      [...words.matchAll(/“([^“”]+)”/gu)].map(([, text]) => text!),
    ),
  ),
];
