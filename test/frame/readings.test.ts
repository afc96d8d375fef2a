import { describe, expect, it } from 'vitest';
import { fromQuery, toQuery } from '../../calculators/frame/address.ts';
import type { FieldSpec, FigureField } from '../../calculators/frame/field/fields.ts';
import { readFigure } from '../../calculators/frame/field/fields.ts';
import { inOneUnit, readingParts, withoutEnd } from '../../calculators/frame/field/readings.ts';
import { withoutMarks } from '../../calculators/frame/field/parse.ts';
import { inputLines } from '../../calculators/frame/summary.ts';
import { readAs, textInField, textToKeep } from '../../site/fields/field-text.ts';
import { fieldNamed, run } from './sample.ts';

const gap: FieldSpec = {
  label: 'Contact gap',
  help: '',
  unit: 'mm',
  min: 0.1,
  max: 5,
  why: 'no points open wider',
  step: 0.01,
  error: 0.02,
};
const reading = { lengths: 'mm' } as const;
const figure = (text: string, spec = gap): FigureField =>
  readFigure('gap', spec, text, 0.35, undefined, reading);

describe('several readings in one box', () => {
  it('are parted by semicolons, and one with a semicolon after it is one', () => {
    expect(readingParts('2.31; 2.35;2.28')).toEqual(['2.31', '2.35', '2.28']);
    expect(readingParts('2.31; 2.35; ')).toEqual(['2.31', '2.35']);
    expect(readingParts('2.31')).toBeUndefined();
    expect(readingParts('2.31;')).toBeUndefined();
    expect(readingParts('0.2, -0.1, +0.3')).toEqual(['0.2', '-0.1', '+0.3']);
    expect(readingParts('0.2, −0.1')).toEqual(['0.2', '−0.1']);
    expect(withoutEnd('2.31 ; ')).toBe('2.31');
    expect(withoutEnd('2.31')).toBe('2.31');
  });

  it('have a unit said once for all, or each its own', () => {
    expect(inOneUnit(['16', '17', '16 thou'])).toEqual(['16 thou', '17 thou', '16 thou']);
    expect(inOneUnit(['0.4 mm', '16 thou'])).toEqual(['0.4 mm', '16 thou']);
    expect(inOneUnit(['0.4 mm', '16', '17 thou'])).toBeUndefined();
  });

  it('stand for their mean, and keep what was typed', () => {
    const field = figure('2.31; 2.35; 2,28');
    expect(field).toMatchObject({ text: '2.31; 2.35; 2,28', readings: [2.31, 2.35, 2.28] });
    expect(field.value).toBeCloseTo(2.31333, 5);
    expect(field.problem).toBeUndefined();
    expect(figure('16; 17; 16 thou').value).toBeCloseTo((49 / 3) * 0.0254, 12);
    expect(figure('2.31; ')).toMatchObject({ value: 2.31 });
    expect(figure('2.31; ').readings).toBeUndefined();
  });

  it.each([
    ['2.31; x', /“x” cannot be read/],
    // 0.4 mm and 16 thou are one gap; 0.4 thou and 16 thou are none.
    [
      '0.4; 16 thou',
      /Some readings of contact gap have units and others none\. Type the unit after each/,
    ],
    ['16 thou; 0.4', /Some readings of contact gap have units/],
    // More than twice of each other are no readings of one gap: 20 thou are half a millimetre.
    ['20 thou; 9', /Some readings of contact gap have units/],
    ['0.4 mm; 16; 17 thou', /Some readings of contact gap have units and others none/],
    [Array.from({ length: 21 }, () => '2').join(';'), /at most 20 readings; 21 were typed/],
  ] as const)('%s is refused in words', (text, words) => {
    expect(figure(text).problem).toMatch(words);
    expect(figure(text).unread).toBe(true);
  });

  it('are each held to the range', () => {
    const field = figure('2.31; 9');
    expect(field.problem).toMatch(/must be from 0\.1 mm to 5 mm.*“9” is outside/);
  });

  it('are refused where nothing is measured', () => {
    const { error: _, ...exact } = gap;
    expect(figure('2.31; 2.35', exact).problem).toMatch(/takes one figure, and 2 were typed/);
  });
});

describe('what repeated readings do to a calculation', () => {
  const ofWidth = (texts: Record<string, string>) => run({ shape: 'square', ...texts });

  it('is that of their mean, with the ± stated for one where they agree with it', () => {
    const mean = ofWidth({ width: '50', 'width-error': '0.1' });
    for (const alike of ['50; 50; 50', '49.95; 50; 50.05']) {
      const several = ofWidth({ width: alike, 'width-error': '0.1' });
      expect(several.results).toEqual(mean.results);
      expect(several.spreads).toEqual(mean.spreads);
    }
    const [name] = Object.keys(mean.spreads);
    const ofOne = mean.spreads[name!]! / 0.1;
    const spread = ofWidth({ width: '49.9; 50; 50.1', 'width-error': '0' });
    expect(spread.results).toEqual(mean.results);
    // Where none is stated: standard error 0.1/√3, Student’s t for three readings 4.30 (JCGM 100, table G.2).
    expect(spread.spreads[name!]! / ofOne).toBeCloseTo((4.303 * 0.1) / Math.sqrt(3), 3);
    const both = ofWidth({ width: '49.9; 50; 50.1', 'width-error': '0.1' });
    expect(both.spreads[name!]!).toBeGreaterThan(mean.spreads[name!]!);
    expect(both.spreads[name!]!).toBeLessThan(spread.spreads[name!]!);
  });

  it('says beside the box what its ± is, and from which of the two', () => {
    const noted = (texts: Record<string, string>) =>
      readAs(fieldNamed(ofWidth(texts), 'width') as FigureField, 'mm')!;
    expect(noted({ width: '49.98; 50.02', 'width-error': '0.1' })).toMatch(
      /They agree with the ± given for one, ± 0\.1(?:0+)? mm, which stays/,
    );
    expect(noted({ width: '49.9; 50; 50.1', 'width-error': '0.1' })).toMatch(
      /disagree|scatter far more|a little more/,
    );
    expect(noted({ width: '49; 51', 'width-error': '0.1' })).toMatch(/the scatter tells/);
    // Twice as wide as stated for one, and as good as it for the mean of three: no other figure is told.
    expect(noted({ width: '50.3; 49.5; 50.2', 'width-error': '0.5' })).toMatch(
      /They scatter far more than readings to ± 0\.5 mm do, .*: as the mean of 3 it is good to ± 0\.5 mm all the same\.$/,
    );
    expect(noted({ width: '49; 51', 'width-error': '0' })).toMatch(/^Mean of 2 .*Standard error/);
  });

  it('counts for the member of a series that was read again, and for it alone', () => {
    const exact = { 'gap-error': '0', 'width-error': '0' };
    const once = run({ count: '2', 'gap-1': '0.4', 'gap-2': '0.5', ...exact });
    const again = run({ count: '2', 'gap-1': '0.4', 'gap-2': '0.45; 0.55', ...exact });
    expect(again.values).toEqual(once.values);
    expect(Object.values(once.spreads).every((spread) => !(spread > 0))).toBe(true);
    expect(Object.values(again.spreads).some((spread) => spread > 0)).toBe(true);
  });

  it('comes back from the address, each reading with its unit', () => {
    const before = ofWidth({ width: '49.9;50 ; 50.1;', 'width-error': '0.1' });
    const query = toQuery(before);
    expect(decodeURIComponent(query)).toContain('width=49.9mm;50mm;50.1mm&');
    const after = run(fromQuery(query));
    expect(after.values).toEqual(before.values);
    expect(after.results).toEqual(before.results);
    expect(after.spreads).toEqual(before.spreads);
    expect(fieldNamed(after, 'width')).toMatchObject({ readings: [49.9, 50, 50.1] });
  });

  it('is told in a copied summary', () => {
    const state = ofWidth({ width: '49; 51' });
    expect(inputLines([fieldNamed(state, 'width')!], 'mm')[0]!.text).toBe(
      '50 mm (mean of 2 readings)',
    );
  });
});

describe('repeated readings beside their field', () => {
  it('are told in words: mean, range, standard error, and what one alone would be', () => {
    const said = readAs(figure('2.31; 2.35; 2.28'), 'mm')!;
    expect(said).toContain('Mean of 3 readings: 2.31 mm, from 2.28 to 2.35 mm.');
    expect(said).toContain('Standard error 0.020 mm: by Student’s t good to ± 0.09 mm');
    expect(said).toContain('where one reading alone would be ± 0.15 mm.');
    expect(readAs(figure('2.3; 2.3'), 'mm')).toMatch(/^Mean of 2 readings, all alike: 2\.3 mm\./);
  });

  it('are shown and typed in the reader’s lengths', () => {
    const kept = textToKeep('90; 91; 92', { spec: gap }, 'in');
    expect(withoutMarks(kept)).toBe('90thou; 91thou; 92thou');
    expect(figure(kept).value).toBeCloseTo(91 * 0.0254, 12);
    expect(textInField(figure(kept), 'in')).toBe('90; 91; 92');
    expect(textInField(figure('2.54mm;2.286mm'), 'in')).toBe('100; 90');
    expect(textInField(figure('2.31mm;2.35mm'), 'mm')).toBe('2.31; 2.35');
    // The first is read in the unit beside the box while the second is still to come.
    const next = textToKeep('90; ', { spec: gap }, 'in');
    expect(figure(next).value).toBeCloseTo(90 * 0.0254, 12);
    expect(textInField(figure(next), 'in')).toBe('90; ');
    expect(figure(textToKeep('(45+45); ', { spec: gap }, 'in')).text).toContain('thou');
    expect(figure(textToKeep('0.014; ', { spec: gap }, 'in')).problem).toMatch(/looks like inches/);
    expect(readAs(figure('2.31; 2.35'), 'in')).toMatch(/ thou/);
  });
});

it('a reading that shares its ± with others takes several too', () => {
  const spec = {
    label: 'Before',
    help: '',
    unit: 'deg',
    min: 0,
    max: 99,
    why: '',
    step: 1,
  } as const;
  const read = (more: object) =>
    readFigure('before', { ...spec, ...more }, '41; 43', 0, undefined, { lengths: 'mm' });
  expect(read({ errorIn: 'reading-error' }).value).toBe(42);
  expect(read({}).problem).toMatch(/takes one figure, and 2 were typed/);
});
