/** Words one after another as a sentence has them: “1”, “1 and 2”, “1, 2 and 3”; nothing of none. */
export function listed(words: readonly (string | number)[], last = 'and'): string {
  const texts = words.map(String);
  return texts.length < 2
    ? texts.join('')
    : `${texts.slice(0, -1).join(', ')} ${last} ${texts.at(-1)!}`;
}
