/** Words of a line by which it is known: enough to tell it, few enough to outlive a better wording. */
const WORDS = 6;

/** What a line of the list of the first start is called in a log: its first words. */
export const listLine = (line: string): string =>
  line
    .toLowerCase()
    .split(/[^a-z0-9]+/u)
    .filter(Boolean)
    .slice(0, WORDS)
    .join('-')
    .slice(0, 100);
