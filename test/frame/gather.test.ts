import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { Texts } from '../../calculators/frame/evaluate.ts';
import { fieldNamed, run, sample } from './sample.ts';

/** A square of 10 has room for a corner of 0.5, and its gaps are no wider than that. */
const narrow: Texts = { shape: 'square', width: '10' };

describe('figures of the example beside given ones', () => {
  it('give way where they would not go with them, and those that hang on them after', () => {
    const state = run(narrow);
    expect(fieldNamed(state, 'corner')).toMatchObject({
      value: 0.5,
      text: '0.5',
      origin: 'example',
      given: false,
      gaveWay: true,
    });
    expect(state.values).toMatchObject({ corner: 0.5, gap: [0.4, 0.5] });
    expect(fieldNamed(state, 'gap-2')).not.toHaveProperty('gaveWay');
    expect(run({ ...narrow, count: '3' }).values['gap']).toEqual([0.4, 0.5, 0.25]);
    expect(fieldNamed(run({ ...narrow, count: '3' }), 'gap-3')).toMatchObject({ gaveWay: true });
    expect(run({ shape: 'square', width: '20' }).values['corner']).toBe(1);
  });

  it('are rounded, and stay in their range', () => {
    expect(run({ shape: 'square', width: '10.024' }).values['corner']).toBe(0.501);
    expect(run({ shape: 'square', width: '10', corner: '0' }).values['gap']).toEqual([0, 0]);
  });

  it('stand where they are given, and where nobody gave anything', () => {
    const given = run({ ...narrow, corner: '2', 'gap-1': '3' });
    expect(given.values).toMatchObject({ corner: 2, gap: [3, 0.5] });
    expect(fieldNamed(given, 'gap-1')).not.toHaveProperty('gaveWay');
    const origins = { shape: 'example', width: 'example' } as const;
    expect(run(narrow, { origins }).values['corner']).toBe(1);
    const shown = evaluate(sample, narrow, { lengths: 'mm', demonstration: true });
    expect(shown.values['corner']).toBe(1);
  });

  it('give way though a link holds them, as long as it says that they are nobody’s', () => {
    const texts = { ...narrow, corner: '0.8' };
    const linked = run(texts, { origins: { shape: 'link', width: 'link', corner: 'example' } });
    expect(linked.values['corner']).toBe(0.5);
    const own = run(texts, { origins: { shape: 'link', width: 'link', corner: 'link' } });
    expect(own.values['corner']).toBe(0.8);
  });
});
