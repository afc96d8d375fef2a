import { describe, expect, it } from 'vitest';
import { numberAndUnit, parse, quote } from '../../calculators/frame/field/parse.ts';
import type { UnitName } from '../../calculators/frame/text/units.ts';

const read = (text: string, home: UnitName): number => {
  const parsed = parse(text, home);
  if (parsed.kind !== 'value') throw new Error(`${text}: ${JSON.stringify(parsed)}`);
  return parsed.value;
};

describe('figures as people type them', () => {
  // Expected values: exact conversions of NIST SP 811 (2008), appendix B.8, by hand.
  it.each<[string, UnitName, number]>([
    ['2.2', 'mm', 2.2],
    ['2,2', 'mm', 2.2],
    ['2.2mm', 'mm', 2.2],
    ['2.2 MM', 'mm', 2.2],
    ['  2.2  ', 'mm', 2.2],
    ['.5', 'mm', 0.5],
    ['−3', 'mm', -3],
    ['+3', 'mm', 3],
    ['0.087in', 'mm', 2.2098],
    ['87 thou', 'mm', 2.2098],
    ['3/32 in', 'mm', 2.38125],
    ['1 1/4"', 'mm', 31.75],
    ['1-1/4 in', 'mm', 31.75],
    ['5.1 cm', 'mm', 51],
    ['24°', 'deg', 24],
    ['24 deg', 'deg', 24],
    ['3000 rev/min', 'rpm', 3000],
    ['25:1', 'ratio', 25],
    ['1:25', 'ratio', 25],
    ['1 : 33,3', 'ratio', 33.3],
    ['1 to 40', 'ratio', 40],
    ['1:1', 'ratio', 1],
    ['64.4 °F', 'degC', 18],
    ['64.4F', 'degC', 18],
    ['291.15 K', 'degC', 18],
    ['29.92 inHg', 'kPa', 101.320748119003],
    ['1013.25 hPa', 'kPa', 101.325],
    ['1 imp gal', 'litre', 4.54609],
    ['1 us gal', 'litre', 3.785411784],
    ['1 cu in', 'cc', 16.387064],
    ['0.74 g/cc', 'kg/m3', 740],
    ['70 %', '%', 70],
  ])('%s in %s', (text, home, value) => {
    expect(read(text, home)).toBeCloseTo(value, 9);
  });

  it.each<[string, UnitName, RegExp]>([
    ['abc', 'mm', /“abc” cannot be read as a length/],
    ['', 'mm', /cannot be read/],
    ['5 kg', 'mm', /“kg” is not a unit this field knows/],
    ['2.2.2', 'mm', /cannot be read|not a unit/],
    ['1,234.5', 'mm', /cannot be read|not a unit/],
    ['3/0 in', 'mm', /divides by zero/],
    ['<script>alert(1)</script>', 'mm', /cannot be read/],
    ['5<img src=x>', 'mm', /cannot be read/],
    ['5 constructor', 'mm', /not a unit/],
    ['5 toString', 'mm', /not a unit/],
    ['Infinity', 'mm', /cannot be read/],
    ['NaN', 'mm', /cannot be read/],
  ])('refuses %s in words', (text, home, sentence) => {
    const parsed = parse(text, home);
    expect(parsed.kind).toBe('bad');
    expect(parsed.kind === 'bad' && parsed.sentence).toMatch(sentence);
  });

  it('quotes no more than a little of a long text', () => {
    const parsed = parse('x'.repeat(5000), 'mm');
    expect(parsed.kind === 'bad' && parsed.sentence.length).toBeLessThan(250);
  });
});

describe('a figure and what it comes to', () => {
  it.each<[string, UnitName, number]>([
    ['1e2', 'mm', 100],
    ['1E-2 mm', 'mm', 0.01],
    ['2.', 'mm', 2],
    [',5', 'mm', 0.5],
    ['- 3', 'mm', -3],
    ['-1/2', 'mm', -0.5],
    ['+1/2', 'mm', 0.5],
    ['- 1 1/2', 'mm', -1.5],
    ['⅜', 'mm', 0.375],
    ['2⅔', 'mm', 2 + 2 / 3],
    ['⅞ in', 'mm', 22.225],
    ['10 / 4', 'mm', 2.5],
    ['0/5', 'mm', 0],
    ['12 3/4 in', 'mm', 323.85],
    ['1 - 1/4 in', 'mm', 31.75],
    ['24°30.25′', 'deg', 24 + 30.25 / 60],
    ['.25 in', 'mm', 6.35],
    ['1e100', 'none', 1e100],
    ['+24°30′', 'deg', 24.5],
    ['24°30’', 'deg', 24.5],
    ['24 ° 30 arcmin', 'deg', 24.5],
    ['24° 59.9′', 'deg', 24 + 59.9 / 60],
    [' 24°0′ ', 'deg', 24],
  ])('%s in %s', (text, home, value) => {
    expect(read(text, home)).toBeCloseTo(value, 12);
  });

  it.each<[string, UnitName, string]>([
    ['2e100', 'none', '“2e100” is larger than any number there is. Type a figure such as 13.'],
    [
      '1e400',
      'deg',
      '“1e400” is larger than any angle there is. Type a figure such as 13 or 13 deg.',
    ],
    ['-1e101', 'mm', '“-1e101” is larger than any length there is.'],
    ['3/0', 'mm', '“3/0” divides by zero. Check the fraction.'],
    ['1 3⁄00 in', 'mm', '“1 3⁄00 in” divides by zero. Check the fraction.'],
    [
      '24°60′',
      'deg',
      '“24°60′” has more than 59 minutes to the degree. Type the angle in degrees alone, or with minutes below 60, such as 24°30′.',
    ],
    ['5 abcdefghijkl', 'mm', '“abcdefghijkl” is not a unit this field knows.'],
    ['5 abcdefghijklm', 'mm', '“5 abcdefghijklm” cannot be read as a length.'],
    ['5 mm)', 'mm', '“5 mm)” cannot be read as a length.'],
    ['x24°30′', 'deg', '“x24°30′” cannot be read as an angle.'],
    ['24°30′x', 'deg', 'cannot be read as an angle.'],
    ['x5 mm', 'mm', '“x5 mm” cannot be read as a length.'],
    ['x1/2', 'mm', '“x1/2” cannot be read as a length.'],
    ['5', 'mm', ''],
  ])('%s in %s is answered with its sentence', (text, home, sentence) => {
    const parsed = parse(text, home);
    expect(parsed.kind === 'bad' ? parsed.sentence : '').toContain(sentence);
    expect(parsed.kind).toBe(sentence === '' ? 'value' : 'bad');
  });

  it.each([
    ['2.2 mm', { number: '2.2', unit: 'mm' }],
    ['  2.2mm ', { number: '2.2', unit: 'mm' }],
    ['1 1/4 "', { number: '1 1/4', unit: '"' }],
    ['7', { number: '7', unit: '' }],
    ['mm', undefined],
  ])('%s is parted into number and unit', (text, pieces) => {
    expect(numberAndUnit(text)).toEqual(pieces);
  });

  it('is quoted whole up to forty letters, and cut between letters beyond', () => {
    expect(quote('x'.repeat(40))).toBe(`“${'x'.repeat(40)}”`);
    expect(quote(`😀${'x'.repeat(41)}`)).toBe(`“😀${'x'.repeat(38)}…”`);
    expect(quote('x'.repeat(41))).toBe(`“${'x'.repeat(40)}…”`);
    expect(quote(`${'x'.repeat(39)}😀x`)).toBe(`“${'x'.repeat(39)}…”`);
  });
});

describe('a degree where a length is asked for, and the reverse', () => {
  it.each([
    ['22 deg', 'mm', 'an angle', 'a length'],
    ['22°', 'mm', 'an angle', 'a length'],
    ['2.3 mm', 'deg', 'a length', 'an angle'],
  ] as const)(
    '%s in a field of %s points to the calculator that turns it',
    (text, home, is, asks) => {
      expect(parse(text, home)).toEqual({
        kind: 'bad',
        sentence: `“${text}” is ${is}, and this field takes ${asks}. A place of the piston is turned from degrees into a length, or back, by the calculator Piston position.`,
      });
    },
  );

  it('and other strange units do not', () => {
    for (const [text, home] of [
      ['3 kPa', 'mm'],
      ['2 mm', 'kPa'],
      ['3 °C', 'mm'],
    ] as const) {
      expect(JSON.stringify(parse(text, home))).not.toContain('Piston position');
    }
  });
});

it('threads to the inch are told their pitch where a length is asked for', () => {
  // 25.4 mm over 26.
  for (const text of ['26 tpi', '26tpi', '26 T.P.I.']) {
    expect(parse(text, 'mm')).toEqual({
      kind: 'bad',
      sentence: `“${text}” counts the threads to an inch, and this field takes the length of one: type “0.9769 mm” or “0.03846 in”.`,
    });
  }
  expect(JSON.stringify(parse('0 tpi', 'mm'))).not.toContain('Infinity');
  expect(JSON.stringify(parse('26 tpi', 'deg'))).not.toContain('threads');
});
