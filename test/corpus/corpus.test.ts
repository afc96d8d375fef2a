import { describe, expect, it } from 'vitest';
import { fromQuery } from '../../calculators/frame/address.ts';
import { evaluate, type Evaluation } from '../../calculators/frame/evaluate.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { corpus, parts } from './kept.ts';

function stateOf(link: string): Evaluation {
  const { slug, query } = parts(link);
  const evaluation = evaluate(calculatorBySlug(slug), fromQuery(query), { lengths: 'mm' });
  expect(evaluation.problems, 'the link is understood').toEqual([]);
  return evaluation;
}

/** One added with no results fails, and says what to write. */
describe('an old link gives the same figures', () => {
  it.each(corpus)('$link', ({ link, results }) => {
    const found = Object.fromEntries(flatten(stateOf(link).results));
    expect(
      Object.keys(results).length,
      `its results are: ${JSON.stringify(found)}`,
    ).toBeGreaterThan(0);
    for (const [name, before] of Object.entries(results)) {
      const least = Math.max(Math.abs(before) * 1e-9, 1e-12);
      expect(Math.abs((found[name] ?? NaN) - before), name).toBeLessThanOrEqual(least);
    }
  });
});

describe('an old link that holds the ± of its readings gives the same ±', () => {
  // A ± has two digits at the most, so that a twentieth of it is seen by nobody.
  const PART = 0.05;
  it.each(corpus.filter(({ spreads }) => spreads))('$link', ({ link, spreads }) => {
    const { spreads: found } = stateOf(link);
    for (const [name, before] of Object.entries(spreads!)) {
      expect(Math.abs((found[name] ?? NaN) - before), name).toBeLessThanOrEqual(before * PART);
    }
  });
});
