import { describe, expect, it } from 'vitest';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import type { Held } from '../../calculators/frame/field/fields.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { lastGood, letGo, refusedIn } from '../../site/calculator/last-good.ts';

const calculator = calculatorBySlug('piston-position');
const of = (texts: Texts) => evaluate(calculator, texts, { lengths: 'mm' });
const travel: Held = { value: 2, origin: 'yours' };
const before: Readonly<Record<string, Held>> = { travel };

describe('what a box held when it was last read well', () => {
  it('is what stands in it, once another is typed into', () => {
    expect(lastGood(of({ travel: '2.7' }), before, 'stroke')['travel']).toMatchObject({
      value: 2.7,
      origin: 'yours',
    });
    expect(lastGood(of({ travel: '2.7' }), before)['rod']!.origin).toBe('example');
  });

  it('stays while the box is typed into: 4 on the way to 4 gal was never meant', () => {
    expect(lastGood(of({ travel: '2.7' }), before, 'travel')['travel']).toEqual(before['travel']);
  });

  it('stays while it cannot be read, in the box of a ± too', () => {
    expect(lastGood(of({ travel: '2,7x' }), before)['travel']).toEqual(before['travel']);
    const spread: Record<string, Held> = { 'travel-error': { value: 0.02, origin: 'yours' } };
    const state = of({ 'travel-error': 'x' });
    expect(lastGood(state, spread)['travel-error']).toEqual(spread['travel-error']);
    expect(refusedIn(state)).toEqual({ 'travel-error': 'x' });
  });
});

it('once its box is left, what cannot be read holds nothing any more, and every other box does', () => {
  const rod: Held = { value: 100, origin: 'yours' };
  const held = { travel, rod };
  expect(letGo(of({ travel: 'x' }), held)).toEqual({
    travel: { ...travel, left: true },
    rod,
  });
});
