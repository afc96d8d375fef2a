import { describe, expect, it } from 'vitest';
import { coverageFactor } from '../../calculators/maths/numeric/student.ts';
import { thrown } from './thrown.ts';

describe('the factor for 95 times in 100', () => {
  it('shrinks with every further reading', () => {
    for (let freedom = 1; freedom < 40; freedom += 1) {
      expect(coverageFactor(freedom + 1)).toBeLessThan(coverageFactor(freedom));
    }
  });

  it('refuses scatter of no readings', () => {
    expect(thrown(() => coverageFactor(0)).code).toBe('degrees-of-freedom');
    expect(thrown(() => coverageFactor(1.5)).message).toMatch(/1 to 100/);
  });
});
