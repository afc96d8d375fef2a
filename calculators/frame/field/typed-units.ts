import type { Unit } from '../../maths/units/units.ts';
import { units, type Quantity, type UnitName } from '../text/units.ts';

type Spellings = Readonly<Record<string, Unit>>;

const INCH_MARK = '″';

/**
 * Names people type, by quantity, without spaces and full stops, and what each is called in the table
 * of factors. One written in a single case stands for any; see `unitTyped`.
 */
export const typedUnits: Partial<Record<Quantity, Spellings>> = {
  length: {
    mm: 'mm',
    MM: 'mm',
    cm: 'cm',
    m: 'm',
    metre: 'm',
    metres: 'm',
    km: 'km',
    um: 'µm',
    μm: 'µm',
    micron: 'µm',
    microns: 'µm',
    in: 'in',
    inch: 'in',
    inches: 'in',
    '"': 'in',
    [INCH_MARK]: 'in',
    '”': 'in',
    thou: 'thou',
    mil: 'thou',
    ft: 'ft',
    foot: 'ft',
    feet: 'ft',
    "'": 'ft',
    '’': 'ft',
    '′': 'ft',
  },
  angle: { deg: 'deg', degree: 'deg', degrees: 'deg', '°': 'deg', rad: 'rad' },
  area: {
    mm2: 'mm²',
    'mm²': 'mm²',
    cm2: 'cm²',
    'cm²': 'cm²',
    in2: 'in²',
    'in²': 'in²',
    sqin: 'in²',
  },
  volume: {
    cc: 'cc',
    ml: 'ml',
    cm3: 'cc',
    'cm³': 'cc',
    l: 'l',
    litre: 'l',
    litres: 'l',
    liter: 'l',
    liters: 'l',
    cuin: 'cu in',
    'in³': 'cu in',
    in3: 'cu in',
    usgal: 'US gal',
    usgallon: 'US gal',
    usgallons: 'US gal',
    impgal: 'imp gal',
    impgallon: 'imp gal',
    impgallons: 'imp gal',
    ukgal: 'imp gal',
    uspt: 'US pt',
    uspint: 'US pt',
    uspints: 'US pt',
    imppt: 'imp pt',
    imppint: 'imp pt',
    imppints: 'imp pt',
    ukpt: 'imp pt',
    usfloz: 'US fl oz',
    impfloz: 'imp fl oz',
    ukfloz: 'imp fl oz',
  },
  mass: {
    g: 'g',
    gram: 'g',
    grams: 'g',
    gf: 'g',
    mg: 'mg',
    kg: 'kg',
    oz: 'oz',
    lb: 'lb',
    lbs: 'lb',
  },
  density: {
    'kg/m3': 'kg/m³',
    'kg/m³': 'kg/m³',
    'g/cc': 'g/cc',
    'g/cm3': 'g/cc',
    'g/cm³': 'g/cc',
    'g/ml': 'g/cc',
    'kg/l': 'g/cc',
  },
  pressure: {
    kPa: 'kPa',
    Pa: 'Pa',
    hPa: 'hPa',
    MPa: 'MPa',
    mbar: 'mbar',
    bar: 'bar',
    psi: 'psi',
    'lb/in2': 'psi',
    'lb/in²': 'psi',
    'lbf/in2': 'psi',
    mmHg: 'mmHg',
    cmHg: 'cmHg',
    inHg: 'inHg',
    atm: 'atm',
    'kgf/cm2': 'kgf/cm²',
    'kgf/cm²': 'kgf/cm²',
    'kg/cm2': 'kgf/cm²',
    'kg/cm²': 'kgf/cm²',
  },
  temperature: {
    degC: '°C',
    C: '°C',
    '°C': '°C',
    degF: '°F',
    F: '°F',
    '°F': '°F',
    K: 'K',
  },
  time: { ms: 'ms', μs: 'µs', us: 'µs', s: 's', min: 'min', h: 'h', hour: 'h', hours: 'h' },
  speed: { rpm: 'rpm', 'rev/min': 'rpm', 'r/min': 'rpm', '1/min': 'rpm' },
  current: { A: 'A', mA: 'mA', amp: 'A', amps: 'A' },
  charge: { Ah: 'Ah', mAh: 'mAh' },
  voltage: { V: 'V', mV: 'mV', kV: 'kV', volt: 'V', volts: 'V' },
  resistance: {
    ohm: 'ohm',
    ohms: 'ohm',
    Ω: 'ohm',
    mohm: 'mohm',
    mΩ: 'mohm',
    kohm: 'kohm',
    kΩ: 'kohm',
    Mohm: 'Mohm',
    MΩ: 'Mohm',
    megohm: 'Mohm',
    megohms: 'Mohm',
  },
  inductance: { mH: 'mH', H: 'H', uH: 'µH', μH: 'µH' },
  capacitance: { uF: 'µF', μF: 'µF', mfd: 'µF', nF: 'nF', pF: 'pF' },
  energy: { mJ: 'mJ', J: 'J' },
  power: { W: 'W', kW: 'kW' },
  velocity: { 'm/s': 'm/s', 'km/h': 'km/h' },
  share: { '%': '%', percent: '%', '‰': '‰', permille: '‰' },
  expansion: {
    'ppm/K': 'ppm/K',
    'ppm/C': 'ppm/K',
    'ppm/°C': 'ppm/K',
    'ppm/F': 'ppm/°F',
    'ppm/°F': 'ppm/°F',
    '·10⁻⁶/K': 'ppm/K',
  },
  ratio: { ':1': '1', to1: '1' },
};

/** Names of two different measures, and how to say which. */
const ambiguous: Partial<Record<Quantity, Readonly<Record<string, string>>>> = {
  volume: {
    gal: 'gal',
    gallon: 'gal',
    gallons: 'gal',
    pt: 'pt',
    pint: 'pt',
    pints: 'pt',
    floz: 'fl oz',
    oz: 'fl oz',
  },
};

/** What stands after a figure: a unit, a sentence that says why it is none, or nothing known. */
export type TypedUnit =
  | { readonly kind: 'unit'; readonly unit: Unit }
  | { readonly kind: 'refused'; readonly sentence: string }
  | { readonly kind: 'unknown' };

/** Two writings of one letter each are made one; spaces and full stops say nothing. */
const spelling = (typed: string): string =>
  typed
    .replaceAll(/[\s.]+/gu, '')
    .replaceAll('µ', 'μ')
    .replaceAll('\u2126', 'Ω')
    .replaceAll(/′′|''/gu, INCH_MARK);

const lookUp = <T>(table: Readonly<Record<string, T>> | undefined, name: string): T | undefined =>
  table !== undefined && Object.hasOwn(table, name) ? table[name] : undefined;

/**
 * Reads a unit. Capitals or small letters are let be, except in a leading m or M before another unit,
 * which makes a thousandth or a million of it: 8 MH is not 8 mH, and neither is taken for the other.
 */
export function unitTyped(typed: string, quantity: Quantity): TypedUnit {
  const known = typedUnits[quantity];
  const name = spelling(typed);
  const exact = lookUp(known, name);
  if (exact !== undefined) return { kind: 'unit', unit: exact };
  const folded = name.toLowerCase();
  const two = lookUp(ambiguous[quantity], folded);
  if (two !== undefined) {
    return {
      kind: 'refused',
      sentence: `A “${typed}” may be imperial or US, and the two differ by ${two === 'fl oz' ? '4 per cent' : 'a fifth'}. Say which: imp ${two} or US ${two}.`,
    };
  }
  const alike = Object.entries(known ?? {}).filter(([other]) => other.toLowerCase() === folded);
  const bases = new Set(Object.keys(known ?? {}).map((other) => other.toLowerCase()));
  const prefixed = folded.startsWith('m') && bases.has(folded.slice(1));
  const same = prefixed ? alike.filter(([other]) => other[0] === name[0]) : alike;
  if (same[0]) return { kind: 'unit', unit: same[0][1] };
  const meant = alike[0];
  if (meant) {
    return {
      kind: 'refused',
      sentence: `A leading ${name[0]!} means ${name.startsWith('M') ? 'a million' : 'a thousandth'}, and “${typed}” is not a unit this field takes. If you meant ${meant[1]}, type it so.`,
    };
  }
  return { kind: 'unknown' };
}

/** Whether a typed unit is the home unit itself, or none is typed. */
export function isHomeUnit(typed: string, home: UnitName): boolean {
  if (typed === '') return true;
  const { quantity, factor } = units[home];
  const read = unitTyped(typed, quantity);
  return read.kind === 'unit' && read.unit === factor;
}
