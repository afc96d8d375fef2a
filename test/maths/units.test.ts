import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convert, quantityOf } from '../../calculators/maths/units/units.ts';
import { codeOf } from './code-of.ts';
import { thrown } from './thrown.ts';

const families = [
  ['mm', 'cm', 'm', 'µm', 'in', 'thou', 'ft'],
  ['deg', 'rad', 'arcmin', 'rev'],
  ['cc', 'ml', 'l', 'cu in', 'US gal', 'US pt', 'US fl oz', 'imp gal', 'imp pt', 'imp fl oz'],
  ['g', 'kg', 'mg', 'lb', 'oz'],
  ['kPa', 'Pa', 'hPa', 'mbar', 'bar', 'atm', 'psi', 'mmHg', 'inHg'],
  ['K', '°C', '°F'],
  ['ms', 's', 'µs', 'min'],
  ['rpm', 'Hz', 'rad/s'],
];

describe('convert', () => {
  it('comes back to where it began, in every family', () => {
    fc.assert(
      fc.property(
        fc
          .constantFrom(...families)
          .chain((family) => fc.tuple(fc.constantFrom(...family), fc.constantFrom(...family))),
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        ([from, to], value) => {
          const back = convert(convert(value, from, to), to, from);
          expect(Math.abs(back - value)).toBeLessThan(1e-12 * Math.max(1000, Math.abs(value)));
        },
      ),
    );
  });

  it('gives the figures that the bench knows', () => {
    expect(convert(87, 'thou', 'mm')).toBeCloseTo(2.2098, 12);
    expect(convert(0.087, 'in', 'thou')).toBeCloseTo(87, 12);
    expect(convert(2.2, 'mm', 'mm')).toBe(2.2);
    expect(convert(1, 'imp pt', 'imp fl oz')).toBeCloseTo(20, 12);
    expect(convert(25, '%', '1')).toBe(0.25);
  });

  it('knows what each unit measures', () => {
    expect(quantityOf('thou')).toBe('length');
    expect(quantityOf('°F')).toBe('temperature');
  });

  it('refuses what cannot be converted', () => {
    expect(codeOf(() => convert(1, 'mm', 'deg'))).toBe('unit-mismatch');
    expect(codeOf(() => convert(1, '°C', 'mm'))).toBe('unit-mismatch');
    expect(codeOf(() => convert(1, 'furlong', 'mm'))).toBe('unknown-unit');
    expect(codeOf(() => convert(1, 'mm', 'constructor'))).toBe('unknown-unit');
    expect(thrown(() => convert(1, 'mm', 'deg')).quantities).toEqual(['unit']);
    expect(thrown(() => quantityOf('furlong')).quantities).toEqual(['unit']);
  });

  it('leaves a figure to its last digit where the unit stays', () => {
    expect(convert(0.1 + 0.2, 'mm', 'mm')).toBe(0.30000000000000004);
  });
});
