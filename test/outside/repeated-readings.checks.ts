import { repeatedReadings } from '../../calculators/maths/numeric/repeated-readings.ts';
import { statedAndRead } from '../../calculators/maths/numeric/stated-and-read.ts';
import type { OutsideCheck } from './types.ts';

/** Temperatures in °C. */
const table1 = [
  96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68,
  100.95, 101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
];
const GUM = 'JCGM 100:2008, Guide to the expression of uncertainty in measurement';

const example: readonly OutsideCheck[] = (
  [
    ['mean', 100.145, () => repeatedReadings(table1).mean],
    ['standard deviation of one', 1.489, () => repeatedReadings(table1).deviation],
    ['standard deviation of the mean', 0.333, () => repeatedReadings(table1).standardError],
  ] as const
).map(([what, expected, ours]) => ({
  topic: 'repeated-readings',
  what: `Twenty readings of one temperature: ${what}`,
  source: `${GUM}, clause 4.4.3 with table 1`,
  kind: 'published',
  unit: '°C',
  expected,
  ours,
  tolerance: 0.0005,
  why: 'printed to three decimals',
}));

/** Readings whose standard error is 1, so that the ± is Student’s t alone. */
function unitScatter(count: number): number[] {
  const plain = Array.from({ length: count }, (_, i) => i);
  const { standardError } = repeatedReadings(plain);
  return plain.map((reading) => reading / standardError);
}

const factors: readonly OutsideCheck[] = (
  [
    [2, 12.71],
    [3, 4.3],
    [4, 3.18],
    [5, 2.78],
    [6, 2.57],
    [11, 2.23],
    [20, 2.09],
  ] as const
).map(([count, expected]) => ({
  topic: 'repeated-readings',
  what: `The ± of the mean of ${count} readings over its standard error, 95 times in 100`,
  source: `${GUM}, annex G, table G.2, degrees of freedom ${count - 1}, p = 95 %`,
  kind: 'published',
  unit: '1',
  expected,
  ours: () => repeatedReadings(unitScatter(count)).ofMean,
  tolerance: 0.005,
  why: 'printed to two decimals',
}));

/**
 * Two readings whose scatter is twice the standard uncertainty stated for one, which is as far as both
 * are pooled: 8 and 1 degrees of freedom, factors from the guide's table.
 */
const pooled: readonly OutsideCheck[] = [
  {
    topic: 'repeated-readings',
    what: 'The ± of the mean of two readings that scatter twice as much as was stated',
    source: `${GUM}, G.4.2 (a stated uncertainty reliable to 25 %: 8 degrees of freedom) and table G.2, p = 95 %, 8 and 9 degrees of freedom: 2.31 and 2.26; the rest worked by hand`,
    kind: 'hand-worked',
    unit: '1',
    // One reading: 2.26 √((8 · 1² + 1 · 2²)/9) = 2.61; what it has over 2.31 shrinks with √2.
    expected: Math.hypot(2.31, Math.sqrt((2.26 ** 2 * (12 / 9) - 2.31 ** 2) / 2)),
    ours: () => statedAndRead(2.306, [-Math.SQRT2, Math.SQRT2]).plusMinus,
    tolerance: 0.006,
    why: 'the factors are printed to two decimals',
  },
];

export const checks: readonly OutsideCheck[] = [...example, ...factors, ...pooled];
