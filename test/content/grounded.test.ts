import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { articles } from './prose.ts';

/** Code, tables and figures that are worked out; what is worked out leaves a mark. */
const body = (text: string): string =>
  text
    .replace(/^---[\s\S]*?\n---/, '')
    .replace(/^(?:import|export)[\s\S]*?\n\n/gm, ' ')
    .replace(/<Table[\s\S]*?<\/Table>/g, ' ')
    .replace(/\{(?:[^{}]|\{(?:[^{}]|\{[^{}]*\})*\})*\}/g, '#')
    .replace(/<[^>]*>/g, '')
    .replace(/\]\([^)]*\)/g, ']')
    .replace(/&nbsp;/g, ' ');

/** Digits that claim nothing: names of parts, steps and sizes, whole turns and their shares, scales. */
const names: readonly RegExp[] = [
  /^\s*\d+\. /gm,
  /\b(?:M\d+|H\d\/[gh]\d)\b/g,
  /\b(?:sets?|cylinders?|plug|pins?|hole|groove|step|marked) \d+(?: (?:to|and) \d+)?/gi,
  /\b(?:90|120|180|240|360)°/g,
  /\b0 to 360\b|\b(?:to|of|shows) 0(?!\.?\d)/g,
  /# : 1\b|# to 1\b|\b1 in #/g,
  /\/ 2\b/g,
  /\b100%/g,
  /\bslide \d+/g,
];
/** In a sum that is worked out: a whole turn, a minute in thousandths of a second, small whole numbers. */
const IN_SUMS =
  /(?<![\d.#])(?:360|60 000|\d)(?= ?[×/−] )|(?<=[×/−] ?)(?:360|\d)(?![\d.])|(?<=\()1(?= − )/g;

const MARK = /common practice/i;
/** A section that says it once for all of its figures. */
const MARKS_ALL = /\ball (?:of it|of these|two|three|four) (?:is|are) common practice/i;

/** Sentences with a figure that is neither worked out, nor in a source, nor marked. */
function groundless(text: string): string[] {
  const sources = /^sources:\n((?: {2}- .+\n)+)/m.exec(text)?.[1] ?? '';
  const cited = (figure: string): boolean =>
    new RegExp(`(?<![\\d.])${figure.replaceAll('.', '\\.')}(?![\\d])`).test(sources);
  return body(text)
    .split(/^(?=##+ )/m)
    .filter((section) => !MARKS_ALL.test(section))
    .flatMap((section) =>
      names
        .reduce((rest, name) => rest.replace(name, ' '), section)
        .split(/\n+/)
        .flatMap((line) => line.split(/(?<=[.?!:][)*”"]*)\s+(?=[A-Z*“"(])/)),
    )
    .map((sentence) => sentence.trim())
    .map((sentence) => (/[=#]/.test(sentence) ? sentence.replace(IN_SUMS, ' ') : sentence))
    .filter((sentence) => !MARK.test(sentence) && !sentence.endsWith('?'))
    .filter((sentence) => {
      const figures = sentence.match(/\d+(?:\.\d+)?(?: (?:per cent|times in \d+|[°A-Za-zΩµ]+))?/g);
      return figures?.some((figure) => !cited(figure)) ?? false;
    });
}

describe.each(articles)('$slug', ({ text }) => {
  it('works out each of its figures, has it from a source, or marks it as common practice', () => {
    expect(groundless(text)).toEqual([]);
  });
});

/** The head of an article, with its sources. */
const headOf = (text: string): string => /^---[\s\S]*?\n---\n/.exec(text)![0];

it.each(articles)('the answers to the questions on $slug do so too', ({ slug, text }) => {
  const asked = readFileSync(`content/questions/${slug}.mdx`, 'utf8');
  expect(groundless(`${headOf(text)}\n\n${asked}`)).toEqual([]);
});

describe('a figure without a ground', () => {
  const article = (words: string): string =>
    `---\ntitle: x\nsources:\n  - "A meter rated for 1000 V: common practice."\n---\n\n${words}\n`;

  it.each([
    'A gap of 0.4 mm is right.',
    'It is {a} × 0.4 mm = {b}.',
    'Use a meter rated for 600 V.',
    'Set 1 opens at 0.4 mm.',
    '- **Sheet**, 0.5 mm: for covers.',
    '<p>Turn it by 12°.</p>',
  ])('is seen: %s', (words) => {
    expect(groundless(article(words))).toHaveLength(1);
  });

  it.each([
    'A gap of {mm(gap)} is right.',
    'A gap of 0.4 mm is right (common practice).',
    'Use a meter rated for 1000 V.',
    'Set 1 opens 120° after set 3.',
    'At {ratio} : 1 it smokes.',
    'That is 360 / 4 − 2 × {a} = {b}.',
    'How much is 3 mm worth?',
    '## Sheets\n\n- 0.5 mm\n- 1 mm\n\nAll of it is common practice.',
  ])('is not seen in: %s', (words) => {
    expect(groundless(article(words))).toEqual([]);
  });
});
