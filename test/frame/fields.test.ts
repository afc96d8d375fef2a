import { describe, expect, it } from 'vitest';
import { allFrom, knownKeys, seriesKeys } from '../../calculators/frame/evaluate.ts';
import {
  choiceField,
  cutText,
  listParts,
  rangeWords,
  readFigure,
  readList,
  type FieldSpec,
} from '../../calculators/frame/field/fields.ts';
import { readOrder } from '../../calculators/plate/order-reader.ts';
import { Absent, type AnyCalculator } from '../../calculators/frame/types.ts';
import { fieldNamed, run, sample } from './sample.ts';

const calculator: AnyCalculator = sample;
const gap: FieldSpec = {
  label: 'contact gap',
  help: '',
  unit: 'mm',
  min: 0.1,
  max: 5,
  why: 'no points open wider',
  step: 0.01,
};
const reading = { lengths: 'mm' } as const;
const inches = { lengths: 'in' } as const;
const figure = (text: string | undefined, spec = gap, held?: number, lengths = reading) =>
  readFigure('gap', spec, text, 0.35, held, lengths as typeof reading);

describe('a field of one figure', () => {
  it('holds its default until it is given', () => {
    expect(figure(undefined)).toMatchObject({
      kind: 'figure',
      key: 'gap',
      text: '0.35',
      value: 0.35,
      given: false,
      origin: 'example',
      heldOver: false,
      unread: false,
    });
    expect(figure(undefined)).not.toHaveProperty('problem');
    expect(readFigure('gap', gap, undefined, undefined, undefined, reading).text).toBe('');
  });

  it('holds what was typed, and whose it is', () => {
    expect(figure('16 thou')).toMatchObject({
      text: '16 thou',
      value: 0.4064,
      given: true,
      origin: 'yours',
      heldOver: false,
      unread: false,
    });
  });

  it('holds its last good value where a text cannot be read; without one it is not read', () => {
    const bad =
      /^“wide” cannot be read as a length\. Type a figure such as 0\.35, 0\.35 mm, 0\.014 in or 14 thou\.$/;
    expect(figure('wide', gap, 0.4)).toMatchObject({ value: 0.4, heldOver: true, unread: false });
    expect(figure('wide', gap, 0.4).problem).toMatch(bad);
    expect(figure('wide')).toMatchObject({ value: 0.35, heldOver: false, unread: true });
    expect(figure('wide').problem).toMatch(bad);
  });

  it('takes its whole range, ends and all, and says what the range is beyond it', () => {
    for (const text of ['0.1', '5', '2']) expect(figure(text).problem, text).toBeUndefined();
    for (const text of ['0.0999', '5.001']) {
      expect(figure(text), text).toMatchObject({ value: Number(text), heldOver: false });
      expect(figure(text).problem).toContain(
        `Contact gap must be from 0.1 mm to 5 mm: no points open wider. “${text}” is outside that; check the figure and its unit.`,
      );
    }
    expect(figure('9', gap, undefined, inches as never).problem).toMatch(
      /must be from 4 thou to 196\.8 thou:/,
    );
    // What is typed is kept with its unit: a bare figure came in a link, and counts millimetres there.
    expect(figure('9', gap, undefined, inches as never).problem).toMatch(
      /“9” \(in mm, as a link’s figure without a unit is\) is outside that/,
    );
    expect(figure('9 in', gap, undefined, inches as never).problem).toMatch(
      /“9 in” is outside that/,
    );
    expect(rangeWords({ ...gap, min: -20 }, 'mm')).toBe('from −20 mm to 5 mm');
  });

  it('takes nothing only where it may be empty', () => {
    expect(figure(' ').problem).toBe('Contact gap is empty. Type a length, from 0.1 mm to 5 mm.');
    const optional = figure(' ', { ...gap, optional: true }, 0.4);
    expect(optional).toMatchObject({ value: undefined, given: true, heldOver: false });
    expect(optional.problem).toBeUndefined();
  });

  it('takes a whole number only where one is meant', () => {
    const whole = { ...gap, unit: 'count', whole: true } as const;
    expect(figure('3', whole).problem).toBeUndefined();
    expect(figure('2.6', whole).problem).toBe(
      'Contact gap must be a whole number. “2.6” is not: type a figure such as 3.',
    );
    expect(figure('2.6').problem).toBeUndefined();
  });

  it('reads a thousand letters and no more', () => {
    expect(figure(`1${' '.repeat(999)}`).problem).toBeUndefined();
    expect(figure(`1${' '.repeat(1000)}`).problem).toBe(
      'Contact gap holds more than 1000 letters, which is no figure. Type it anew.',
    );
  });

  it('cuts a text between letters', () => {
    expect([cutText('abc', 2), cutText('abc', 3), cutText('a😀', 2), cutText('a😀', 3)]).toEqual([
      'ab',
      'abc',
      'a',
      'a😀',
    ]);
  });
});

describe('a field of several figures', () => {
  const list = { ...gap, list: 3 };
  const read = (text: string | undefined, held?: readonly number[]) =>
    readList('gap', list, text, [1, 2.5], held, reading);

  it('is parted by semicolons, or by blanks before a figure', () => {
    expect(listParts('1 2;3')).toEqual(['1', '2', '3']);
    expect(listParts('1 mm 2 cu in; 3 in')).toEqual(['1 mm', '2 cu in', '3 in']);
    expect(listParts('  1  -2 +3 −4 .5 ,6 ')).toEqual(['1', '-2', '+3', '−4', '.5', ',6']);
    expect(listParts('mm 1; ;x y')).toEqual(['mm', '1', 'x y']);
    expect(listParts('- 1 /2')).toEqual(['-', '1 /2']);
    expect(listParts('')).toEqual([]);
  });

  it('holds its default, what was typed, or what it held', () => {
    expect(read(undefined)).toMatchObject({ kind: 'list', text: '1 2.5', value: [1, 2.5] });
    expect(read('1; 2 3mm')).toMatchObject({ value: [1, 2, 3], given: true });
    expect(read('')).toMatchObject({ value: [], given: true, heldOver: false });
    expect(read('1 x', [4])).toMatchObject({ value: [4], heldOver: true });
  });

  it('refuses one that cannot be, and too many', () => {
    expect(read('1 9').problem).toMatch(/^Contact gap must be from 0\.1 mm to 5 mm: .*“9”/);
    expect(read('1 mmm').problem).toMatch(/“mmm” is not a unit/);
    expect(read('1 2 3').problem).toBeUndefined();
    expect(read('1 2 3 4').problem).toBe(
      'Contact gap takes at most 3 figures; 4 were typed. Leave some out.',
    );
    expect(read(`1${' '.repeat(1000)}`).problem).toMatch(/more than 1000 letters/);
    expect(read(`1${' '.repeat(999)}`).problem).toBeUndefined();
    const endless = readList('gap', gap, '1 2 3 4 5', [], undefined, reading);
    expect(endless.value).toHaveLength(5);
  });
});

describe('a field of a firing order', () => {
  const order = { ...gap, unit: 'count', label: 'Firing order', list: 8 } as const;
  const read = (text: string | undefined, held?: readonly number[], cylinders = 4) =>
    readList('order', { ...order, order: { cylinders, read: readOrder } }, text, [], held, reading);

  it.each(['1-3-2-4', '1,3,2,4', '1324', '1 3 2 4', ' 1 – 3 – 2 – 4 ', '1, 3, 2, 4', '1/3/2/4'])(
    'is read from “%s”',
    (text) => {
      expect(read(text)).toMatchObject({ text, value: [1, 3, 2, 4], given: true });
      expect(read(text).problem).toBeUndefined();
    },
  );

  it('may be empty, and one that names not each cylinder once changes nothing', () => {
    expect(read(' ')).toMatchObject({ value: [], heldOver: false });
    expect(read(' ').problem).toBeUndefined();
    expect(read('1-3-2', [4, 3, 2, 1])).toMatchObject({
      value: [4, 3, 2, 1],
      heldOver: true,
      problem:
        'The firing order leaves out cylinder 4. Type each number from 1 to 4 once, such as 1-2-3-4, or change the number of cylinders.',
    });
    expect(read('1-2', undefined, 1).problem).toContain('names cylinder 2, and there is one');
    expect(read('1-13', undefined, 8).problem).toContain(
      '“1-13” cannot be read as a firing order: “13” is',
    );
    expect(read(`1${' '.repeat(1000)}`).problem).toMatch(/more than 1000 letters/);
  });
});

describe('a field of named options', () => {
  const given = (text: string | undefined) =>
    choiceField(
      'shape',
      { ...sample.inputs.shape, group: 'Form', measure: 'Look', assumed: true },
      {
        text,
        origin: 'link',
        held: undefined,
      },
    );

  it('holds one of them, and says which there are', () => {
    expect(given('square')).toMatchObject({
      kind: 'choice',
      key: 'shape',
      label: 'Shape',
      value: 'square',
      group: 'Form',
      measure: 'Look',
      assumed: true,
      origin: 'link',
    });
    expect(given(undefined)).toMatchObject({ value: 'round', text: 'round', origin: 'example' });
    expect(given('toString').problem).toBe(
      '“toString” is not a choice for “Shape”. Choose one of: Round, Square, Thick, and open.',
    );
    const plain = fieldNamed(run(), 'shape')!;
    for (const key of ['group', 'measure', 'assumed']) expect(plain).not.toHaveProperty(key);
  });
});

describe('the state of a calculator', () => {
  it('has every field that applies, in order, and a ± where there is a reading', () => {
    const keys = (texts: Record<string, string>) => {
      const { fields, errorFields } = run(texts);
      return [fields, errorFields].map((some) => some.map(({ key }) => key).join(' '));
    };
    expect(keys({})).toEqual([
      'shape width depth count gap-1 gap-2 hole-2 sizes',
      'width-error gap-error',
    ]);
    expect(keys({ shape: 'square', depth: '3', count: '1' })).toEqual([
      'shape width depth count gap-1 sizes corner',
      'width-error depth-error gap-error corner-error',
    ]);
    expect(keys({ 'depth-error': '1' })[1]).toBe('width-error depth-error gap-error');
    expect(keys({ 'corner-error': '1' })[1]).toBe('width-error gap-error');
  });

  it('lets a figure that may be empty be emptied', () => {
    const state = run({ depth: ' ' });
    expect([state.problems, state.computed, state.values['depth']]).toEqual([[], true, undefined]);
    expect(run({ width: ' ' }).problems).toHaveLength(1);
  });

  it('takes one origin for all texts where they come together', () => {
    expect(allFrom({ width: '1', 'gap-1': '2' }, 'sheet')).toEqual({
      width: 'sheet',
      'gap-1': 'sheet',
    });
  });

  it('gives a ± its label, its range and its step', () => {
    expect(fieldNamed(run(), 'gap-error')).toMatchObject({
      text: '0.02',
      spec: {
        label: '± of gap',
        help: 'How far one reading may be out, either way. Several that agree with it leave it as it is; several that scatter more make it larger.',
        unit: 'mm',
        min: 0,
        max: 5,
        step: 0.01,
        isError: true,
      },
    });
    expect(fieldNamed(run({ depth: '1' }), 'depth-error')).toMatchObject({ spec: { max: 65 } });
    expect(run({ 'gap-error': '6' }).problems[0]).toMatchObject({
      key: 'gap-error',
      sentence: expect.stringMatching(
        /^± of gap must be from 0 mm to 5 mm: a reading cannot be out/,
      ),
    });
  });

  it('names every key an address may hold, and no other', () => {
    expect([...knownKeys(calculator)].sort().join(' ')).toBe(
      'corner corner-error count depth depth-error gap-1 gap-2 gap-3 gap-error hole-2 hole-3 hole-4' +
        ' shape sizes width width-error',
    );
    expect(seriesKeys('gap', 2)).toEqual(['gap-1', 'gap-2']);
    expect(seriesKeys('gap', 2, 3)).toEqual(['gap-3', 'gap-4']);
  });

  it('offers a default within the field’s own range', () => {
    const holes = run({ count: '3' }).values['hole'];
    expect(holes).toEqual([9, 9]);
    const odd = (value: number): AnyCalculator => ({
      ...calculator,
      inputs: { ...calculator.inputs, hole: { ...sample.inputs.hole, default: () => value } },
    });
    expect([-3, NaN, Infinity, 4].map((value) => run({}, {}, odd(value)).values['hole'])).toEqual([
      [1],
      [1],
      [1],
      [4],
    ]);
  });

  it('has as many members of a series as there can be', () => {
    const counting = (count: number) => {
      const gapInput = { ...sample.inputs.gap, count: () => count };
      const inputs = { ...calculator.inputs, gap: gapInput };
      const other = { ...calculator, inputs, results: {}, compute: () => ({}) } as never;
      return (run({}, {}, other).values['gap'] as number[]).length;
    };
    expect([2.9, -1, NaN, 7, 0].map(counting)).toEqual([2, 0, 0, 3, 0]);
  });

  it('asks for no ± where a series has no member', () => {
    const none = { ...sample.inputs.gap, count: () => 0 };
    const inputs = { ...calculator.inputs, gap: none };
    const other = { ...calculator, inputs, results: {}, compute: () => ({}) } as never;
    expect(run({}, {}, other).errorFields.map(({ key }) => key)).toEqual(['width-error']);
  });

  it('lets what does not apply take no part, but says what cannot be read there', () => {
    const state = run({ corner: '4.5' });
    expect(state.values['corner']).toBe(1);
    expect(fieldNamed(state, 'corner')).toBeUndefined();
    expect(state.problems).toEqual([]);
    expect(run({ corner: '99' }).problems).toEqual([]);
    const bad = run({ corner: 'x' });
    expect(bad.problems).toEqual([{ sentence: expect.stringMatching(/^“x” cannot be read/) }]);
    expect(bad.computed).toBe(true);
    const held = { corner: { value: 3, origin: 'yours' } } as const;
    expect(run({ corner: 'x' }, { held }).problems).toHaveLength(1);
    expect(run({ corner: 'x' }, { held }).values['corner']).toBe(1);
  });

  it('leaves no result where a figure is out of its range, and says why of each', () => {
    const state = run({ width: '300' });
    expect(state).toMatchObject({ computed: false, spreads: {} });
    expect(Object.keys(state.results)).toEqual(Object.keys(calculator.results));
    for (const result of Object.values(state.results)) {
      expect((result as Absent).why).toMatch(/^Width must be from 10 mm to 200 mm/);
    }
  });

  it('leaves standing what does not rest on a text that was never read', () => {
    const state = run({ 'gap-2': 'x', depth: '1' });
    expect(state.computed).toBe(false);
    expect(state.results['area']).toBe(1875);
    expect((state.results['share'] as Absent).why).toMatch(/^“x” cannot be read as a length/);
    const error = run({ 'gap-error': 'x' });
    expect(error.results['area']).toBe(1875);
    expect(error.results['share']).toBeInstanceOf(Absent);
    const width = run({ 'width-error': 'x' });
    expect(width.results['area']).toBeInstanceOf(Absent);
    expect(width.results['loose']).toEqual([1, 2.5]);
    const held = { 'gap-2': { value: 0.6, origin: 'yours' } } as const;
    expect(run({ 'gap-2': 'x' }, { held })).toMatchObject({
      computed: true,
      results: { share: [0.8, 1.2] },
    });
  });

  it('puts what the sums refuse beside its fields, and the sentence in place of every result', () => {
    const state = run({ depth: '55' });
    const fault = 'The depth is more than the width.';
    const sentence = `${fault} Width is still the example’s; give it first.`;
    expect(state).toMatchObject({ computed: false, spreads: {} });
    expect(state.problems).toEqual([{ key: 'depth', sentence }]);
    expect(
      state.fields.filter(({ problem }) => problem === sentence).map(({ key }) => key),
    ).toEqual(['width', 'depth']);
    expect((state.results['area'] as Absent).why).toBe(sentence);
    expect(run({ depth: '55', width: '50' }).problems).toEqual([{ key: 'depth', sentence: fault }]);
    expect(run({ 'gap-1': '4.5' }).problems).toEqual([
      { key: 'gap-1', sentence: 'The first gap is too open.' },
    ]);
    expect(run({ width: '66' }).problems).toStrictEqual([{ sentence: 'No sample is so wide.' }]);
    const held = { depth: { value: 55, origin: 'yours' } } as const;
    const both = run({ depth: 'x' }, { held });
    expect(fieldNamed(both, 'depth')!.problem).toMatch(/cannot be read/);
    expect(both.problems).toHaveLength(2);
  });

  it('does not hide a fault of its own code', () => {
    expect(() => run({ width: '77' })).toThrow('a fault of the code');
  });

  it('has a sentence for what is not finite, alone or in a column', () => {
    const { results } = run({ shape: 'thick' });
    const why = 'This figure has no finite value for these inputs.';
    expect(results['area']).toEqual(new Absent(why));
    expect(results['grid']).toEqual(new Absent(why));
    expect(results['share']).toEqual([0.8, 1]);
  });

  it('reports a key it does not know, and changes nothing', () => {
    const state = run({ colour: 'red', 'gap-3': '0.4', 'count-error': '1' });
    expect(state.problems).toEqual([
      {
        sentence:
          'The address holds “colour”, which this calculator does not know. It was left out; nothing else is changed.',
      },
      { sentence: expect.stringContaining('“count-error”') },
    ]);
    expect(state.computed).toBe(true);
    expect(state.demonstration).toBe(false);
  });
});

describe('the ± of each reading', () => {
  it('goes through to what rests on it, and nowhere else', () => {
    const exact = { depth: '30', 'width-error': '0', 'depth-error': '0', 'gap-error': '0' };
    const of = (texts: Record<string, string>) => run({ ...exact, ...texts }).spreads;
    // d(0.75 w²) = 1.5 w dw; d(d − w/2); d(100 g / w).
    expect(of({ 'width-error': '0.2' })['area']).toBeCloseTo(15, 1);
    expect(of({ 'width-error': '0.2' })['grid-1-1']).toBe(0);
    expect(of({ 'gap-error': '0.05' })['share-2']).toBeCloseTo(0.1, 6);
    expect(of({ 'gap-error': '0.05' })['grid-2-2']).toBeCloseTo(0.1, 6);
    expect(of({ 'gap-error': '0.05' })['area']).toBe(0);
    // Joined with the 0.3 of its own, as 3, 4 and 5.
    expect(of({ 'depth-error': '0.4' })['rest']).toBeCloseTo(0.5, 6);
    expect(of({})['rest']).toBeCloseTo(0.3, 9);
    expect(of({})).not.toHaveProperty('play');
    expect(of({ 'gap-error': '9' })['share-1']).toBe(0);
  });

  it('is joined in a series too, and never stands beside what is itself a ± or a standard’s size', () => {
    const { share, grid } = calculator.results;
    const other = (results: object) =>
      run({ 'width-error': '0', 'gap-error': '0.05' }, {}, {
        ...calculator,
        results: { ...calculator.results, ...results },
      } as AnyCalculator).spreads;
    const joined = other({ share: { ...share, spreadFrom: 'play' } });
    expect(joined['share-2']).toBeCloseTo(Math.hypot(0.3, 0.1), 6);
    const bare = other({ share: { ...share, bare: true }, grid: { ...grid, bare: true } });
    expect(Object.keys(bare).filter((name) => /^(?:share|grid)/.test(name))).toEqual([]);
    const size = other({ share: { ...share, standard: true } });
    expect(Object.keys(size).filter((name) => name.startsWith('share'))).toEqual([]);
    const absent = other({ share: { ...share, spreadFrom: 'rest' } });
    expect(absent['share-2']).toBeCloseTo(0.1, 6);
  });

  it('stays as held while its text cannot be read, and is none where it never was', () => {
    const held = { 'width-error': { value: 0.2, origin: 'yours' } } as const;
    const texts = { 'width-error': 'x', 'gap-error': '0' };
    expect(run(texts, { held }).spreads['area']).toBeCloseTo(15, 1);
    expect(run(texts).spreads['area'] ?? 0).toBe(0);
    const none = run({ 'depth-error': '0.4', 'width-error': '0' });
    expect(none.spreads['area']).toBe(0);
    expect(none.spreads).not.toHaveProperty('rest');
  });
});
