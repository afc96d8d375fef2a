/** Words a minute of somebody who reads to learn and looks at each picture: common practice. */
const PACE = 180;

/** Whole minutes that so many words take to read. */
export const readingMinutes = (words: number): number => Math.ceil(words / PACE);
