import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { checklist } from '../../content/first-start/checklist.ts';
import { faults } from '../../content/first-start/faults.ts';
import { signGroups } from '../../content/first-start/signs.ts';

const hasCalculator = (slug: string): boolean => existsSync(`calculators/${slug}/calculator.tsx`);
const hasArticle = (slug: string): boolean => existsSync(`content/articles/${slug}.mdx`);

describe('what a step or a fault leads to is there', () => {
  it.each(order)('%s', (id) => {
    const { calculators, articles } = steps[id];
    expect(calculators.length + articles.length, 'something behind it').toBeGreaterThan(0);
    expect(steps[id].calculators.filter((slug) => !hasCalculator(slug))).toEqual([]);
    expect(steps[id].articles.filter((slug) => !hasArticle(slug))).toEqual([]);
  });

  it.each(faults.map((fault) => [fault.id, fault] as const))('%s', (_, { looks }) => {
    for (const { step, calculator } of looks) {
      expect(step ?? calculator, 'a figure to measure').toBeDefined();
      if (calculator !== undefined) expect(hasCalculator(calculator)).toBe(true);
    }
  });
});

describe('the first start page warns of what can hurt', () => {
  const all = JSON.stringify([checklist, signGroups, faults]).toLowerCase();

  it.each([
    'carbon monoxide',
    'petrol vapour',
    'extinguisher',
    'outdoors',
    'ear protection',
    'runs away',
    'kick-back',
    'high voltage',
    'hot',
    'never water',
  ])('%s', (danger) => {
    expect(all).toContain(danger);
  });
});
