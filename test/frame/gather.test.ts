import { describe, expect, it } from 'vitest';
import { fromQuery, originsIn, toQuery } from '../../calculators/frame/address.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { Evaluation, Texts } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator, AnyValues, Input } from '../../calculators/frame/types.ts';
import { fieldNamed, run, sample } from './sample.ts';

/** A square of 10 has room for a corner of 0.5, and its gaps are no wider than that. */
const narrow: Texts = { shape: 'square', width: '10' };

/** Two lengths that have to fit into a third together, each of which gives way to it. */
const part = (label: string, other: string): Input => ({
  kind: 'number',
  label,
  help: 'By rule.',
  why: 'no sample is otherwise',
  unit: 'mm',
  min: 1,
  max: 9,
  step: 1,
  default: 5,
  givesWay: (own: number, v: AnyValues) =>
    own + (v[other] as number) <= (v['whole'] as number) ? undefined : (v['whole'] as number) / 3,
});
const { givesWay: _, ...whole } = part('Whole', '') as Input & { givesWay: unknown };
const fitted: AnyCalculator = {
  slug: 'fitted',
  title: 'Two in one',
  purpose: 'Fits two into one.',
  alsoCalled: [],
  inputs: {
    first: part('First', 'second'),
    second: part('Second', 'first'),
    whole: { ...whole, max: 20, default: 10 } as Input,
  },
  results: {},
  fieldOf: {},
  compute: () => ({}),
  picture: () => null!,
  care: 'A sample burns nobody.',
  limits: [],
  articles: [],
};

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

  it('are rounded', () => {
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

  it('say so after a link that holds them, as they did before it', () => {
    for (const texts of [narrow, { ...narrow, count: '3' }]) {
      const first = run(texts);
      const query = toQuery(first);
      const again = run(fromQuery(query), { origins: originsIn(query) });
      const moved = (state: Evaluation): string[] =>
        state.fields.flatMap((field) => ('gaveWay' in field ? [field.key] : []));
      expect(moved(again)).toEqual(moved(first));
      expect(moved(again)).toContain('corner');
      expect(again.values).toEqual(first.values);
    }
  });

  it('stand where a link has them otherwise and they go with what is given', () => {
    const texts = { ...narrow, corner: '0.3', 'gap-1': '0.2', 'gap-2': '0.1' };
    const origins = { shape: 'link', width: 'link', corner: 'example' } as const;
    const nobodys = { ...origins, 'gap-1': 'example', 'gap-2': 'example' } as const;
    const state = run(texts, { origins: nobodys });
    expect(state.values).toMatchObject({ corner: 0.3, gap: [0.2, 0.1] });
    for (const key of ['corner', 'gap-1', 'gap-2']) {
      expect(fieldNamed(state, key)).not.toHaveProperty('gaveWay');
    }
  });

  it('say nothing where they come to what they were', () => {
    const same = {
      ...fitted,
      inputs: {
        ...fitted.inputs,
        first: { ...part('First', 'second'), givesWay: (own: number) => own },
      },
    } as AnyCalculator;
    const state = run({ whole: '12' }, {}, same);
    expect(fieldNamed(state, 'first')).toMatchObject({ value: 5 });
    expect(fieldNamed(state, 'first')).not.toHaveProperty('gaveWay');
  });

  it('do not go back, though the other has made room, and stay in their range', () => {
    expect(run({ whole: '9' }, {}, fitted).values).toMatchObject({ first: 3, second: 3 });
    expect(run({ whole: '1.5' }, {}, fitted).values).toMatchObject({ first: 1, second: 1 });
  });
});

describe('what a field is made of', () => {
  const inputs = sample.inputs as unknown as Record<string, Input>;
  const inRows = {
    ...(sample as unknown as AnyCalculator),
    inputs: {
      ...inputs,
      gap: { ...inputs['gap']!, row: 'Pair' },
      hole: { ...inputs['hole']!, row: 'Pair' },
    } as AnyCalculator['inputs'],
  };

  it('stands in the row of its number, under the label of its series', () => {
    const state = run({ count: '3' }, {}, inRows);
    expect(fieldNamed(state, 'gap-1')).toMatchObject({
      spec: { inRow: { of: 'Pair', index: 1, heading: 'Gap' } },
    });
    expect(fieldNamed(state, 'hole-3')).toMatchObject({
      spec: { inRow: { of: 'Pair', index: 3, heading: 'Hole' } },
    });
    const alone = fieldNamed(run({ count: '3' }), 'gap-1')!;
    expect('spec' in alone && alone.spec).not.toHaveProperty('inRow');
  });

  it('may be left empty where it is optional, and only there', () => {
    expect(fieldNamed(run(), 'depth')).toMatchObject({ spec: { optional: true } });
    expect(fieldNamed(run(), 'width')).not.toHaveProperty('spec.optional');
  });

  it('has no part in a ± of nothing', () => {
    const measuredOf = (texts: Texts): string[] =>
      Object.values(run({ shape: 'square', depth: '10', ...texts }).parts).flatMap((parts) =>
        parts.map(({ key }) => key),
      );
    expect(measuredOf({})).toContain('width');
    expect(measuredOf({ 'width-error': '0' })).not.toContain('width');
  });
});
