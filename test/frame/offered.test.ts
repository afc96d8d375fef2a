import { describe, expect, it } from 'vitest';
import { offeredIn } from '../../calculators/frame/field/offered.ts';

describe('what a sentence offers to type', () => {
  it.each([
    ['With its unit, type “3/32 in” or “3/32 mm”.', ['3/32 in', '3/32 mm']],
    [
      'If it is 0.35 mm, type “0.35 mm”. If it is right, type “0.35 thou”.',
      ['0.35 mm', '0.35 thou'],
    ],
    ['Type “5500” or “5.50”.', ['5500', '5.50']],
    ['type “16 thou” and once more type “16 thou”', ['16 thou']],
    ['“0.014” looks like inches. Type a figure such as 2.2.', []],
    ['', []],
  ])('%s', (sentence, texts) => {
    expect(offeredIn(sentence)).toEqual(texts);
  });
});
