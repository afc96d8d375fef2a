import { expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { calculators } from '../../site/all-calculators.ts';

it('a tank seen to be empty adds nothing to the ±, and one with mix in it does', () => {
  const calculator = calculators.find(({ slug }) => slug === 'fuel-and-oil')!;
  const tank = (already: string) =>
    evaluate(
      calculator,
      { fuel: '5', by: 'ratio', ratio: '25', already, 'fuel-error': '0.05' },
      { lengths: 'mm' },
    );
  // A twenty-fifth of 0.05 litres is 2 ml, and petrol with its oil 1.04 times the petrol.
  expect(tank('0').spreads['oil-whole']).toBeCloseTo(2, 6);
  expect(tank('0').spreads.total).toBeCloseTo(0.052, 9);
  expect(tank('0').errorFields.map(({ key }) => key)).toEqual(['fuel-error']);
  expect(tank('2').errorFields.map(({ key }) => key)).toContain('already-error');
});
