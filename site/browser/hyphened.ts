/** A title in pieces: every second one, from the second on, is a word with a hyphen in it. */
export const hyphenedApart = (title: string): string[] =>
  title.split(/([\p{L}\d]+(?:-[\p{L}\d]+)+)/u);
