import { expect, it } from 'vitest';
import { articles } from './prose.ts';

const FORMULA = /<Eq tex=/;
/** A figure, or a part of the page that draws: whatever is no term, formula, caution or frame of text. */
const PICTURE = /<figure>|<(?!Term|Eq|Caution|Worked|OnTheBench)[A-Z]\w*\b/;

const after = (text: string): boolean => {
  const body = text
    .replace(/^---[\s\S]*?\n---/, '')
    .replace(/^(?:import|export)[\s\S]*?\n\n/gm, ' ');
  const formula = body.search(FORMULA);
  const picture = body.search(PICTURE);
  return formula < 0 || (picture >= 0 && picture < formula);
};

it.each(articles)('$slug shows a picture before its first formula', ({ text }) => {
  expect(after(text)).toBe(true);
});

it('sees a formula that comes before any picture', () => {
  expect(after('<Eq tex="a" />\n\n<figure>\n</figure>')).toBe(false);
  expect(after('<figure>\n</figure>\n\n<Eq tex="a" />')).toBe(true);
  expect(after('With <Eq inline tex="a" /> for the area.')).toBe(true);
});
