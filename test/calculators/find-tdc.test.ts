import { describe, expect, it } from 'vitest';
import findTdc from '../../calculators/position/find-tdc/calculator.tsx';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';

const asked = (texts: Texts) => evaluate(findTdc, texts, { lengths: 'mm' });

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
