import { describe, expect, it } from 'vitest';
import { exampleWords } from '../../calculators/frame/field/examples.ts';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import { showsLengths } from '../../calculators/frame/lengths.ts';
import { parse } from '../../calculators/frame/field/parse.ts';
import { isHomeUnit } from '../../calculators/frame/field/typed-units.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import {
  displayUnit,
  fromDisplay,
  hasInchTwin,
  quantityNouns,
  toDisplay,
  toShown,
  units,
  type LengthDisplay,
  type UnitName,
} from '../../calculators/frame/text/units.ts';
import { sample } from './sample.ts';

describe('home units and what stands for them in inches', () => {
  // Exact: NIST SP 811 (2008), B.8.
  it.each<[UnitName, UnitName, number]>([
    ['mm', 'in', 25.4],
    ['m', 'ft', 0.3048],
    ['mm2', 'in2', 645.16],
    ['kPa', 'psi', 6.894757293168361],
    ['mm/deg', 'thou/deg', 0.0254],
  ])('%s is shown in %s, one of which is %d of it', (home, shown, one) => {
    expect(displayUnit(home, 'in')).toBe(shown);
    expect(displayUnit(home, 'mm')).toBe(home);
    expect(hasInchTwin(home)).toBe(true);
    expect(toShown(one, shown)).toBeCloseTo(1, 12);
    expect(toDisplay(2 * one, home, 'in')).toBeCloseTo(2, 12);
    expect(fromDisplay(2, home, 'in')).toBeCloseTo(2 * one, 12);
    expect([toDisplay(2, home, 'mm'), fromDisplay(2, home, 'mm')]).toEqual([2, 2]);
  });

  it('a thou is a thousandth of an inch', () => {
    expect(toShown(0.0254, 'thou')).toBeCloseTo(1, 12);
  });

  it('others stay as they are', () => {
    const twins = Object.keys(units).filter((name) => hasInchTwin(name as UnitName));
    expect(twins).toEqual(['mm', 'm', 'mm2', 'kPa', 'mm/deg']);
    expect(displayUnit('deg', 'in')).toBe('deg');
    // A burette is marked in cc, and a barometer has no psi.
    expect(toDisplay(5, 'cc', 'in')).toBe(5);
    expect(fromDisplay(5, 'air', 'in')).toBe(5);
  });

  it('is written with one token and named in a sentence with its article', () => {
    for (const { quantity, token } of Object.values(units)) {
      expect(token).toMatch(/^[\x21-\x7e]*$/);
      expect(quantityNouns[quantity]).toMatch(/^(?:a [^aeiou]|an [aeiou])/);
    }
  });

  it.each<[string, UnitName, boolean]>([
    ['', 'mm', true],
    ['mm', 'mm', true],
    ['MM', 'mm', true],
    ['in', 'mm', false],
    ['x', 'mm', false],
    ['°', 'deg', true],
    ['pt', 'litre', false],
    ['', 'count', true],
    ['mm', 'count', false],
  ])('%j after a figure in %s is its home unit: %s', (typed, home, is) => {
    expect(isHomeUnit(typed, home)).toBe(is);
  });
});

describe('the unit of a field', () => {
  const spec = { unit: 'mm', min: 0, max: 20, step: 0.05 } as const;
  it.each<[Parameters<typeof fieldUnit>[0], UnitName]>([
    [spec, 'thou'],
    [{ ...spec, max: 20.1 }, 'in'],
    [{ ...spec, max: 200, isError: true }, 'thou'],
    [{ ...spec, step: 0.06 }, 'in'],
    [{ ...spec, step: 0.06, isError: true }, 'in'],
    [{ unit: 'mm', min: 0, max: 5 }, 'in'],
    [{ ...spec, unit: 'm' }, 'ft'],
    [{ ...spec, unit: 'deg' }, 'deg'],
  ])('%j is in %s where lengths are in inches, and at home otherwise', (of, unit) => {
    expect(fieldUnit(of, 'in')).toBe(unit);
    expect(fieldUnit(of, 'mm')).toBe(of.unit);
  });
});

describe('what a calculator has that looks different in inches', () => {
  const calculator: AnyCalculator = sample;
  const { shape, count, width } = sample.inputs;
  const { share, area } = calculator.results;
  const shows = (inputs: object, results: object) =>
    showsLengths({ ...calculator, inputs, results } as AnyCalculator);
  it('is found among inputs and results', () => {
    expect(shows({ shape, width }, { share })).toBe(true);
    expect(shows({ shape, count }, { share, area })).toBe(true);
    expect(shows({ shape, count }, { share })).toBe(false);
    expect(shows({ shape }, {})).toBe(false);
  });
});

describe('the examples in a sentence of error', () => {
  it.each<[Parameters<typeof exampleWords>[0], LengthDisplay, string]>([
    [{ unit: 'mm', min: 10, max: 200 }, 'mm', '45, 45 mm, 1.77 in or 1770 thou'],
    [{ unit: 'mm', min: 10, max: 200 }, 'in', '1.77, 45 mm, 1.77 in or 1770 thou'],
    [{ unit: 'mm', min: 0.1, max: 5, step: 0.01 }, 'in', '28, 0.71 mm, 0.028 in or 28 thou'],
    [{ unit: 'mm', min: -20, max: -4 }, 'mm', '−4, −4 mm, −0.157 in or −157 thou'],
    [{ unit: 'mm', min: -20, max: 60 }, 'mm', '7.5, 7.5 mm, 0.295 in or 295 thou'],
    [{ unit: 'm', min: -500, max: 6000 }, 'mm', '750, 750 m or 2460 ft'],
    [{ unit: 'm', min: -500, max: 6000 }, 'in', '2460, 750 m or 2460 ft'],
    [{ unit: 'deg', min: 0, max: 200 }, 'mm', '25 or 25 deg'],
    [{ unit: 'mm2', min: 10, max: 1000 }, 'mm', '100, 100 mm2 or 0.155 in²'],
    [{ unit: 'wire', min: 0.05, max: 100 }, 'in', '2.2 or 2.2 mm2'],
    [{ unit: 'Ah', min: 0.1, max: 500 }, 'mm', '7.1 or 7.1 Ah'],
    [{ unit: 'mohm', min: 0, max: 800 }, 'mm', '100, 100 mohm or 0.1 ohm'],
    [{ unit: 'Mohm', min: 0, max: 800 }, 'mm', '100, 100 Mohm or 100000 kohm'],
    [{ unit: 'uF', min: 0, max: 8 }, 'mm', '1, 1 uF or 1000 nF'],
    [{ unit: 's', min: 1, max: 100 }, 'mm', '10, 10 s or 0.167 min'],
    [{ unit: 'h', min: 1, max: 100 }, 'mm', '10, 10 h or 600 min'],
    [{ unit: 'cc', min: 1, max: 100 }, 'mm', '10, 10 cc or 0.61 cu in'],
    [{ unit: 'litre', min: 0, max: 40 }, 'mm', '5, 5 l, 1.1 imp gal or 1.32 US gal'],
    [{ unit: 'ml', min: 0, max: 800 }, 'mm', '100, 100 ml, 3.52 imp fl oz or 3.38 US fl oz'],
    [{ unit: 'g', min: 0, max: 80 }, 'mm', '10, 10 g or 0.353 oz'],
    [{ unit: 'gf', min: 0, max: 80 }, 'mm', '10, 10 gf or 0.353 oz'],
    [{ unit: 'kg/m3', min: 640, max: 1000 }, 'mm', '800, 800 kg/m3 or 0.8 g/cc'],
    [{ unit: 'air', min: 40, max: 110 }, 'in', '66, 66 kPa, 660 hPa or 19.5 inHg'],
    [{ unit: 'kPa', min: 0, max: 80 }, 'in', '1.45, 10 kPa, 1.45 psi or 0.1 bar'],
    [{ unit: 'degC', min: -30, max: 55 }, 'mm', '6.9, 6.9 °C or 44.4 °F'],
    [{ unit: 'ms', min: 0, max: 80 }, 'mm', '10 or 10 ms'],
    [{ unit: 'rpm', min: 100, max: 10000 }, 'mm', '1000 or 1000 rpm'],
    [{ unit: 'A', min: 0, max: 8 }, 'mm', '1, 1 A or 1000 mA'],
    [{ unit: 'V', min: 0.5, max: 48 }, 'mm', '4.9 or 4.9 V'],
    [{ unit: 'ohm', min: 0, max: 8 }, 'mm', '1 or 1 ohm'],
    [{ unit: 'mH', min: 0, max: 8 }, 'mm', '1, 1 mH or 0.001 H'],
    [{ unit: '%', min: 0, max: 100 }, 'mm', '13 or 13 %'],
    [{ unit: 'ratio', min: 4, max: 100 }, 'mm', '20 or 20 : 1'],
    [{ unit: 'count', min: 1, max: 8, whole: true }, 'mm', '3'],
    [{ unit: 'count', min: 0, max: 3, whole: true }, 'mm', '0'],
    [{ unit: 'none', min: 0, max: 4 }, 'mm', '0.5'],
  ])('of %j with lengths in %s are %s', (spec, lengths, words) => {
    expect(exampleWords(spec, lengths)).toBe(words);
  });

  it('are of that field’s own units wherever one cannot be read', () => {
    const ask = (home: UnitName) => parse('abc', home);
    expect(ask('air')).toMatchObject({ sentence: expect.stringContaining('hPa or') as string });
    expect(ask('m')).toMatchObject({
      sentence: '“abc” cannot be read as a length. Type a figure such as 13, 13 m or 42.7 ft.',
    });
    expect(parse('5 kg', 'm', () => 'so')).toMatchObject({
      sentence: '“kg” is not a unit this field knows. Type a figure such as so.',
    });
  });
});
