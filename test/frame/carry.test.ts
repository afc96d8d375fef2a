import { describe, expect, it } from 'vitest';
import { carriedOver } from '../../calculators/frame/carry.ts';
import { evaluate, type Origins } from '../../calculators/frame/evaluate.ts';
import { lastPossible, numberAt } from '../../calculators/frame/last-possible.ts';
import type { AnyCalculator, Carried } from '../../calculators/frame/types.ts';
import { run, sample } from './sample.ts';

const base: AnyCalculator = sample;

/** A square is as wide as a circle of its area, and its depth a third of that. */
const carrying: AnyCalculator = {
  ...base,
  carry: (choice, option, values): readonly Carried[] =>
    choice === 'shape' && option === 'square'
      ? [
          { from: 'width', to: { width: (values['width'] as number) * Math.sqrt(0.75) } },
          { from: 'depth', to: { depth: (values['width'] as number) / 3, 'gap-1': 0.25 } },
        ]
      : [],
};

const texts = (key: string, option: string, given = {}, of = carrying) =>
  carriedOver(of, run(given, {}, of), key, option).texts;

describe('what is carried over when a choice is about to change', () => {
  it('is each figure told the other way, to six digits', () => {
    expect(texts('shape', 'square', { width: '40' })).toEqual({
      width: '34.641',
      depth: '13.3333',
      'gap-1': '0.25',
    });
  });

  // A comma or a point before three digits may part thousands, where the box reaches them.
  it('is written so that it is read in one way only', () => {
    const far = { ...base.inputs['width']!, max: 5000 } as AnyCalculator['inputs'][string];
    const reaching = { ...carrying, inputs: { ...base.inputs, width: far } };
    const carried = (of: AnyCalculator) =>
      texts(
        'shape',
        'square',
        {},
        {
          ...of,
          carry: () => [{ from: 'width', to: { width: 12.345 } }],
        },
      )['width'];
    expect([carried(reaching), carried(carrying)]).toEqual(['12.3450', '12.345']);
  });

  it('is nothing where the choice stays, is none, or has no other way to tell it', () => {
    expect(texts('shape', 'square', { shape: 'square' })).toEqual({});
    expect(texts('shape', 'thick')).toEqual({});
    expect(texts('width', 'square')).toEqual({});
    expect(texts('nothing', 'square')).toEqual({});
    expect(texts('shape', 'square', {}, base)).toEqual({});
  });

  it('is nothing where there is no result to carry', () => {
    expect(texts('shape', 'square', { depth: '60', width: '40' })).toEqual({});
  });

  it('is of whoever gave what it comes from', () => {
    const originsOf = (origins: Origins) => {
      const given = evaluate(carrying, { width: '40', depth: '20' }, { lengths: 'mm', origins });
      return carriedOver(carrying, given, 'shape', 'square').origins;
    };
    expect(originsOf({ width: 'sheet', depth: 'link' })).toEqual({
      width: 'sheet',
      depth: 'link',
      'gap-1': 'link',
    });
    expect(originsOf({ width: 'example' })).toMatchObject({ width: 'example', depth: 'yours' });
    // What nobody gave stays the example's.
    expect(carriedOver(carrying, run({}, {}, carrying), 'shape', 'square').origins).toEqual({
      width: 'example',
      depth: 'example',
      'gap-1': 'example',
    });
  });
});

describe('a handle that is dragged too far', () => {
  it('stops where it is wanted, if that is possible', () => {
    expect(lastPossible(2, 5, () => true)).toBe(5);
  });

  it('stops on the possible side of the edge, nearer than is seen on any screen', () => {
    for (const [from, wanted, edge] of [
      [2, 10, 6],
      [2, -10, 1],
      [0, 1, 0.3],
    ] as const) {
      const possible = (value: number): boolean => (wanted > from ? value <= edge : value >= edge);
      const stop = lastPossible(from, wanted, possible);
      expect(possible(stop)).toBe(true);
      expect(Math.abs(stop - edge)).toBeLessThan(Math.abs(wanted - from) / 4000);
    }
  });

  it('stays where it was where nothing else is possible, after few trials', () => {
    let tried = 0;
    expect(lastPossible(3, 8, () => (tried += 1) < 0)).toBe(3);
    expect(tried).toBe(13);
  });
});

describe('the number that a key holds', () => {
  const state = run({ 'gap-2': '0.7', count: '3', 'hole-3': '7' });
  it.each([
    ['width', state.values['width']],
    ['gap-1', 0.4],
    ['gap-2', 0.7],
    ['hole-2', 9],
    ['hole-3', 7],
    ['hole-4', undefined],
    ['hole-1', undefined],
    ['gap-9', undefined],
    ['depth', undefined],
    ['shape', undefined],
    ['sizes', undefined],
    ['sizes-1', undefined],
    ['width-1', undefined],
    ['nothing', undefined],
    ['nothing-1', undefined],
    ['gap', undefined],
    ['gap-1-error', undefined],
  ] as const)('%s: %s', (key, value) => {
    expect(numberAt(base, state, key)).toBe(value);
  });
});
