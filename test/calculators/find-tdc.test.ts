import { describe, expect, it } from 'vitest';
import findTdc from '../../calculators/position/find-tdc/calculator.tsx';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';

const asked = (texts: Texts) => evaluate(findTdc, texts, { lengths: 'mm' });

describe('which way to turn the disc', () => {
  const said = (texts: Texts) => remarksOf(findTdc, asked(texts))[0]!;

  // By hand: half of 43 less 39 is 2, so that 0 stands 2° behind the pointer at the top.
  it.each([
    ['before', '39', '43', /by 2\.0°, against the way the engine turns: /],
    ['after', '43', '39', /by 2\.0°, the way the engine turns: /],
  ])('is said in words where the top lies %s its zero', (_, before, after, words) => {
    expect(said({ before, after })).toMatch(words);
  });

  it('is none within what the readings can tell', () => {
    expect(said({ before: '40', after: '40.2' })).toMatch(/leave it/);
  });
});

describe('the two methods', () => {
  it('share the arithmetic', () => {
    expect(flatten(asked({ method: 'equal' }).results)).toEqual(
      flatten(asked({ method: 'stop' }).results),
    );
  });

  it.each([
    ['stop', /positive stop.*backwards, all the way round/],
    ['equal', /equal height.*over the top.*lean of the indicator drops out/],
  ])('%s says how its second reading is taken', (method, words) => {
    const said = remarksOf(findTdc, asked({ method }));
    expect(said.filter((remark) => words.test(remark))).toHaveLength(1);
  });
});
