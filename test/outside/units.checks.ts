import { convert } from '../../calculators/maths/units/units.ts';
import type { OutsideCheck } from './types.ts';

const NIST =
  'A. Thompson and B. N. Taylor, Guide for the Use of the International System of Units, NIST Special Publication 811 (2008), Appendix B.8';
const BRITISH_MEASURES =
  'Weights and Measures Act 1985 (United Kingdom), Schedule 1: 8 pints or 160 fluid ounces to the gallon of 4.546 09 litres';

/** One of `from` is `expected` of `to`: exact, or rounded in the table to the seven figures given. */
type Row = readonly [from: string, expected: number, to: string, halfOfLastDigit?: number];

const printed: readonly Row[] = [
  ['in', 25.4, 'mm'],
  ['thou', 0.0254, 'mm'],
  ['ft', 304.8, 'mm'],
  ['µm', 0.001, 'mm'],
  ['cu in', 16.38706, 'cc', 5e-6],
  ['l', 1000, 'cc'],
  ['US gal', 3785.412, 'cc', 5e-4],
  ['US pt', 473.1765, 'cc', 5e-5],
  ['US fl oz', 29.57353, 'cc', 5e-6],
  ['imp gal', 4546.09, 'cc'],
  ['imp fl oz', 28.41306, 'cc', 5e-6],
  ['lb', 453.59237, 'g'],
  ['oz', 28.34952, 'g', 5e-6],
  ['bar', 100, 'kPa'],
  ['mbar', 100, 'Pa'],
  ['atm', 101.325, 'kPa'],
  ['psi', 6.894757, 'kPa', 5e-7],
  ['inHg', 3.386389, 'kPa', 5e-7],
  ['mmHg', 0.1333224, 'kPa', 5e-8],
  ['deg', 0.01745329, 'rad', 5e-9],
  ['rpm', 0.1047198, 'rad/s', 5e-8],
  ['min', 60, 's'],
  ['g/cc', 1000, 'kg/m³'],
  ['h', 3600, 's'],
  ['cmHg', 1.333224, 'kPa', 5e-7],
  ['kgf/cm²', 98.0665, 'kPa'],
  ['hPa', 100, 'Pa'],
  ['MPa', 1000, 'kPa'],
  ['in²', 645.16, 'mm²'],
  ['km', 1e6, 'mm'],
  ['km/h', 0.2777778, 'm/s', 5e-8],
  ['kg', 1000, 'g'],
  ['mg', 0.001, 'g'],
  ['mA', 0.001, 'A'],
  ['mAh', 0.001, 'Ah'],
  ['mV', 0.001, 'V'],
  ['kV', 1000, 'V'],
  ['mohm', 0.001, 'ohm'],
  ['kohm', 1000, 'ohm'],
  ['Mohm', 1e6, 'ohm'],
  ['nF', 0.001, 'µF'],
  ['pF', 1e-6, 'µF'],
  ['µH', 0.001, 'mH'],
  ['H', 1000, 'mH'],
  ['J', 1000, 'mJ'],
];

const exactElsewhere: readonly (readonly [source: string, row: Row])[] = [
  [`${NIST}: inch of 25.4 mm, cubed`, ['cu in', 16.387064, 'cc']],
  [`${NIST}, footnote: gallon of 231 cubic inches`, ['US gal', 3785.411784, 'cc']],
  [`${NIST}: t/°C = (t/°F − 32)/1.8, so that 1/°F is 1.8/K`, ['ppm/°F', 1.8, 'ppm/K']],
  [BRITISH_MEASURES, ['imp pt', 568.26125, 'cc']],
  [BRITISH_MEASURES, ['imp fl oz', 28.4130625, 'cc']],
];

/** Fixed points and a scale crossing, given by the definitions of the scales. */
const temperatures: readonly (readonly [at: number, from: string, expected: number, to: string])[] =
  [
    [0, '°C', 273.15, 'K'],
    [32, '°F', 0, '°C'],
    [212, '°F', 100, '°C'],
    [-40, '°C', -40, '°F'],
    [68, '°F', 293.15, 'K'],
  ];

const asCheck = (source: string, [from, expected, to, halfOfLastDigit]: Row): OutsideCheck => ({
  topic: 'units',
  what: `1 ${from} in ${to}`,
  source,
  kind: 'standard',
  unit: to,
  expected,
  ours: () => convert(1, from, to),
  tolerance: halfOfLastDigit ?? 1e-15 * Math.max(1, expected),
  ...(halfOfLastDigit === undefined ? {} : { why: 'rounded to seven figures in the table' }),
});

export const checks: readonly OutsideCheck[] = [
  ...printed.map((row) => asCheck(NIST, row)),
  ...exactElsewhere.map(([source, row]) => asCheck(source, row)),
  {
    topic: 'units',
    what: '1 ‰ in %',
    source: 'By hand: 0.001 / 0.01',
    kind: 'hand-worked',
    unit: '%',
    expected: 0.1,
    ours: () => convert(1, '‰', '%'),
    tolerance: 1e-15,
  },
  ...temperatures.map(([at, from, expected, to]): OutsideCheck => ({
    topic: 'units',
    what: `${at} ${from} in ${to}`,
    source: `${NIST}: t/°C = (t/°F − 32)/1.8 and T/K = t/°C + 273.15`,
    kind: 'standard',
    unit: to,
    expected,
    ours: () => convert(at, from, to),
    tolerance: 1e-13,
  })),
];
