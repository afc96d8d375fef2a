import { listed } from '../../maths/numeric/listed.ts';
import { convert, type Unit } from '../../maths/units/units.ts';
import { fieldUnit, type Ranged } from './field-unit.ts';
import { toShown, units, type LengthDisplay, type UnitName } from '../text/units.ts';

/** As people write each home unit, and other units in which a reader may have the figure. */
const writings: Partial<Record<UnitName, readonly [own: string, ...others: Unit[]]>> = {
  mm: ['mm', 'in', 'thou'],
  m: ['m', 'ft'],
  deg: ['deg'],
  mm2: ['mm2', 'in²'],
  wire: ['mm2'],
  cc: ['cc', 'cu in'],
  litre: ['l', 'imp gal', 'US gal'],
  ml: ['ml', 'imp fl oz', 'US fl oz'],
  g: ['g', 'oz'],
  gf: ['gf', 'oz'],
  'kg/m3': ['kg/m3', 'g/cc'],
  kPa: ['kPa', 'psi', 'bar'],
  air: ['kPa', 'hPa', 'inHg'],
  degC: ['°C', '°F'],
  ms: ['ms'],
  s: ['s', 'min'],
  h: ['h', 'min'],
  rpm: ['rpm'],
  A: ['A', 'mA'],
  Ah: ['Ah'],
  V: ['V'],
  ohm: ['ohm'],
  mohm: ['mohm', 'ohm'],
  Mohm: ['Mohm', 'kohm'],
  mH: ['mH', 'H'],
  uF: ['uF', 'nF'],
  '%': ['%'],
  '‰': ['‰', '%'],
  'ppm/K': ['ppm/K', 'ppm/°F'],
  ratio: [': 1'],
};

/** A round figure well inside a range. */
function inside({ min, max, whole }: Ranged): number {
  const low = Math.max(min, 0);
  const high = max > 0 ? max : min / 8;
  const value = low > 0 ? Math.sqrt(low * high) : high / 8;
  const round = whole ? Math.max(Math.ceil(low), Math.round(value)) : Number(value.toPrecision(2));
  return Math.min(max, Math.max(min, round));
}

const short = (value: number, digits = 3): string =>
  String(Number(value.toPrecision(digits))).replace('-', '−');

/**
 * Figures that a field would take, written in its own units: “45, 45 mm, 1.77 in or 1770 thou”.
 *
 * @param usual About what is read there, so that the example is no figure to set by mistake.
 */
export function exampleWords(spec: Ranged, lengths: LengthDisplay, usual?: number): string {
  const isUsual = usual !== undefined && usual !== 0 && usual >= spec.min && usual <= spec.max;
  const value = isUsual ? usual : inside(spec);
  const [own, ...others] = writings[spec.unit] ?? [undefined];
  if (own === undefined) return short(value);
  const home = units[spec.unit].factor!;
  const written = [
    short(toShown(value, fieldUnit(spec, lengths))),
    `${short(value)} ${own}`,
    ...others.map((other) => `${short(convert(value, home, other), isUsual ? 2 : 3)} ${other}`),
  ];
  return listed(written, 'or');
}
