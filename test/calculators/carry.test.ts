import { describe, expect, it } from 'vitest';
import { carriedOver } from '../../calculators/frame/carry.ts';
import { evaluate, type Origins, type Texts } from '../../calculators/frame/evaluate.ts';
import { lastPossible, numberAt } from '../../calculators/frame/last-possible.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';

const run = (slug: string, texts: Texts) =>
  evaluate(calculatorBySlug(slug), texts, { lengths: 'mm' });

describe('what is given another way is the same figure', () => {
  it.each([
    ['piston-position', { from: 'travel', travel: '2.7' }, 'from', 'angle', 'angle'],
    ['piston-position', { from: 'angle', angle: '23' }, 'from', 'arc', 'angle'],
    [
      'piston-position',
      { from: 'angle', angle: '23', given: 'other', 'given-stroke': '60' },
      'from',
      'travel',
      'angle',
    ],
    ['breaker-cam', { from: 'gap', gap: '0.42' }, 'from', 'dwell', 'opens'],
    ['breaker-cam', { from: 'dwell', dwell: '190' }, 'from', 'gap', 'opens'],
    ['fuel-and-oil', { by: 'ratio', ratio: '32' }, 'by', 'percent', 'oil'],
    ['fuel-and-oil', { by: 'percent', percent: '3' }, 'by', 'ratio', 'oil'],
    [
      'plate-setting',
      { as: 'travel', target: '2.4', 'fired-1': '2.6' },
      'as',
      'angle',
      'plate-move',
    ],
    ['plate-setting', { as: 'angle', 'target-angle': '20' }, 'as', 'travel', 'plate-move'],
  ] as const)('%s %o, %s now %s', (slug, texts, choice, option, result) => {
    const before = run(slug, texts);
    const carried = carriedOver(calculatorBySlug(slug), before, choice, option);
    expect(Object.keys(carried.texts).length).toBeGreaterThan(0);
    const after = run(slug, { ...texts, [choice]: option, ...carried.texts });
    expect(after.computed).toBe(true);
    expect(after.results[result] as number).toBeCloseTo(before.results[result] as number, 3);
  });

  it('is of whoever gave it', () => {
    const whose = (texts: Texts, origins?: Origins) => {
      const calculator = calculatorBySlug('piston-position');
      const before = evaluate(calculator, texts, { lengths: 'mm', ...(origins && { origins }) });
      return carriedOver(calculator, before, 'from', 'angle').origins;
    };
    expect(whose({ travel: '2.7' }, { travel: 'sheet' })).toEqual({ angle: 'sheet' });
    expect(whose({ travel: '2.7' })).toEqual({ angle: 'yours' });
    expect(whose({})).toEqual({ angle: 'example' });
  });

  it('is nothing where the choice stays, or is of another kind, or there is no result', () => {
    const calculator = calculatorBySlug('piston-position');
    const none = (texts: Texts, key: string, option: string) =>
      Object.keys(carriedOver(calculator, run('piston-position', texts), key, option).texts);
    expect(none({}, 'from', 'travel')).toEqual([]);
    expect(none({}, 'given', 'other')).toEqual([]);
    expect(none({ rod: '11' }, 'from', 'angle')).toEqual([]);
  });
});

describe('a handle stops at the last possible place', () => {
  it('on the way to an impossible one, and nowhere else', () => {
    expect(lastPossible(2, 5, () => true)).toBe(5);
    const stop = lastPossible(2, 10, (value) => value <= 6);
    expect(stop).toBeLessThanOrEqual(6);
    expect(stop).toBeGreaterThan(5.99);
    expect(lastPossible(2, -10, (value) => value >= 1)).toBeGreaterThanOrEqual(1);
  });

  it('knows the number that a field holds, a member of a series too', () => {
    const calculator = calculatorBySlug('slide-balance');
    const state = run('slide-balance', { 'opening-2': '2.75' });
    expect(numberAt(calculator, state, 'opening-2')).toBe(2.75);
    expect(numberAt(calculator, state, 'thread')).toBe(state.values['thread']);
    expect(numberAt(calculator, state, 'method')).toBeUndefined();
    expect(numberAt(calculator, state, 'nothing-1')).toBeUndefined();
  });
});
