/** What a sentence tells the reader to type, in the quotes of a text: type “3/32 in” or “3/32 mm”. */
const OFFERED = /\btype “[^“”]+”(?: or “[^“”]+”)?/giu;

/** The texts that a sentence about a field offers to type in place of what stands there. */
export const offeredIn = (sentence: string): string[] => [
  ...new Set(
    [...sentence.matchAll(OFFERED)].flatMap(([words]) =>
      [...words.matchAll(/“([^“”]+)”/gu)].map(([, text]) => text!),
    ),
  ),
];
