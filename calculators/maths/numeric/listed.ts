/**
 * Words one after another as a sentence has them: “1”, “1 and 2”, “1, 2 and 3”; nothing of none. Those
 * that hold a comma are parted by semicolons, the last as well.
 */
export function listed(words: readonly (string | number)[], last = 'and'): string {
  const texts = words.map(String);
  const apart = texts.some((text) => text.includes(','));
  return texts.length < 2
    ? texts.join('')
    : `${texts.slice(0, -1).join(apart ? '; ' : ', ')}${apart ? ';' : ''} ${last} ${texts.at(-1)!}`;
}
