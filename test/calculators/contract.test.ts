import { describe, expect, it } from 'vitest';
import { evaluate, knownKeys } from '../../calculators/frame/evaluate.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { contract } from './contract.ts';

const words = (text: string): string[] => text.split(' ').filter((word) => word !== '');

describe.each(contract)('%s', (slug, inputs, results) => {
  const calculator = calculatorBySlug(slug);

  it('knows every key', () => {
    const known = knownKeys(calculator);
    expect(words(inputs).filter((key) => !known.has(key))).toEqual([]);
  });

  it('gives every result with its defaults', () => {
    const { results: given } = evaluate(calculator, {}, { lengths: 'mm' });
    const names = flatten(given);
    expect(words(results).filter((name) => !names.has(name))).toEqual([]);
  });
});
