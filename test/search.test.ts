import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { makeFinder } from '../site/search/finder.ts';
import type { Found } from '../site/search/found.ts';
import { tradeWords } from '../site/search/trade-words.ts';
import { waysOfAsking } from '../site/search/ways-of-asking.ts';
import { sectionsOf } from '../site/search/sections.ts';
import { tellingWords } from '../site/search/words.ts';
import { wordsIn } from '../site/search/words-in.ts';
import { wordsOf } from '../site/search/words-of.ts';
import { calculators } from '../site/all-calculators.ts';

const thing = (id: number, title: string, also = '', text = ''): Found => ({
  url: `${id}/`,
  kind: 'article',
  title,
  purpose: '',
  also,
  words: wordsIn(text),
});

const find = makeFinder({
  documents: [
    thing(0, 'Connecting rod', '', 'length between the eyes'),
    thing(1, 'Gudgeon pin'),
    thing(2, 'Fuel and oil', 'premix'),
    thing(3, 'Where the piston is', '', 'the connecting rod and the stroke'),
    thing(4, 'Degree disc'),
    thing(5, 'Desaxé', '', 'an offset pin'),
  ],
  alike: tradeWords,
});
const titles = (question: string): string[] => find(question).map(({ title }) => title);

/** What articles, glossary, calculators and fault finder say, in small letters. */
const written = globSync([
  'content/{articles,faults}/**/*.{mdx,ts}',
  'content/glossary.yaml',
  'calculators/*/*/*.ts*',
])
  .map((file) =>
    readFileSync(file, 'utf8')
      .toLowerCase()
      .replace(/[^\p{L}\d]+/gu, ' '),
  )
  .join(' ');

describe('search', () => {
  it.each([
    ['connecting rod', 'Connecting rod'],
    ['Connecting Rods', 'Connecting rod'],
    ['con rod', 'Connecting rod'],
    ['wrist pin', 'Gudgeon pin'],
    ['petroil', 'Fuel and oil'],
    ['degree wheels', 'Degree disc'],
    ['gudgen', 'Gudgeon pin'],
    ['degr', 'Degree disc'],
    ['desaxe', 'Desaxé'],
    ['oil fuel', 'Fuel and oil'],
  ])('%s finds %s first', (question, title) => {
    expect(titles(question)[0]).toBe(title);
  });

  it('does not hang on the small words of a question', () => {
    expect(titles('what is the gudgeon pin for')[0]).toBe('Gudgeon pin');
    expect(titles('how do I mix oil with my fuel')[0]).toBe('Fuel and oil');
  });

  it('knows a name within the question, whatever it is asked with', () => {
    for (const question of ['what does desaxe mean', 'what is an old engine’s desaxe']) {
      expect(titles(question)[0]).toBe('Desaxé');
    }
    expect(titles('how much oil in fuel')[0]).toBe('Fuel and oil');
  });

  it('finds what a question holds the whole name of, first', () => {
    const finder = makeFinder({
      documents: [
        thing(0, 'The engine that kicks', '', 'my engine kicks the rider and throws him back'),
        { ...thing(1, 'It throws the lever', 'kicks back'), kind: 'fault' },
      ],
      alike: [],
    });
    expect(finder('my engine kicks back').map(({ url }) => Number.parseInt(url))).toEqual([1, 0]);
  });

  it('takes fuel that goes by another name, and carburettors that are cut short', () => {
    const finder = makeFinder({
      documents: [thing(0, 'Petrol'), thing(1, 'Carburettor'), thing(2, 'Fuel')],
      alike: tradeWords,
    });
    for (const name of ['petrol', 'gas', 'gasoline', 'fuel']) {
      const ids = finder(name).map(({ url }) => Number.parseInt(url));
      expect(ids.sort(), name).toEqual([0, 2]);
    }
    for (const name of ['carb', 'carbs', 'carburetor']) expect(finder(name)[0]?.url).toBe('1/');
  });

  it('puts other names before the text, and what was typed before what means the same', () => {
    const others = [thing(0, 'First', '', 'premix'), thing(1, 'Second', 'bowl of premix')];
    expect(makeFinder({ documents: others, alike: [] })('premix')[0]?.url).toBe('1/');
    const alike = [['idle', 'tickover']];
    const twins = [thing(0, 'Tickover here'), thing(1, 'Idle here, there')];
    const ids = (question: string): number[] =>
      makeFinder({ documents: twins, alike })(question).map(({ url }) => Number.parseInt(url));
    expect(ids('idle')).toEqual([1, 0]);
  });

  it('leads with what is done, and not with a term that the question names', () => {
    const both: Found[] = [
      { ...thing(0, 'Air leak', 'false air'), kind: 'term' },
      { ...thing(1, 'Runs away', 'screams with an air leak', 'air leak air leak'), kind: 'fault' },
    ];
    const [first] = makeFinder({ documents: both, alike: [] })(
      'the bike screams with an air leak today',
    );
    expect(first?.url).toBe('1/');
  });

  it('puts a title before a mention', () => {
    expect(titles('connecting rod')).toEqual(['Connecting rod', 'Where the piston is']);
  });

  it('leaves nothing out for a word that it lacks, nor for one that says nothing', () => {
    for (const question of [
      'what should I use as a degree disc tonight',
      'my degree disc, please',
    ]) {
      expect(titles(question)[0]).toBe('Degree disc');
    }
    expect(titles('what should I use')).toEqual([]);
  });

  it('ranks by how much of what was asked a thing holds, and then by its kind', () => {
    const things: Found[] = [
      thing(0, 'Fuel', '', 'old petrol from the tank'),
      { ...thing(1, 'Petrol', '', 'tank'), kind: 'step' },
      { ...thing(2, 'Old petrol in the tank'), kind: 'practice' },
    ];
    const ids = makeFinder({ documents: things, alike: [] })('old petrol in the tank').map(
      ({ url }) => Number.parseInt(url),
    );
    expect(ids).toEqual([2, 1, 0]);
    const alikes: Found[] = [
      thing(0, 'The float of a carburettor'),
      { ...thing(1, 'Set the float of a carburettor'), kind: 'step' },
    ];
    const [first] = makeFinder({ documents: alikes, alike: [] })('carburettor float');
    expect(first?.url).toBe('1/');
  });

  it('leads to the part of an article that holds the words', () => {
    const article: Found = {
      ...thing(0, 'Fuel and oil', '', 'petrol'),
      parts: [
        {
          heading: 'Which ratio',
          id: 'which-ratio',
          words: wordsIn('petrol and oil by the maker'),
        },
        { heading: 'How long it keeps', id: 'how-long-it-keeps', words: wordsIn('stale petrol') },
      ],
    };
    const ask = makeFinder({ documents: [article], alike: [] });
    const found = (question: string): unknown =>
      ask(question).map(({ url, title }) => [url, title]);
    expect(found('stale petrol')).toEqual([
      ['0/#how-long-it-keeps', 'Fuel and oil: How long it keeps'],
    ]);
    expect(found('fuel and oil')).toEqual([['0/', 'Fuel and oil']]);
  });

  it('finds nothing for what is not there, and minds no odd question', () => {
    expect(titles('wombat')).toEqual([]);
    for (const odd of ['', '   ', '"', '<script>', '*', 'a'.repeat(5000), '\ud800']) {
      expect(Array.isArray(titles(odd))).toBe(true);
    }
  });

  it('asks a question once for each phrase that means the same', () => {
    expect(waysOfAsking('long con rod', tradeWords)).toContain('long connecting rod');
    expect(waysOfAsking('wombat', tradeWords)).toEqual(['wombat']);
    expect(waysOfAsking(tradeWords.flat().join(' '), tradeWords).length).toBeLessThan(30);
  });

  it('has no word of the trade in two lines', () => {
    const words = tradeWords.flat();
    expect(
      words.filter((word, i) => words.indexOf(word) !== i),
      'what means the same stands in one line: join the two',
    ).toEqual([]);
  });

  it.each(tradeWords.map((line) => [line.join(', '), line] as const))(
    'leads somewhere by %s',
    (_, line) => {
      expect(line.filter((word) => written.includes(` ${word}`))).not.toEqual([]);
    },
  );
});

it.each([
  ['rods', 'rod'],
  ['gauges', 'gauge'],
  ['stopping', 'stop'],
  ['stopped', 'stops'],
  ['seized', 'seize'],
  ['fitting', 'fitted'],
  ['won’t', 'wont'],
  ['Desaxé', 'desaxe'],
])('%s and %s are one word', (one, other) => {
  expect(tellingWords(one)).toEqual(tellingWords(other));
});

it.each([
  ['spring', 'spr'],
  ['glass', 'glas'],
  ['timing', 'time'],
  ['bored', 'bore'],
])('%s and %s are two words', (one, other) => {
  expect(tellingWords(one)).not.toEqual(tellingWords(other));
});

it('knows the parts of an article, with the check at the bench', () => {
  const { opening, sections } = sectionsOf(
    "import a from './a.ts';\n\nFirst words.\n\n## The ring's gap, hot\n\nIt <b>grows</b>.\n\n### By dial\n\nTurn.\n\n<OnTheBench>\n  1. Measure.\n</OnTheBench>\n",
  );
  expect(opening).toBe('First words.');
  expect(sections).toEqual([
    { heading: 'The ring’s gap, hot', id: 'the-rings-gap-hot', text: 'It grows .' },
    { heading: 'By dial', id: 'by-dial', text: 'Turn.' },
    { heading: 'Check it on the bench', id: 'check-it-on-the-bench', text: '1. Measure.' },
  ]);
});

it.each(globSync('content/articles/*.mdx'))('no code of %s is searched', (file) => {
  const [, body] = /^---\n[\s\S]*?\n---\n([\s\S]*)$/.exec(readFileSync(file, 'utf8'))!;
  expect(wordsOf(body!)).not.toMatch(/\.\.\/|=>|\.default\b|\bconst\b|\.ts\b/);
});

it.each([
  ['thou to mm', 'piston-position'],
  ['convert mm to degrees', 'piston-position'],
  ['advance in mm', 'piston-position'],
  ['0.094 in before top', 'piston-position'],
  ['180 degree twin', 'firing-order'],
  ['22 degrees', 'piston-position'],
  ['1/8 in before top', 'piston-position'],
  ['.125 in to degrees', 'piston-position'],
  ['unmarked jets', 'jet-set'],
])('%s finds the calculator %s', (question, slug) => {
  const documents = calculators.map((each, id) => ({
    ...thing(id, each.title, each.alsoCalled.join(', ')),
    url: each.slug,
  }));
  expect(makeFinder({ documents, alike: tradeWords })(question)[0]?.url).toBe(slug);
});
