import type { AnyCalculator } from '../calculators/frame/types.ts';

const modules = import.meta.glob<{ default: AnyCalculator }>('../calculators/*/calculator.tsx', {
  eager: true,
});

/** Every calculator: one folder each below calculators/, found by its calculator.tsx. */
export const calculators: readonly AnyCalculator[] = Object.values(modules)
  .map((module) => module.default)
  .sort((a, b) => a.title.localeCompare(b.title, 'en'));

export function calculatorBySlug(slug: string): AnyCalculator {
  const found = calculators.find((calculator) => calculator.slug === slug);
  if (!found) throw new Error(`No calculator named ${slug} below calculators/`);
  return found;
}
