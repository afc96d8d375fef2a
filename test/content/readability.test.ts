import readability from 'text-readability';
import { describe, expect, it } from 'vitest';
import { articles } from './prose.ts';

/** By how many years a pupil is older than the number of the grade, as schools of the United States count. */
const SCHOOL = 5;
/** Oldest reading age that an article may ask for, and the most words in one sentence. */
const OLDEST = 12;
const MOST = 40;

/** The sentences of an article: no code, tables or headings; what is worked out stands as a number. */
function sentencesOf(text: string): string[] {
  const body = text
    .replace(/^---[\s\S]*?\n---/, '')
    .replace(/^(?:import|export)[\s\S]*?\n\n/gm, ' ')
    .replace(/^(?:#|\|).*$/gm, ' ')
    .replace(/<Table[\s\S]*?<\/Table>/g, ' ')
    .replace(/<Eq tex=[\s\S]*?\/>/g, ' ')
    .replace(/<Eq inline [\s\S]*?\/>/g, 'x')
    .replace(/<[a-zA-Z][^>]*>|<\/[^>]*>/g, '')
    .replace(/\{(?:[^{}]|\{(?:[^{}]|\{[^{}]*\})*\})*\}/g, '2')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/&nbsp;/g, ' ')
    .replace(/[*“”]/g, '');
  return body
    .split(/\n+/)
    .flatMap((line) => line.replace(/^\s*(?:\d+\.|-) /, '').split(/(?<=[.?!:][)]*)\s+(?=[A-Z(])/))
    .map((sentence) => sentence.trim().replace(/[:;]$/, '.'))
    .filter((sentence) => /[a-z]{2}/.test(sentence));
}

/** The age at which a reader follows a text, after Flesch and Kincaid. */
const readingAge = (text: string): number =>
  SCHOOL + readability.fleschKincaidGrade(sentencesOf(text).join(' '));

describe.each(articles)('$slug', ({ text }) => {
  it(`can be read at ${OLDEST}`, () => {
    expect(readingAge(text)).toBeLessThanOrEqual(OLDEST);
  });

  it('has no sentence that runs on', () => {
    const long = sentencesOf(text).filter((sentence) => sentence.split(/\s+/).length > MOST);
    expect(long).toEqual([]);
  });
});

it('a heavy text asks for more than a light one', () => {
  const light = 'The heel wears. The gap shrinks. The spark comes late.';
  const heavy =
    'Progressive deterioration of the follower necessarily diminishes the separation of the electrodes, consequently retarding ignition considerably.';
  expect(readingAge(light)).toBeLessThan(8);
  expect(readingAge(heavy)).toBeGreaterThan(18);
});
