import { describe, expect, it } from 'vitest';
import { parse } from '../../calculators/frame/parse.ts';
import type { UnitName } from '../../calculators/frame/units.ts';

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
