import { expect, it } from 'vitest';
import { mostByChance } from '../../calculators/maths/numeric/chi-square.ts';

it('lies up to a hundredth above the bound of chi-square at 0.995, as SciPy 1 has it', () => {
  for (const [freedom, bound] of [
    [1, 7.879],
    [2, 10.597],
    [3, 12.838],
    [4, 14.86],
    [5, 16.75],
    [6, 18.548],
    [8, 21.955],
    [10, 25.188],
    [12, 28.3],
  ] as const) {
    expect(mostByChance(freedom) / bound).toBeGreaterThan(1);
    expect(mostByChance(freedom) / bound).toBeLessThan(1.01);
  }
});
