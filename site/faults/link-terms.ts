/** A term of the glossary and the names by which it stands in a text. */
export interface Named {
  readonly id: string;
  readonly names: readonly string[];
}

export interface LinkedTerm {
  readonly id: string;
  readonly words: string;
}

/** Names of one word that mean nothing else here; "set", "float" or "slot" are plain English too. */
const unmistakable: ReadonlySet<string> = new Set([
  'barrel',
  'boxer',
  'choke',
  'condenser',
  'crankcase',
  'cutaway',
  'dwell',
  'heel',
  'lean',
  'lobe',
  'magneto',
  'rich',
  'rotor',
  'squish',
  'tang',
  'twistgrip',
  'weak',
]);

/** Whether a name of the glossary is linked wherever it first stands. */
export const isLinked = (name: string): boolean =>
  name.includes(' ') || unmistakable.has(name.toLowerCase());

const escaped = (name: string): string => name.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);

/**
 * A text with the first mention of each term as a link to the glossary. `seen` holds what the reader
 * has met on the way here, and takes in what stands in this text.
 */
export function linkTerms(
  text: string,
  glossary: readonly Named[],
  seen: Set<string>,
): (string | LinkedTerm)[] {
  const names = glossary
    .flatMap(({ id, names }) => names.filter(isLinked).map((name) => ({ id, name })))
    .sort((a, b) => b.name.length - a.name.length);
  const ids = new Map(names.map(({ id, name }) => [name.toLowerCase(), id]));
  const found = new RegExp(
    String.raw`\b(${names.map(({ name }) => escaped(name)).join('|')})(?:s|es)?\b`,
    'giu',
  );
  const parts: (string | LinkedTerm)[] = [];
  let end = 0;
  for (const match of text.matchAll(found)) {
    const id = ids.get(match[1]!.toLowerCase())!;
    if (seen.has(id)) continue;
    seen.add(id);
    parts.push(text.slice(end, match.index), { id, words: match[0] });
    end = match.index + match[0].length;
  }
  return [...parts, text.slice(end)].filter((part) => part !== '');
}
