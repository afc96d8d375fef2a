import { describe, expect, it } from 'vitest';
import { parse } from '../../calculators/frame/field/parse.ts';
import { readSum } from '../../calculators/frame/field/sum-reader.ts';
import { looksLikeSum, sumWithUnit } from '../../calculators/frame/field/sums.ts';
import type { UnitName } from '../../calculators/frame/text/units.ts';

const read = (text: string, home: UnitName = 'mm') => parse(text, home, undefined, readSum);

describe('a sum typed for a figure', () => {
  // Worked by hand; 1 thou is 0.0254 mm by the definition of the inch (BS 350:2004).
  it.each<[string, UnitName, number]>([
    ['2.31+0.04', 'mm', 2.35],
    ['2,31 + 0,04', 'mm', 2.35],
    ['(2.3+2.4+2.35)/3', 'mm', 2.35],
    ['64/2', 'mm', 32],
    ['64÷2', 'mm', 32],
    ['64/2+1', 'mm', 33],
    ['2.2 mm + 5 thou', 'mm', 2.327],
    ['1 1/4 in + 3/32 in', 'mm', 34.13125],
    ['-(1-3)×2', 'mm', 4],
    ['2 × 3 mm', 'mm', 6],
    ['(2.3+2.4)/2 mm', 'mm', 2.35],
    ['24°30′ − 30′', 'deg', Number.NaN],
    ['24°30′ - 0.5', 'deg', 24],
    ['(90+92)thou', 'mm', 4.6228],
    ['(90+92)/2', 'mm', 91],
    ['(2.54 mm + 100 thou)thou', 'mm', 5.08],
    ['60 - -2', 'deg', 62],
    ['5 − 2', 'mm', 3],
    ['5 – 2', 'mm', 3],
    ['5·2', 'mm', 10],
    ['5*2', 'mm', 10],
    ['+2 + 3', 'mm', 5],
    ['-(2)+5', 'mm', 3],
    ['  2+3  ', 'mm', 5],
    ['2 mm + 3 mm', 'mm', 5],
    ['2 + 3 mm', 'mm', 5],
    ['2 mm + 3', 'mm', 5],
    ['10 thou × 2', 'mm', 0.508],
    ['2 × 10 thou', 'mm', 0.508],
    ['10 thou / 2', 'mm', 0.127],
    ['6 / 2 mm', 'mm', 3],
    ['1+2+3+4+5+6+7+8+9+10+11', 'mm', 66],
    ['2 × 10 thou + 1 mm', 'mm', 1.508],
    ['(1+1/2)in', 'mm', 38.1],
    ['1⁄4 in + 1 mm', 'mm', 7.35],
    ['.5+1', 'mm', 1.5],
    ['24°30′ + 0°30′', 'deg', 25],
    ['10% + 5', '%', 15],
    ['2+3', 'count', 5],
  ])('%s in %s', (text, home, value) => {
    const found = read(text, home);
    if (Number.isNaN(value)) expect(found.kind).toBe('bad');
    else {
      expect(found).toMatchObject({ kind: 'value' });
      expect((found as { value: number }).value).toBeCloseTo(value, 9);
    }
  });

  it.each([
    ['2.2 + 5 thou', 'adds a figure with a unit'],
    ['2 mm × 3 mm', 'multiplies by a figure that has a unit'],
    ['6 in / 2 in', 'divides by a figure that has a unit'],
    ['1/(2-2)', 'divides by zero'],
    ['2 × 10 thou + 1', 'adds a figure with a unit'],
    ['10 thou × 2 + 1', 'adds a figure with a unit'],
    ['1 + 5 thou', 'adds a figure with a unit'],
    ['1 - 5 thou', 'adds a figure with a unit'],
    ['2 mm / 5 mm', 'divides by a figure that has a unit'],
    ['2 thou × 3 thou', 'multiplies by a figure that has a unit'],
    ['(2+3)furlongs', 'furlongs'],
    ['2 + $3', 'cannot be read'],
    ['(2+3))', 'not a whole sum'],
    ['(2+3', 'not a whole sum'],
    ['(2)(3)', 'no sign between them'],
    ['2+3 furlongs', 'not a unit'],
    ['2+sin(1)', 'cannot be read'],
    ['1+t0', 'cannot be read'],
    ['2+3!', 'cannot be read'],
  ])('%s is refused with its reason', (text, reason) => {
    const found = read(text);
    expect(found.kind).toBe('bad');
    expect((found as { sentence: string }).sentence).toContain(reason);
  });

  it.each(['2.2', '-3', '3/32 in', '24°30′', '12 stone', '--4', 'abc', '', '5 furlongs', 'a(1)'])(
    '%j does not ask for the reader of sums',
    (text) => {
      expect(parse(text, 'mm', undefined, 'coming')).toEqual(parse(text, 'mm'));
    },
  );

  it('is bounded in length, and says that it waits', () => {
    expect(looksLikeSum('1+'.repeat(99) + '1')).toBe(true);
    expect(looksLikeSum('1+'.repeat(200) + '1')).toBe(false);
    expect(read('('.repeat(90) + '1' + ')'.repeat(90) + '+1')).toEqual({ kind: 'value', value: 2 });
    expect(parse('1+1', 'mm', undefined, 'coming')).toMatchObject({
      kind: 'bad',
      sentence: expect.stringContaining('is being worked out') as string,
    });
    expect(parse('1+1', 'mm', undefined, 'failed')).toMatchObject({
      kind: 'bad',
      sentence: expect.stringContaining('did not come') as string,
    });
  });

  it('is not read where it is not offered', () => {
    expect(parse('1+1', 'mm').kind).toBe('bad');
  });
});

describe('a sum in brackets with one unit behind them', () => {
  it.each<[string, string, string]>([
    ['(90+92)thou', '90+92', 'thou'],
    ['  (90+92) thou ', '90+92', 'thou'],
    ['((1+2)×3)mm', '(1+2)×3', 'mm'],
    ['((1+2)×(3+4))mm', '(1+2)×(3+4)', 'mm'],
    ['(1+2)°', '1+2', '°'],
  ])('%j is %j in %j', (text, sum, unit) => {
    expect(sumWithUnit(text)).toEqual({ sum, unit });
  });

  it.each([
    '(1+2)×(3+4)mm',
    '(1+2)-(3)mm',
    '(90+92)',
    '(90)thou',
    '90+92 thou',
    '2(90+92)thou',
    '(90+92)thou+1',
    '(90+92)2',
    '',
  ])('%j is none', (text) => {
    expect(sumWithUnit(text)).toBeUndefined();
  });

  it('is not read where it is longer than any row of readings', () => {
    const sum = (length: number): string => '1+'.repeat(length / 2 - 1) + '11';
    expect(sum(200)).toHaveLength(200);
    expect(looksLikeSum(sum(200))).toBe(true);
    expect(looksLikeSum(`${sum(200)}1`)).toBe(false);
    expect(looksLikeSum('$1+2')).toBe(false);
    expect(looksLikeSum('1+2$')).toBe(false);
  });
});

it('a sum typed bare in a box of inches is quoted as it was typed', () => {
  const sentence = (kept: string): string => {
    const parsed = parse(kept, 'mm', () => '0.09', readSum);
    return parsed.kind === 'bad' ? parsed.sentence : '';
  };
  expect(sentence('((1.5+)\u2060in')).toMatch(/^“\(1\.5\+” is not a whole sum/);
  expect(sentence('(3/32 + 0.5mm)\u2060in')).toMatch(/^“3\/32 \+ 0\.5mm” adds/);
  // What may be typed instead is of the field, also for a term of a sum.
  expect(sentence('(3/32 bsp)\u2060in')).toMatch(/Type a figure such as 0\.09\.$/);
});
