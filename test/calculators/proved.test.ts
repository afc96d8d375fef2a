import { describe, expect, it } from 'vitest';
import { fromQuery } from '../../calculators/frame/address.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import type { Input } from '../../calculators/frame/types.ts';
import { calculators } from '../../site/all-calculators.ts';
import { corpus, parts } from '../corpus/kept.ts';
import type { OutsideCheck } from '../outside/types.ts';
import { contract } from './contract.ts';
import { reading } from './states.ts';

const modules = import.meta.glob<{ checks: readonly OutsideCheck[] }>('../outside/*.checks.ts', {
  eager: true,
});
/** A check belongs to the calculator whose slug is its topic. */
const topics = new Set(
  Object.values(modules).flatMap(({ checks }) => checks.map(({ topic }) => topic)),
);
const kept = corpus.map(({ link, results }) => ({ ...parts(link), results }));
const keysOf = (query: string): string[] => [...new URLSearchParams(query).keys()];

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s is proved',
  (slug, calculator) => {
    const links = kept.filter((one) => one.slug === slug);
    const inputs = Object.entries<Input>(calculator.inputs);
    const measured = inputs.filter(([, input]) => 'error' in input && input.error !== undefined);

    it('by a row of the contract (contract.ts)', () => {
      expect(contract.map(([name]) => name)).toContain(slug);
    });

    it('by a check against the outside with its slug as topic (test/outside)', () => {
      expect([...topics]).toContain(slug);
    });

    it('by kept links that hold every input, of a series one member or more, and every ±', () => {
      const held = new Set(links.flatMap(({ query }) => keysOf(query)));
      const missing = inputs.filter(([key, input]) =>
        input.kind === 'series'
          ? ![...held].some((one) => one.replace(/-\d+$/, '') === key)
          : !held.has(key),
      );
      expect(missing.map(([key]) => key)).toEqual([]);
      const without = measured.filter(([key]) => !held.has(`${key}-error`));
      expect(without.map(([key]) => key)).toEqual([]);
    });

    it('by kept links that hold every option of every choice', () => {
      const held = new Set(
        links.flatMap(({ query }) => [...new URLSearchParams(query)].map((pair) => pair.join())),
      );
      const missing = inputs.flatMap(([key, input]) =>
        input.kind === 'choice'
          ? Object.keys(input.options).filter((option) => !held.has(`${key},${option}`))
          : [],
      );
      expect(missing).toEqual([]);
    });

    it('by kept links that give every result', () => {
      const given = new Set(links.flatMap(({ results }) => Object.keys(results)));
      const names = Object.keys(calculator.results).filter(
        (name) => ![...given].some((one) => one.replace(/(-\d+)+$/, '') === name || one === name),
      );
      expect(names).toEqual([]);
    });

    it('carries the ± of each reading, alone, through to some result', () => {
      const lost = measured.filter(([key]) => {
        const ofError = `${key}-error`;
        return !links.some(({ query }) => {
          const texts = fromQuery(query);
          if (texts[ofError] === undefined) return false;
          const exact = Object.keys(texts).filter((name) => name.endsWith('-error'));
          const alone = {
            ...texts,
            ...Object.fromEntries(exact.map((name) => [name, '0'])),
            [ofError]: texts[ofError],
          };
          const { results, spreads } = evaluate(calculator, alone, reading);
          return [...flatten(results).keys()].some((name) => (spreads[name] ?? 0) > 0);
        });
      });
      expect(lost.map(([key]) => key)).toEqual([]);
    });

    it('never has a smaller ± for a worse reading', () => {
      for (const { query } of links) {
        const texts = fromQuery(query);
        const { errorFields, spreads } = evaluate(calculator, texts, reading);
        for (const field of errorFields) {
          if (field.kind !== 'figure' || texts[field.key] === undefined) continue;
          const worse = Math.min(field.spec.max, 1.5 * (field.value ?? 0));
          const after = evaluate(calculator, { ...texts, [field.key]: String(worse) }, reading);
          for (const [name, before] of Object.entries(spreads)) {
            expect(after.spreads[name], `${name} by ${field.key}`).toBeGreaterThanOrEqual(
              before * (1 - 1e-9),
            );
          }
        }
      }
    });
  },
);

describe('the contract', () => {
  it('has one row for each calculator, and kept links lead to calculators there are', () => {
    const slugs = calculators.map(({ slug }) => slug).sort();
    expect(contract.map(([slug]) => slug).sort()).toEqual(slugs);
    expect([...new Set(kept.map(({ slug }) => slug))].sort()).toEqual(slugs);
  });
});
