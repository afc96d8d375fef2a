import { globSync, readFileSync } from 'node:fs';
import english from 'dictionary-en-gb';
import nspell from 'nspell';
import { describe, expect, it } from 'vitest';
import { evening } from '../../content/evening.ts';

const read = (file: string): string => readFileSync(file, 'utf8');
const trade = read('test/content/words-of-the-trade.txt').trim().split('\n');

const british = nspell(
  Buffer.from(english.aff).toString('utf8'),
  Buffer.from(english.dic).toString('utf8'),
);
for (const word of trade) british.add(word);

/** The words that a reader reads in a text in MDX: front matter and questions too, no code. */
const readable = (mdx: string): string =>
  mdx
    .replace(/^(?:import|export)[\s\S]*?\n\n/gm, ' ')
    .replace(
      /ask=\{`((?:[^`$]|\$\{[^}]*\})*)`\}>/g,
      (_, ask: string) => `> ${ask.replace(/\$\{[^}]*\}/g, ' ')} `,
    )
    .replace(/\{(?:[^{}]|\{(?:[^{}]|\{[^{}]*\})*\})*\}/g, ' ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\]\([^)]*\)/g, ' ')
    .replace(/^(?:title|purpose|stage|order|sources):/gm, ' ')
    .replace(/&shy;/g, '')
    .replace(/&\w+;/g, ' ');

const known = (word: string): boolean =>
  british.correct(word) || british.correct(word.toLowerCase());

/** Words of which none is known: no names with a capital within or digits, which are signs. */
const misspelt = (text: string): string[] => [
  ...new Set(
    [...text.matchAll(/(?<![\w§.])[A-Za-zÀ-ž]+(?:['’][a-z]+)?(?![\w])/g)]
      .map(([word]) => word.replace(/['’]s$/, '').replace('’', "'"))
      .filter((word) => word.length > 2 && !/.[A-Z]/.test(word) && !known(word)),
  ),
];

const files = [
  ...globSync('content/{articles,questions}/*.mdx'),
  'content/glossary.yaml',
].toSorted();

describe.each(files)('%s', (file) => {
  it('is spelt as in Britain', () => {
    const text = file.endsWith('.yaml')
      ? read(file).replace(/^[a-z][a-z0-9-]*:$|^ {2}see:.*$|^ {2}\w+:/gm, ' ')
      : readable(read(file).replace(/^sources:\n(?: {2}- .+\n)+/m, ''));
    expect(misspelt(text)).toEqual([]);
  });
});

it('what to take from each chapter is spelt as in Britain', () => {
  expect(evening.flatMap(({ take }) => misspelt(take))).toEqual([]);
});

describe('spelling', () => {
  it.each(['color', 'aluminum', 'center', 'recieve', 'carburetor'])('finds %s', (word) => {
    expect(misspelt(`The ${word} of it.`)).toEqual([word]);
  });

  it('leaves code and signs alone', () => {
    expect(
      misspelt(readable('Stroke {mm(strok)} in <Term id="bor">bore</Term>, AlSi and H7.')),
    ).toEqual([]);
  });
});

it('the words of the trade are in order, each once, and none is in the dictionary', () => {
  expect(trade).toEqual([...new Set(trade)].toSorted((a, b) => a.localeCompare(b, 'en')));
  const plain = nspell(
    Buffer.from(english.aff).toString('utf8'),
    Buffer.from(english.dic).toString('utf8'),
  );
  expect(trade.filter((word) => plain.correct(word))).toEqual([]);
});
