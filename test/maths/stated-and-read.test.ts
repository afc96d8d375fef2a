import { describe, expect, it } from 'vitest';
import { repeatedReadings } from '../../calculators/maths/numeric/repeated-readings.ts';
import { statedAndRead } from '../../calculators/maths/numeric/stated-and-read.ts';
import { coverageBetween, coverageFactor } from '../../calculators/maths/numeric/student.ts';
import { thrown } from './thrown.ts';

const of = (stated: number, ...readings: number[]): number =>
  statedAndRead(stated, readings).plusMinus;

describe('a stated ± and several readings', () => {
  it('that agree with it leave it as it is', () => {
    for (const readings of [
      [0.42, 0.42],
      [0.42, 0.41],
      [2.31, 2.32, 2.3, 2.31, 2.32],
    ]) {
      expect(statedAndRead(0.02, readings)).toEqual({ plusMinus: 0.02, verdict: 'borne-out' });
    }
  });

  it('a reading more, a stated ± apart, does it no harm to speak of', () => {
    // By hand: s₀ 0.02/2.306, s 0.02/√2; variance (8 s₀² + s²)/9, t of 9 2.262: 0.02135 for one.
    expect(of(0.02, 0.42, 0.4)).toBeCloseTo(Math.hypot(0.02, 0.00528), 4);
  });

  it('that disagree with it tell more and more by their own scatter, without a step', () => {
    let before = 0.02;
    for (let apart = 0; apart <= 0.4; apart += 0.0005) {
      const now = of(0.02, 0.4, 0.4 + apart);
      expect(now).toBeGreaterThanOrEqual(before);
      expect(now / before, String(apart)).toBeLessThan(1.1);
      before = now;
    }
    const wide = [0.1, 0.9, 0.5];
    const { ofMean } = repeatedReadings(wide);
    expect(of(0.001, ...wide) / ofMean).toBeCloseTo(1, 2);
    expect(statedAndRead(0.001, wide).verdict).toBe('disagree');
    expect(of(0, ...wide)).toBe(ofMean);
  });

  it('is in one unit as in another', () => {
    expect(of(0.02 / 25.4, 0.42 / 25.4, 0.37 / 25.4) * 25.4).toBeCloseTo(of(0.02, 0.42, 0.37), 12);
  });

  it('is a number, 0 or more', () => {
    for (const stated of [-0.1, NaN, Infinity]) {
      expect(thrown(() => statedAndRead(stated, [1, 2]))).toMatchObject({
        code: 'stated-uncertainty',
        quantities: ['stated'],
      });
    }
  });
});

describe('Student’s t between whole degrees of freedom', () => {
  it('goes through the whole ones and falls between them', () => {
    expect(coverageBetween(9)).toBe(coverageFactor(9));
    let before = coverageBetween(1);
    for (let freedom = 1.05; freedom < 12; freedom += 0.05) {
      const now = coverageBetween(freedom);
      expect(now).toBeLessThan(before);
      before = now;
    }
  });
});

/** Evenly spread numbers from 0 to 1: the mixed congruential generator of 32 bits. */
function spreader(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
}

/** How often the truth, 0, lies within the ± of the mean. */
function covered(
  seed: number,
  count: number,
  draw: (normal: () => number) => { readonly stated: number; readonly readings: number[] },
): number {
  const next = spreader(seed);
  const normal = (): number => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
  let within = 0;
  for (let trial = 0; trial < count; trial += 1) {
    const { stated, readings } = draw(normal);
    const mean = readings.reduce((sum, each) => sum + each, 0) / readings.length;
    if (Math.abs(mean) <= statedAndRead(stated, readings).plusMinus) within += 1;
  }
  return within / count;
}

/** A ± of a spread of 1 that is itself known to a quarter: from eight squares, as the guide has it. */
function statedOf(normal: () => number): number {
  let squares = 0;
  for (let i = 0; i < 8; i += 1) squares += normal() ** 2;
  return 2.306 * Math.sqrt(squares / 8);
}

describe('the truth lies within the ± of the mean 19 times in 20, by trials', () => {
  const TRIALS = 3000;
  // Three standard errors of a share of 0.95 in so many trials.
  const LEAST = 0.95 - 3 * Math.sqrt((0.95 * 0.05) / TRIALS);

  it.each([2, 3, 5])('of %i readings, whether the error is scatter, a bias, or both', (n) => {
    for (const bias of [0, 0.7, 1]) {
      const share = covered(7 + n, TRIALS, (normal) => {
        const common = bias * normal();
        const own = Math.sqrt(1 - bias ** 2);
        const stated = statedOf(normal);
        return { stated, readings: Array.from({ length: n }, () => common + own * normal()) };
      });
      expect(share, `bias ${bias}`).toBeGreaterThan(LEAST);
    }
  });

  it.each([
    [2, 0.74],
    [3, 0.86],
    [5, 0.92],
  ])('of %i readings less often where the stated ± is ten times too small', (n, least) => {
    const share = covered(70 + n, TRIALS, (normal) => ({
      stated: statedOf(normal) / 10,
      readings: Array.from({ length: n }, () => normal()),
    }));
    // Few readings that happen to fall close together look as if they agreed with it.
    expect(share).toBeGreaterThan(least);
  });
});
