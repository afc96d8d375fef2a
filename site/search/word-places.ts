import MiniSearch from 'minisearch';
import type { Found, Part } from './found.ts';
import { tellingWords } from './words.ts';

/** An entry of the index: a thing that can be found, or a part of it. */
export interface Entry {
  readonly id: number;
  readonly of: Found;
  readonly part?: Part;
  readonly title: string;
  readonly also?: string | undefined;
  readonly purpose?: string | undefined;
  readonly words?: string | undefined;
}

/** What an entry has of a word. */
export interface Place {
  readonly score: number;
  /** How surely it is about the word: 1 where a name of it holds it. */
  readonly held: number;
}

/** Where a word stands, and how much it tells of what is asked: the rarer, the more. */
export interface WordPlaces {
  readonly weight: number;
  readonly at: ReadonlyMap<Entry, Place>;
}

/** Said somewhere in what is read, and not in what stands in the list. */
const IN_TEXT = 0.75;
/** Nothing holds the word as it was typed, and it may be misspelt. */
const GUESSED = 0.5;
/** A bare number tells less than a word: 5 litres, jet 110. */
const NUMBER = 0.4;

/** Makes what tells where a word stands, which is worked out once for each. */
export function makeWordPlaces(entries: readonly Entry[]): (word: string) => WordPlaces {
  const index = new MiniSearch<Entry>({
    fields: ['title', 'also', 'purpose', 'words'],
    tokenize: (text, field) => (field === 'words' ? text.split(' ') : tellingWords(text)),
    processTerm: (word) => word,
    searchOptions: {
      tokenize: (word) => [word],
      boost: { title: 6, also: 4, purpose: 2 },
    },
  });
  index.addAll(entries);
  const known = new Map<string, WordPlaces>();

  function look(word: string): WordPlaces {
    const number = /^\d/.test(word);
    const exact = index.search(word);
    const begun =
      exact.length > 0 || number || word.length < 3 ? exact : index.search(word, { prefix: true });
    const guessed = begun.length === 0 && word.length > 4;
    const found = guessed ? index.search(word, { fuzzy: 0.2 }) : begun;
    return {
      weight: Math.log1p(entries.length / Math.max(1, found.length)) * (number ? NUMBER : 1),
      at: new Map(
        found.map(({ id, score, match }) => {
          const inText = Object.values(match).every((fields) => fields.join() === 'words');
          const held = (inText ? IN_TEXT : 1) * (guessed ? GUESSED : 1);
          return [entries[id as number]!, { score, held }];
        }),
      ),
    };
  }

  return (word) => {
    const places = known.get(word) ?? look(word);
    known.set(word, places);
    return places;
  };
}
