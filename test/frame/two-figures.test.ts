import { expect, it } from 'vitest';
import {
  asRange,
  rangeIn,
  rangeTyped,
  slashed,
} from '../../calculators/frame/field/two-figures.ts';

it.each([
  ['0.38/0.40', 'mm', true, /divided by 0\.40\. If they are two readings, type “0\.38; 0\.40”/],
  ['0,38 / ,4', 'mm', false, /type the one that counts/],
  ['1/2', '%', true, /type “50%”/],
  ['3/8', '%', false, /For 3\/8 of the whole type “37\.5%”/],
] as const)('%s in %s is asked about', (text, unit, several, words) => {
  expect(slashed(text, unit, several)).toMatch(words);
});

it.each([
  ['64/2', 'mm'],
  ['1/2', 'none'],
  ['3/2', '%'],
  ['(0.3+0.4)/2', 'mm'],
  ['0.7/2', 'mm'],
  ['25', '%'],
] as const)('%s in %s is not', (text, unit) => {
  expect(slashed(text, unit, true)).toBeUndefined();
});

it('a range has its middle, and half of its width, in the unit that was typed', () => {
  expect(rangeIn('14 to 18 thou')).toMatchObject({ middle: '16 thou', half: '2 thou' });
  expect(rangeIn('0,6 – 0,5')).toMatchObject({ middle: '0.55', half: '0.05' });
});

const all = () => true;
const none = () => false;

it('a refused difference may have been a range', () => {
  expect(asRange('0.5-0.6', all)).toContain('read as 0.5 less 0.6: of a range');
  expect(asRange('0,5 – 0,6', all)).toContain('read as 0,5 less 0,6');
  for (const text of ['-3', '0.5', '1-2-3', '0.6 mm', '14 too 16'])
    expect(asRange(text, all)).toBe('');
});

it.each([
  ['14 to 16 thou', '15 thou'],
  ['14-16', '15'],
  ['0,35 – 0,45mm', '0.4 mm'],
  // As a sum typed bare in a box of inches is kept.
  ['(14-16 thou)\u2060in', '15 thou'],
] as const)('the range %s is told its middle, as it was typed', (kept, middle) => {
  const said = rangeTyped(kept, all);
  expect(said).toContain(`type “${middle}”`);
  expect(said).not.toContain('(');
  // A middle that the field does not take is not offered.
  expect(rangeTyped(kept, none)).toMatch(/type the one figure that you set\.$/);
});
