import type { Found, SearchIndex } from './found.ts';
import { waysOfAsking } from './ways-of-asking.ts';
import { makeWordPlaces, type Entry, type Place } from './word-places.ts';
import { plain, tellingWords } from './words.ts';

/** What is done stands before what is read: steps, faults and calculators before long articles. */
const KINDS: Readonly<Record<Found['kind'], number>> = {
  step: 1.5,
  fault: 1.5,
  calculator: 1.3,
  page: 1.2,
  term: 1.1,
  article: 0.8,
  practice: 0.6,
};

/** What means the same counts for less than what was typed. */
const OTHER_WAY = 0.7;

/** How much more a thing is worth whose name the question holds; a term that it names explains little. */
const NAMED = 2;
const TERM_NAMED = 1;
/** The same where its title is all that was asked. */
const TITLED = 2.5;

/** What everybody asks about here: no name of a thing hangs on it. */
const UNDERSTOOD = new Set(tellingWords('bike engine motor old'));

/** What is asked of a figure, whatever the figure is: "22 degrees", and not "180 degree twin". */
const WITH_UNIT =
  /(?<![\p{L}\d.,/])(?:\d+[ -])?\d*[.,/⁄]?\d+\s*(?=(?:mm|inch(?:es)?|in|thou|deg|degrees?)(?!\p{L}))/giu;

/** A thing that was found, by the way of asking that finds it best. */
interface Hit {
  readonly entry: Entry;
  /** 1 where it is called exactly as it was typed, and 2 for a fault, which is in more of a hurry than its word. */
  readonly called: number;
  readonly worth: number;
}

const isBetter = (a: Hit, b: Hit): boolean =>
  a.called === b.called ? a.worth > b.worth : a.called > b.called;

/** The words of a name or a question, each with a space about it. */
const said = (text: string): string =>
  ` ${tellingWords(text)
    .filter((word) => !UNDERSTOOD.has(word))
    .join(' ')} `;

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

/** Each thing that can be found, and each part of it. */
const entriesOf = (documents: readonly Found[]): Entry[] =>
  documents
    .flatMap((of): Omit<Entry, 'id'>[] => [
      { of, title: of.title, also: of.also, purpose: of.purpose, words: of.words },
      ...(of.parts ?? []).map((part) => ({ of, part, title: part.heading, words: part.words })),
    ])
    .map((entry, id) => ({ id, ...entry }));

/** What is shown of a hit: a part of an article leads to its own place. */
const shown = ({ entry: { of, part } }: Hit): Found =>
  part ? { ...of, url: `${of.url}#${part.id}`, title: `${of.title}: ${part.heading}` } : of;

/** Makes what answers a question with the things found, best first. */
export function makeFinder({ documents, alike }: SearchIndex): (question: string) => Found[] {
  const entries = entriesOf(documents);
  const placesOf = makeWordPlaces(entries);
  const heads = new Map(entries.filter(({ part }) => !part).map((head) => [head.of, head]));
  const namesOf = new Map(
    entries.map((entry) => [
      entry,
      [entry.title, ...(entry.also?.split(',') ?? [])].map(said).filter((name) => name.trim()),
    ]),
  );
  const weigh = (words: readonly string[]): number =>
    sum(words.map((word) => placesOf(word).weight));

  /** What one way of asking finds. */
  function hitsOf(way: string, typed: boolean): Hit[] {
    const words = [...new Set(tellingWords(way))];
    const asked = said(way);
    const all = weigh(words);
    /** The share of the question that is the longest name of two words or more within it. */
    const namedIn = (names: readonly string[]): number =>
      Math.max(
        0,
        ...names
          .filter((name) => name.trim().includes(' ') && asked.includes(name))
          .map((name) => weigh(name.trim().split(' ')) / all),
      );
    return [...new Set(words.flatMap((word) => [...placesOf(word).at.keys()]))].map((entry) => {
      const whole = entry.part ? [entry, heads.get(entry.of)!] : [entry];
      const places = words.map((word): Place & { weight: number } => {
        const { at, weight } = placesOf(word);
        const here = whole.flatMap((each) => at.get(each) ?? []);
        return {
          weight,
          score: sum(here.map(({ score }) => score)),
          held: Math.max(0, ...here.map(({ held }) => held)),
        };
      });
      const cover = sum(places.map(({ weight, held }) => weight * held)) / all;
      const names = namesOf.get(entry)!;
      const called = names.includes(asked);
      const named =
        called && said(entry.title) === asked
          ? TITLED
          : (entry.of.kind === 'term' ? TERM_NAMED : NAMED) * (called ? 1 : namedIn(names));
      return {
        entry,
        called: typed && called && !entry.part ? (entry.of.kind === 'fault' ? 2 : 1) : 0,
        worth:
          cover ** 2 *
          sum(places.map(({ score }) => score)) *
          KINDS[entry.of.kind] *
          (1 + named) *
          (typed ? 1 : OTHER_WAY),
      };
    });
  }

  return (question) => {
    const typed = [question, question.replaceAll(WITH_UNIT, ' ')];
    const asTyped = new Set(typed.map(plain));
    const best = new Map<Found, Hit>();
    for (const way of new Set(typed.flatMap((each) => waysOfAsking(each, alike)))) {
      for (const hit of hitsOf(way, asTyped.has(way))) {
        const other = best.get(hit.entry.of);
        if (!other || isBetter(hit, other)) best.set(hit.entry.of, hit);
      }
    }
    return [...best.values()].sort((a, b) => (isBetter(a, b) ? -1 : 1)).map(shown);
  };
}
