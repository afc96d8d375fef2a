/** What a name leaves for a file: letters and digits of any script, and single strokes. */
const asFile = (name: string): string =>
  name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');

/** A file's name, by engine and day: "engine-sheet-bench-twin-2026-03-21.json". */
export const fileName = (what: string, name: string, on: string, ending: string): string =>
  `${[what, [...asFile(name)].slice(0, 60).join('').replace(/-$/, ''), on].filter(Boolean).join('-')}.${ending}`;
