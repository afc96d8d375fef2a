import { describe, expect, it } from 'vitest';
import {
  MOST_READINGS,
  repeatedReadings,
} from '../../calculators/maths/numeric/repeated-readings.ts';
import { thrown } from './thrown.ts';

describe('several readings of one quantity', () => {
  it('have a mean, a range, and a scatter that hangs on no order', () => {
    const one = repeatedReadings([2.31, 2.35, 2.28]);
    const other = repeatedReadings([2.28, 2.31, 2.35]);
    expect(one.mean).toBeCloseTo(2.3133, 4);
    expect([one.count, one.lowest, one.highest]).toEqual([3, 2.28, 2.35]);
    expect(one.ofMean).toBeCloseTo(other.ofMean, 12);
    expect(one.deviation).toBeCloseTo(Math.sqrt(0.0024667 / 2), 5);
    expect(one.standardError).toBeCloseTo(one.deviation / Math.sqrt(3), 12);
    expect(one.ofOne / one.ofMean).toBeCloseTo(Math.sqrt(3), 12);
  });

  it('are surer the more there are, of the same scatter', () => {
    const of = (count: number): number =>
      repeatedReadings(Array.from({ length: count }, (_, i) => (i % 2 === 0 ? 1 : -1))).ofMean;
    for (let count = 2; count + 2 <= MOST_READINGS; count += 2) {
      expect(of(count + 2)).toBeLessThan(of(count));
    }
  });

  it('have no spread where all are alike', () => {
    expect(repeatedReadings([3, 3, 3])).toMatchObject({ mean: 3, ofMean: 0, ofOne: 0 });
  });

  it('are 2 to 20, each a number', () => {
    expect(thrown(() => repeatedReadings([1])).message).toMatch(/From 2 to 20 .*, not 1\./);
    expect(thrown(() => repeatedReadings(Array.from({ length: 21 }, () => 1))).code).toBe(
      'readings-count',
    );
    expect(() => repeatedReadings(Array.from({ length: 20 }, () => 1))).not.toThrow();
    expect(thrown(() => repeatedReadings([1, NaN])).code).toBe('readings-value');
    for (const readings of [[1], [1, NaN]]) {
      expect(thrown(() => repeatedReadings(readings)).quantities).toEqual(['readings']);
    }
  });
});
