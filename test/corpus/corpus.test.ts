import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fromQuery } from '../../calculators/frame/address.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { Absent, type ResultValue } from '../../calculators/frame/types.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';

/** A link that somebody may have kept, and what it gave when it was put here. */
interface Kept {
  readonly link: string;
  /** How its figures were worked out apart from our code as well, where they were. */
  readonly worked?: string;
  readonly results: Readonly<Record<string, number>>;
}

/**
 * Links are added to the list and never changed or taken out: people have them. One added with no
 * results fails, and says what to write.
 */
const corpus = JSON.parse(
  readFileSync(new URL('links.json', import.meta.url), 'utf8'),
) as readonly Kept[];

const LINK = /^calculators\/([a-z-]+)\/\?(.*)$/;

/** The figures of a result under the names that the page gives them. */
function named(name: string, value: ResultValue): [string, number][] {
  if (value instanceof Absent) return [];
  if (typeof value === 'number') return [[name, value]];
  return value.flatMap((entry, i) => named(`${name}-${i + 1}`, entry));
}

function resultsOf(link: string): Record<string, number> {
  const [, slug, query] = LINK.exec(link)!;
  const evaluation = evaluate(calculatorBySlug(slug!), fromQuery(query!), {
    lengths: 'mm',
  });
  expect(evaluation.problems, 'the link is understood').toEqual([]);
  return Object.fromEntries(
    Object.entries(evaluation.results).flatMap(([name, value]) => named(name, value)),
  );
}

describe('an old link gives the same figures', () => {
  it.each(corpus)('$link', ({ link, results }) => {
    const found = resultsOf(link);
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
