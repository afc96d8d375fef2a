import { describe, expect, it } from 'vitest';
import {
  absent,
  Absent,
  impossible,
  unfit,
  type AnyCalculator,
} from '../../calculators/frame/types.ts';
import { attempt } from '../../calculators/frame/attempt.ts';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
import { fieldNamed, run, sample } from './sample.ts';

const base: AnyCalculator = sample;

/** The sample with some results that cannot be. */
const lacking = (results: Record<string, Absent>): AnyCalculator => ({
  ...base,
  compute: (v) => ({ ...base.compute(v), ...results }),
});

const whyOf = (of: AnyCalculator, name: string, texts = {}, options = {}): string => {
  const value = run(texts, options, of).results[name];
  return value instanceof Absent ? value.why : '';
};

describe('a result that figures keep from being', () => {
  const none = lacking({ area: impossible('There is none.', ['theWidth']) });

  it('names those of the example that its sentence names', () => {
    expect(whyOf(none, 'area', { shape: 'square' })).toBe(
      'There is none. Width is still the example’s; give it first.',
    );
  });

  it('names all of the example that it rests on, where those named are given', () => {
    expect(whyOf(none, 'area', { width: '40' })).toBe(
      'There is none. Shape is still the example’s; give it first.',
    );
    const unnamed = lacking({ area: impossible('There is none.') });
    expect(whyOf(unnamed, 'area', { depth: '3' })).toBe(
      'There is none. Shape and width are still the example’s; give them first.',
    );
  });

  it('names the members of a series by the name of the series', () => {
    const gaps = lacking({ share: impossible('There is none.', ['gap']) });
    expect(whyOf(gaps, 'share', { width: '40', 'gap-1': '0.5' })).toBe(
      'There is none. Gap 2 is still the example’s; give it first.',
    );
  });

  it('says one thing of all the results that one fault keeps away', () => {
    const why = 'There is none.';
    const two = lacking({ area: impossible(why), rest: impossible(why) });
    const both = 'There is none. Width is still the example’s; give it first.';
    expect(whyOf(two, 'area', { depth: '3' })).toBe(both);
    expect(whyOf(two, 'rest', { depth: '3' })).toBe(both);
  });

  it('says nothing of the example where all is given, nothing is, or it stands in an article', () => {
    expect(whyOf(none, 'area', { shape: 'square', width: '40' })).toBe('There is none.');
    expect(whyOf(none, 'area')).toBe('There is none.');
    expect(whyOf(none, 'area', { shape: 'square' }, { demonstration: true })).toBe(
      'There is none.',
    );
  });

  it('is not judged before all that its verdict names is given', () => {
    const judged = lacking({ area: unfit('It is none.', ['width', 'gap']) });
    expect(whyOf(judged, 'area', { width: '40', 'gap-1': '1' })).toBe(
      'Not judged yet: Gap 2 is still the example’s; give it first.',
    );
    const all = { shape: 'square', width: '40', 'gap-1': '1', 'gap-2': '1' };
    expect(whyOf(judged, 'area', all)).toBe('It is none.');
    expect(whyOf(judged, 'area')).toBe('It is none.');
  });

  it('lets a sentence be that hangs on what is asked', () => {
    const asked = lacking({ area: absent('Not asked for.') });
    expect(whyOf(asked, 'area', { shape: 'square' })).toBe('Not asked for.');
    expect(whyOf(asked, 'rest', { shape: 'square' })).toBe('Give the depth.');
  });

  it('is one that a refusal of the maths leaves', () => {
    const failed = attempt((): number => {
      throw new MathsError('odd', ['width'], 'It cannot be so wide.');
    });
    expect(failed).toEqual(impossible('It cannot be so wide.', ['width']));
    expect(attempt(() => 3)).toBe(3);
    expect(() =>
      attempt(() => {
        throw new TypeError('a fault of the code');
      }),
    ).toThrow('a fault of the code');
  });
});

describe('a refusal of everything', () => {
  const refused: AnyCalculator = { ...base, refusedBy: { 'too-open': ['width', 'hole'] } };

  it('names what it rests on besides what it names', () => {
    const state = run({ 'gap-1': '4.5', count: '3' }, {}, refused);
    const sentence =
      'The first gap is too open. Width, hole 2 and hole 3 are still the example’s; give them first.';
    expect(state.problems).toEqual([{ key: 'gap-1', sentence }]);
    expect(fieldNamed(state, 'gap-1')?.problem).toBe(sentence);
    expect(fieldNamed(state, 'width')?.problem).toBeUndefined();
  });

  it('is as it was where it rests on nothing more', () => {
    const other = run({ 'gap-1': '4.5', count: '1' });
    expect(other.problems[0]!.sentence).toBe('The first gap is too open.');
    const shown = run({ 'gap-1': '4.5' }, { demonstration: true }, refused);
    expect(shown.problems[0]!.sentence).toBe('The first gap is too open.');
  });
});
