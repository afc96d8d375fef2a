import { expect, it } from 'vitest';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { stillToGive } from '../../calculators/frame/whose.ts';
import { calculators } from '../../site/all-calculators.ts';
import { reading } from './states.ts';

const saidOf = (slug: string, texts: Texts = {}): string | undefined => {
  const calculator = calculators.find((one) => one.slug === slug)!;
  return stillToGive(calculator, evaluate(calculator, texts, reading));
};

it.each([
  // The members of a series stand together, and what the page is about comes first.
  ['jet-set', {}, 'Give your own: bore of jets 1 to 8.'],
  [
    'hole-pattern',
    {},
    'Give your own: distances 1 to 10, diameter of holes 1 to 5, how it was measured and 2 more.',
  ],
  // Of two, both are named; what the series says it is of is what is numbered.
  [
    'firing-order',
    { cylinders: '2' },
    'Give your own: crank pins 1 and 2, reciprocating mass and stroke.',
  ],
  ['port-timing', {}, 'Give your own: top edge of ports 1 and 2, stroke, rod length and 4 more.'],
  // Four are still named: one more is no fewer words.
  [
    'piston-position',
    { given: 'other', travel: '2.7' },
    'Give your own: other stroke, other rod length, stroke and rod length.',
  ],
  // Given ones are not asked for again.
  ['piston-position', { travel: '3' }, 'Give your own: stroke and rod length.'],
  // Of two that are called the same it is told which is meant.
  [
    'piston-position',
    { given: 'other', travel: '2.7', stroke: '50', rod: '100', 'given-rod': '120' },
    'Give your own: other stroke.',
  ],
] as const)('%s %j: %s', (slug, texts, said) => {
  expect(saidOf(slug, texts)).toBe(said);
});

it('no calculator asks for more than four by name in one sentence', () => {
  for (const calculator of calculators) {
    const said = stillToGive(calculator, evaluate(calculator, {}, reading)) ?? '';
    expect(said.split(/[,;] | and (?!\d+(?! more))/).length, said).toBeLessThanOrEqual(4);
    expect(said.length, said).toBeLessThan(120);
  }
});
