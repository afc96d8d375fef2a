import { describe, expect, it } from 'vitest';
import { labelOf, rests } from '../../calculators/frame/rests-on.ts';
import type { AnyCalculator, Origin } from '../../calculators/frame/types.ts';
import {
  examplesBehind,
  remarksOf,
  touched,
  verdictOf,
  whoseAnswer,
  whoseBrief,
  stillToGive,
  whoseBeside,
  whoseLeads,
  whoseResults,
  whyNotShared,
} from '../../calculators/frame/whose.ts';
import { isAssumed, isExample, namesOf } from '../../calculators/frame/whose-field.ts';
import { fieldNamed, run, sample } from './sample.ts';

const calculator: AnyCalculator = sample;
/** Every figure of a state given, but for those named. */
function allBut(...keys: string[]) {
  const texts = {
    shape: 'round',
    width: '50',
    depth: '30',
    count: '2',
    'gap-1': '0.4',
    'gap-2': '0.5',
    'hole-2': '5',
    sizes: '1 2',
  };
  const origins: Record<string, Origin> = {};
  for (const key of Object.keys(texts)) origins[key] = keys.includes(key) ? 'example' : 'yours';
  return run(texts, { origins });
}

describe('whose a figure is', () => {
  it('is the example’s where nobody gave it and it is more than a neutral setting', () => {
    const examples = (state = run()) => state.fields.filter(isExample).map(({ key }) => key);
    expect(examples()).toEqual(['shape', 'width', 'gap-1', 'gap-2', 'hole-2', 'sizes']);
    expect(examples(run({ sizes: '' }, { origins: { sizes: 'example' } }))).not.toContain('sizes');
    expect(examples(run({ width: '50' }))).not.toContain('width');
    for (const origin of ['yours', 'link', 'sheet'] as const) {
      expect(examples(run({ width: '50' }, { origins: { width: origin } }))).not.toContain('width');
    }
  });

  it('is assumed where it is a setting, but for a choice', () => {
    expect(
      run()
        .fields.filter(isAssumed)
        .map(({ key }) => key),
    ).toEqual(['count']);
    expect(run({ count: '2' }).fields.filter(isAssumed)).toEqual([]);
    const shape = { ...calculator.inputs['shape']!, assumed: true } as const;
    const other = { ...calculator, inputs: { ...calculator.inputs, shape } };
    const field = fieldNamed(run({}, {}, other), 'shape')!;
    expect([isAssumed(field), isExample(field)]).toEqual([false, false]);
  });

  it('is named and orders nothing beside an engine of the reader’s own, though nothing is given', () => {
    const own = run({}, { ownEngine: true });
    expect([run().ownEngine, own.ownEngine]).toEqual([false, true]);
    expect(remarksOf(calculator, own)).toEqual([
      'Not judged yet: the size. Shape and width are still the example’s; give them first.',
      'Not judged yet: the second share. Width and gap 2 are still the example’s; give them first.',
    ]);
    expect(verdictOf(calculator, own, 'gaps', 'mm', 2)).toMatch(/^not judged yet, since /);
    expect(whoseAnswer(calculator, own)).toBe(
      '2 figures are still the example’s: shape and width.',
    );
    expect(whoseLeads(calculator, own)).toBe(' (with the example’s shape and width)');
    const shown = run({}, { ownEngine: true, demonstration: true });
    expect(whoseLeads(calculator, shown)).toBe(' (worked example)');
  });

  it('knows whether anybody has given anything', () => {
    expect([touched(run()), touched(run({ count: '2' }))]).toEqual([false, true]);
  });

  it('names the first few', () => {
    const names = (...keys: string[]) => {
      const { fields } = run({ count: '3' });
      return namesOf(keys.map((key) => fields.find((field) => field.key === key)!));
    };
    expect(names()).toBe('');
    expect(names('width')).toBe('width');
    expect(names('width', 'shape')).toBe('width and shape');
    expect(names('width', 'shape', 'gap-1', 'gap-2')).toBe('width, shape, gap 1 and gap 2');
    expect(names('width', 'shape', 'gap-1', 'gap-2', 'gap-3')).toBe(
      'width, shape, gap 1 and 2 more',
    );
    expect(names('width', 'width')).toBe('width');
    const [field] = run().fields.slice(1);
    const called = (label: string) => ({ ...field!, spec: { ...sample.inputs.width, label } });
    const odd = [called('Ports, open'), called('TDC'), called('é')] as never;
    expect(namesOf(odd)).toBe('ports, open; TDC; and é');
  });
});

describe('what a figure rests on', () => {
  const on = (
    state = run(),
    ...reads: Parameters<typeof rests>[2] extends Iterable<infer R> ? R[] : never
  ) => rests(calculator, state, reads).map((field) => field.key);
  const three = run({ count: '3' });

  it('an input on itself, a series on all its members or on one', () => {
    expect(on(run(), { kind: 'value', name: 'width' })).toEqual(['width']);
    expect(on(three, { kind: 'value', name: 'gap' })).toEqual(['gap-1', 'gap-2', 'gap-3']);
    expect(on(three, { kind: 'value', name: 'gap', index: 1 })).toEqual(['gap-2']);
    expect(on(three, { kind: 'value', name: 'hole', index: 1 })).toEqual(['hole-3']);
    expect(on(three, { kind: 'value', name: 'hole' })).toEqual(['hole-2', 'hole-3']);
  });

  it('no input on another whose name begins alike, nor on one that does not apply', () => {
    const inputs = {
      ...calculator.inputs,
      'gap-wide': {
        ...sample.inputs.gap,
        label: 'Wide',
        member: (i: number) => `Wide ${String(i)}`,
      },
    };
    const other = { ...calculator, inputs };
    const state = run({}, {}, other);
    const keys = rests(other, state, [{ kind: 'value', name: 'gap' }]).map(({ key }) => key);
    expect(keys).toEqual(['gap-1', 'gap-2']);
    expect(on(run(), { kind: 'value', name: 'corner' })).toEqual([]);
    expect(on(run(), { kind: 'value', name: 'none' })).toEqual([]);
  });

  it('a result on what it names, each once; on all where it names nothing', () => {
    expect(on(run(), { kind: 'result', name: 'area' })).toEqual(['shape', 'width']);
    expect(on(run(), { kind: 'result', name: 'play' })).toEqual([]);
    expect(on(run(), { kind: 'result', name: 'area' }, { kind: 'value', name: 'width' })).toEqual([
      'shape',
      'width',
    ]);
    const { restsOn: _, ...without } = calculator;
    expect(rests(without, run(), [{ kind: 'result', name: 'play' }])).toHaveLength(8);
    expect(on(run(), { kind: 'result', name: 'unheard-of' })).toHaveLength(8);
  });

  it('a row of results on its own member of a series', () => {
    const share = (index?: number) =>
      on(three, { kind: 'result', name: 'share', ...(index === undefined ? {} : { index }) });
    expect(share()).toEqual(['width', 'gap-1', 'gap-2', 'gap-3']);
    expect(share(2)).toEqual(['width', 'gap-3']);
    const holes = { ...calculator, restsOn: { share: ['hole-N'] as const } };
    const behind = (index: number) =>
      rests(holes as never, three, [{ kind: 'result', name: 'share', index }]).map(
        ({ key }) => key,
      );
    expect(behind(1)).toEqual(['hole-2']);
    expect(behind(2)).toEqual(['hole-3']);
    expect(behind(0)).toEqual([]);
  });

  it('a result on one member of a series, whatever its row', () => {
    const one = {
      ...calculator,
      restsOn: { share: ['gap-2', 'hole-3'], area: ['gap-9', 'width-2'] },
    } as AnyCalculator;
    const behind = (name: string, index?: number) =>
      rests(one, three, [{ kind: 'result', name, ...(index === undefined ? {} : { index }) }]).map(
        ({ key }) => key,
      );
    expect(behind('share')).toEqual(['gap-2', 'hole-3']);
    expect(behind('share', 0)).toEqual(['gap-2', 'hole-3']);
    expect(behind('area')).toEqual([]);
  });

  it('goes by the state where it hangs on it', () => {
    expect(on(run(), { kind: 'result', name: 'grid' })).toEqual(['gap-1', 'gap-2']);
    expect(on(run({ shape: 'square' }), { kind: 'result', name: 'grid', index: 0 })).toEqual([
      'shape',
      'gap-1',
    ]);
  });

  it('an input by the name of a member is itself', () => {
    const inputs = { ...calculator.inputs, 'edge-N': sample.inputs.width };
    const odd = { ...calculator, inputs, restsOn: { area: ['edge-N'] } } as AnyCalculator;
    const keys = rests(odd, run({}, {}, odd), [{ kind: 'result', name: 'area', index: 0 }]);
    expect(keys.map(({ key }) => key)).toEqual(['edge-N']);
  });

  it('has a label, whatever its kind', () => {
    const labels = ['shape', 'width', 'sizes'].map((key) => labelOf(fieldNamed(run(), key)!));
    expect(labels).toEqual(['Shape', 'Width', 'Sizes in the drawer']);
  });

  it('tells which of those nobody gave', () => {
    const keys = (...but: string[]) =>
      examplesBehind(calculator, allBut(...but), [{ kind: 'result', name: 'area' }]).map(
        ({ key }) => key,
      );
    expect(keys()).toEqual([]);
    expect(keys('width', 'depth')).toEqual(['width']);
  });
});

describe('remarks', () => {
  const said = (state = run(), lengths: 'mm' | 'in' = 'mm') =>
    remarksOf(calculator, state, lengths);

  it('are called an example’s where all is', () => {
    expect(said()).toEqual([
      'In this example: It is large.',
      'In this example: The second gap is open.',
      'In this example: The second share is a guess.',
    ]);
    const demonstration = run({ width: '50', shape: 'round' }, { demonstration: true });
    expect(said(demonstration)[0]).toBe('It is large.');
    expect(said(demonstration)[1]).toBe('In this example: The second gap is open.');
  });

  it('are said plainly where every figure behind them was given', () => {
    expect(said(allBut())).toEqual([
      'It is large.',
      'The second gap is open.',
      'The second share is a guess.',
    ]);
    expect(said(allBut('depth', 'sizes', 'gap-1', 'hole-2'))).toEqual(said(allBut()));
  });

  it('are not said, and name what is missing, where one was not; a quiet one not at all', () => {
    expect(said(allBut('width', 'shape'))).toEqual([
      'Not judged yet: the size. Shape and width are still the example’s; give them first.',
      'The second gap is open.',
      'Not judged yet: the second share. Width is still the example’s; give it first.',
    ]);
    expect(said(allBut('gap-2'))).toEqual([
      'It is large.',
      'Not judged yet: the second share. Gap 2 is still the example’s; give it first.',
    ]);
  });

  it('know the reader’s lengths, and rest on no figure for them', () => {
    expect(said(allBut('width', 'depth'), 'in').at(-1)).toBe('Inches it is.');
    expect(said(run(), 'in').at(-1)).toBe('Inches it is.');
  });

  it('rest on what is read outside of them too, and a bare sentence on all that is read there', () => {
    const cornered = run({ shape: 'square', corner: '4.5' });
    expect(said(cornered).at(-1)).toBe('Round it off.');
    const other: AnyCalculator = {
      ...calculator,
      remarks: (v) => [v['width'] === 50 ? 'Fifty.' : 'No.'],
    };
    expect(remarksOf(other, allBut())).toEqual(['Fifty.']);
    expect(remarksOf(other, allBut('width'))).toEqual([
      'Not judged yet: what follows from the figures. Width is still the example’s; give it first.',
    ]);
  });

  it('rest on a whole state where it is gone through, and on every row where a column is', () => {
    const through = (remarks: AnyCalculator['remarks']) =>
      remarksOf({ ...calculator, remarks: remarks! }, allBut('gap-2', 'sizes'))[0];
    expect(through((v) => [Object.keys(v).length > 0 ? 'Keys.' : ''])).toMatch(/^Not judged yet/);
    expect(through((v) => ['width' in v ? 'It is in.' : ''])).toBe('It is in.');
    expect(through((v) => ['sizes' in v ? 'It is in.' : ''])).toMatch(/Sizes in the drawer is/);
    expect(through((v) => [(v['sizes'] as number[])[0] === 1 ? 'One.' : ''])).toMatch(
      /^Not judged/,
    );
    expect(through((_, r) => [(r['share'] as number[])[0]! > 0 ? 'Some.' : ''])).toBe('Some.');
    expect(
      through((_, r) => [(r['share'] as number[]).some((s) => s > 0.9) ? 'Some.' : '']),
    ).toMatch(/Gap 2 is/);
    expect(through((v) => [(v['gap'] as number[]).length === 2 ? 'Two.' : ''])).toBe('Two.');
  });

  it('rest on what a ± rests on', () => {
    const through = (name: string) =>
      remarksOf(
        {
          ...calculator,
          remarks: (_v, _r, { spreads }) => [spreads[name] === -1 ? 'No.' : 'Yes.'],
        },
        allBut('gap-2'),
      )[0];
    expect(through('share-1')).toBe('Yes.');
    expect(through('share-2')).toMatch(/Gap 2 is still/);
    expect(through('grid-1-1')).toMatch(/Gap 2 is still/);
    expect(through('area')).toBe('Yes.');
    expect(through('unheard-of-2')).toMatch(/^Not judged/);
  });

  it('are said once, and not at all where there is no result', () => {
    const twice: AnyCalculator = { ...calculator, remarks: () => ['Once.', 'Once.'] };
    expect(remarksOf(twice, run())).toEqual(['Once.']);
    expect(said(run({ width: '5000' }))).toEqual([]);
    const { remarks: _, ...silent } = calculator;
    expect(remarksOf(silent as AnyCalculator, run())).toEqual([]);
  });
});

describe('the verdict of a row', () => {
  const of = (state: ReturnType<typeof run>, row: number, table = 'gaps') =>
    verdictOf(calculator, state, table, 'mm', row);

  it('is said, or not yet; of the example as its table says', () => {
    expect([of(allBut(), 1), of(allBut(), 2)]).toEqual(['', 'too wide']);
    expect([of(run(), 1), of(run(), 2)]).toEqual(['', 'too wide']);
    expect(of(allBut('gap-1'), 1)).toBe('');
    expect(of(allBut('gap-2'), 2)).toBe('not judged yet, since gap 2 is still the example’s.');
    expect(of(allBut('gap-2', 'width'), 2)).toBe(
      'not judged yet, since width and gap 2 are still the example’s.',
    );
    expect(of(allBut('gap-1'), 2)).toBe('too wide');
  });

  it('is nothing without a result or a table that judges', () => {
    expect(of(run({ width: '5000' }), 2)).toBe('');
    expect(of(run(), 2, 'none')).toBe('');
  });
});

describe('what stands beneath an answer', () => {
  it('says so where all is the example’s', () => {
    expect(whoseAnswer(calculator, run())).toBe(
      'Worked example of an invented engine. Give your own figures: shape and width.',
    );
    const settled = { ...calculator, restsOn: { ...calculator.restsOn, area: ['count'] } };
    expect(whoseAnswer(settled as AnyCalculator, run())).toBe(
      'Worked example of an invented engine. Give your own figures.',
    );
    expect(whoseAnswer(calculator, run({ width: '5' }, { demonstration: true }))).toBe(
      'Worked example. Change any figure to see what it does.',
    );
    expect(whoseBrief(calculator, run())).toBe('Worked example of an invented engine.');
    expect(whoseBrief(calculator, run({ width: '5' }, { demonstration: true }))).toBe(
      'Worked example of an invented engine.',
    );
    expect(stillToGive(calculator, run())).toBe('Give your own: shape and width.');
    expect(whoseLeads(calculator, run())).toBe(' (worked example)');
    expect(whoseResults(calculator, run({ width: '50' }, { demonstration: true }), ['area'])).toBe(
      ' (worked example)',
    );
  });

  it('counts and names what is still missing of what leads', () => {
    expect(whoseAnswer(calculator, allBut())).toBeUndefined();
    expect(whoseAnswer(calculator, allBut('gap-1', 'sizes'))).toBeUndefined();
    expect(whoseAnswer(calculator, allBut('width'))).toBe(
      '1 figure is still the example’s: width.',
    );
    expect(whoseAnswer(calculator, allBut('width', 'shape', 'depth'))).toBe(
      '2 figures are still the example’s: shape and width.',
    );
    expect(whoseBrief(calculator, allBut())).toBeUndefined();
    expect(stillToGive(calculator, allBut())).toBeUndefined();
    expect(whoseBrief(calculator, allBut('width', 'shape'))).toBe(
      '2 figures are still the example’s.',
    );
    expect(stillToGive(calculator, allBut('width'))).toBe('Give your own: width.');
    expect(whoseLeads(calculator, allBut('gap-1'))).toBe('');
    expect(whoseLeads(calculator, allBut('width'))).toBe(' (with the example’s width)');
    expect(whoseResults(calculator, allBut('gap-1'), ['share'])).toBe(
      ' (with the example’s gap 1)',
    );
  });

  it('and beside another result what that rests on beyond it', () => {
    const beside = (name: string, ...but: string[]) =>
      whoseBeside(calculator, allBut(...but), name);
    expect(beside('share', 'gap-1')).toBe('with the example’s gap 1');
    expect(beside('share', 'gap-1', 'width')).toBe('with the example’s gap 1');
    expect(beside('share', 'width')).toBeUndefined();
    expect(beside('share')).toBeUndefined();
    expect(whoseBeside(calculator, run(), 'share')).toBeUndefined();
    expect(whoseBeside(calculator, run({}, { ownEngine: true }), 'share')).toBe(
      'with the example’s gap 1 and gap 2',
    );
    const state = run(
      { shape: 'thick', width: '50' },
      { origins: { shape: 'yours', width: 'example' } },
    );
    expect(whoseBeside(calculator, state, 'area')).toBeUndefined();
    // Of a square there is no grid, and nothing to be said of what it would rest on.
    const square = run({ shape: 'square', width: '50' });
    expect(whoseBeside(calculator, square, 'share')).toBe('with the example’s gap 1 and gap 2');
    expect(whoseBeside(calculator, square, 'grid')).toBeUndefined();
  });

  it('goes by all results where none leads, and by none that does not exist', () => {
    const area = { ...calculator.results['area']!, lead: false };
    const level = { ...calculator, results: { ...calculator.results, area } };
    expect(whoseAnswer(level, allBut('gap-1', 'sizes'))).toBe(
      '2 figures are still the example’s: gap 1 and sizes in the drawer.',
    );
    const open = run(
      { shape: 'thick', width: '50' },
      { origins: { shape: 'yours', width: 'example' } },
    );
    expect(whoseAnswer(calculator, open)).toBeUndefined();
  });
});

describe('what may leave the page', () => {
  it('is what is typed and worked out, and nothing else', () => {
    expect(whyNotShared(run())).toBeUndefined();
    expect(whyNotShared(run({ width: 'x' }))).toBe(
      '“Width” cannot be taken as it is typed. Put it right first: what leaves this page is what it shows.',
    );
    const held = { width: { value: 50, origin: 'yours' } } as const;
    expect(whyNotShared(run({ width: 'x' }, { held }))).toMatch(/^“Width” cannot be taken/);
    expect(whyNotShared(run({ 'width-error': 'x' }))).toMatch(/^“± of width” cannot be taken/);
    expect(whyNotShared(run({ width: '66' }))).toBe(
      'There is no result yet. Put the figures above right first.',
    );
  });
});
