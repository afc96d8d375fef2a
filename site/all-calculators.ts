import type { Stage } from '../calculators/frame/stages.ts';
import type { AnyCalculator } from '../calculators/frame/types.ts';

/** A calculator with the stage of the job that its folder lies in. */
export type PlacedCalculator = AnyCalculator & { readonly stage: Stage };

const modules = import.meta.glob<{ default: AnyCalculator }>('../calculators/*/*/calculator.tsx', {
  eager: true,
});

/** Every calculator: one folder each below its stage, found by its calculator.tsx. */
export const calculators: readonly PlacedCalculator[] = Object.entries(modules)
  .map(([path, module]) => ({ ...module.default, stage: path.split('/').at(-3) as Stage }))
  .sort((a, b) => a.title.localeCompare(b.title, 'en'));

export function calculatorBySlug(slug: string): PlacedCalculator {
  const found = calculators.find((calculator) => calculator.slug === slug);
  if (!found) throw new Error(`No calculator named ${slug} below calculators/`);
  return found;
}
