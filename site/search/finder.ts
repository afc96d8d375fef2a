import MiniSearch, { type Query, type SearchResult } from 'minisearch';

/** A thing that can be found. */
export interface Found {
  readonly id: number;
  /** Address below the site's root. */
  readonly url: string;
  readonly kind: 'calculator' | 'article' | 'term' | 'practice' | 'fault' | 'step' | 'page';
  readonly title: string;
  /** Shown under the title. */
  readonly purpose: string;
  /** Other names. */
  readonly also: string;
  readonly text: string;
}

export interface SearchIndex {
  readonly documents: readonly Found[];
  /** Words and phrases of which each means the same as its neighbours. */
  readonly alike: readonly (readonly string[])[];
}

/** At most this many ways of asking the same are tried, so that a long question stays quick. */
const MOST_WAYS = 24;

const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}.]+/gu, ' ')
    .trim();

/** Words that say nothing of what is asked for. "On" and "no" do: "runs on two", "no spark". */
const LITTLE = new Set(
  'a an and are can do does for from get gets how i in is it me mean means much my of or please should that the this to what when where which why with'.split(
    ' ',
  ),
);

/** What everybody asks about here: no name of a thing hangs on it. */
const UNDERSTOOD = new Set(['bike', 'engine', 'motor', 'old']);

/** The words that tell one thing from another, each with a space about it. */
const said = (text: string): string =>
  ` ${plain(text)
    .split(' ')
    .filter((word) => !LITTLE.has(word) && !UNDERSTOOD.has(word))
    .map(singular)
    .join(' ')} `;

/** A measured figure says nothing of what is asked about: "0.094 in before top". */
const MEASURED = /^\d*\.\d+$/;

/** The same with its unit, so that a whole number is not taken for one of cylinders or a year. */
const WITH_UNIT =
  /(?<![\p{L}\d.,/])(?:\d+[ -])?\d*[.,/⁄]?\d+\s*(?=(?:mm|inch(?:es)?|in|thou|deg|degrees?)(?!\p{L}))/giu;

/** "Rods" finds "rod", and "gauges" finds "gauge". */
const singular = (word: string): string =>
  /[^s]s$/.test(word) && word.length > 3 ? word.slice(0, -1) : word;

/** The question, and the same question with each phrase exchanged for one that means the same. */
export function waysOfAsking(question: string, alike: SearchIndex['alike']): string[] {
  const asked = ` ${plain(question)} `;
  const ways = new Set([asked.trim()]);
  for (const group of alike) {
    const phrases = group.map(plain);
    for (const phrase of phrases) {
      if (!asked.includes(` ${phrase} `)) continue;
      for (const other of phrases) ways.add(asked.replace(` ${phrase} `, ` ${other} `).trim());
    }
  }
  return [...ways].slice(0, MOST_WAYS);
}

/** Makes what answers a question with the things found, best first. */
export function makeFinder({ documents, alike }: SearchIndex): (question: string) => Found[] {
  const search = new MiniSearch<Found>({
    fields: ['title', 'also', 'purpose', 'text'],
    processTerm: (term) => {
      const word = plain(term);
      return word === '' || LITTLE.has(word) || MEASURED.test(word) ? null : singular(word);
    },
    searchOptions: {
      boost: { title: 6, also: 4, purpose: 2 },
      prefix: (term) => term.length > 2,
      fuzzy: (term) => (term.length > 4 ? 0.2 : false),
    },
  });
  search.addAll(documents);
  const byId = new Map(documents.map((found) => [found.id, found]));
  const namesOf = new Map(
    documents.map((thing) => [
      thing,
      [thing.title, ...thing.also.split(',')].map(said).filter((name) => name.trim() !== ''),
    ]),
  );
  const ask = (ways: readonly string[], combineWith: 'AND' | 'OR'): SearchResult[] => {
    const queries: Query[] = ways.map((way, i) => ({
      queries: [way],
      combineWith,
      // What was typed counts for more than what means the same.
      boostDocument: () => (i === 0 ? 1 : 0.6),
    }));
    return search.search({ queries, combineWith: 'OR' });
  };
  return (question) => {
    /** What is asked of a figure, whatever the figure is: "22 degrees". */
    const bare = question.replaceAll(WITH_UNIT, ' ');
    const ways = [...new Set([question, bare].flatMap((asked) => waysOfAsking(asked, alike)))];
    const all = ask(ways, 'AND');
    const found = (all.length > 0 ? all : ask(ways, 'OR')).map(({ id }) => byId.get(id as number)!);
    // What is called exactly as it was typed stands first, then what the question holds the name of.
    const first = [question, bare].map(said).flatMap((asked) => {
      const called = (thing: Found): boolean => namesOf.get(thing)!.includes(asked);
      /** A name of two words or more within the question: "my engine kicks back". */
      const named = (thing: Found): boolean =>
        thing.kind !== 'term' &&
        namesOf.get(thing)!.some((name) => name.trim().includes(' ') && asked.includes(name));
      return [...found.filter(called), ...documents.filter(named)];
    });
    return [...new Set([...first, ...found])];
  };
}
