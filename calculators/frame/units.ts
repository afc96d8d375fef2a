import { MILLIMETRES_PER } from '../maths/length-units.ts';

/** A kind of quantity. Only units of the same quantity convert into each other. */
export type Quantity =
  | 'length'
  | 'angle'
  | 'area'
  | 'volume'
  | 'mass'
  | 'density'
  | 'pressure'
  | 'temperature'
  | 'time'
  | 'speed'
  | 'current'
  | 'voltage'
  | 'resistance'
  | 'inductance'
  | 'energy'
  | 'power'
  | 'share'
  | 'ratio'
  | 'count'
  | 'number'
  | 'gradient'
  | 'velocity'
  | 'time-area';

export interface UnitSpec {
  readonly quantity: Quantity;
  /** As printed after a figure. */
  readonly label: string;
  /** As written in an address: no spaces, ASCII. */
  readonly token: string;
  /** Whether a thin space stands between figure and label. */
  readonly spaced: boolean;
}

const unit = (quantity: Quantity, label: string, token = label, spaced = true): UnitSpec => ({
  quantity,
  label,
  token,
  spaced,
});

/** The units in which inputs and results are kept (home units) or shown. */
export const units = {
  mm: unit('length', 'mm'),
  in: unit('length', 'in'),
  m: unit('length', 'm'),
  deg: unit('angle', '°', 'deg', false),
  mm2: unit('area', 'mm²', 'mm2'),
  in2: unit('area', 'in²', 'in2'),
  cc: unit('volume', 'cc'),
  cuin: unit('volume', 'cu in', 'cuin'),
  litre: unit('volume', 'litres', 'l'),
  ml: unit('volume', 'ml'),
  g: unit('mass', 'g'),
  gf: unit('mass', 'gf'),
  'kg/m3': unit('density', 'kg/m³', 'kg/m3'),
  'g/cc': unit('density', 'g/cc'),
  kPa: unit('pressure', 'kPa'),
  degC: unit('temperature', '°C', 'degC'),
  ms: unit('time', 'ms'),
  h: unit('time', 'h'),
  rpm: unit('speed', 'rpm'),
  A: unit('current', 'A'),
  V: unit('voltage', 'V'),
  ohm: unit('resistance', 'Ω', 'ohm'),
  mH: unit('inductance', 'mH'),
  mJ: unit('energy', 'mJ'),
  W: unit('power', 'W'),
  '%': unit('share', '%', '%', false),
  ratio: unit('ratio', ': 1', ''),
  count: unit('count', '', ''),
  none: unit('number', '', ''),
  'mm/deg': unit('gradient', 'mm per degree', ''),
  'm/s': unit('velocity', 'm/s', 'm/s'),
  's/m': unit('time-area', 's/m'),
} as const satisfies Record<string, UnitSpec>;

export type UnitName = keyof typeof units;

/** The reader's choice of length display, remembered in the browser. */
export type LengthDisplay = 'mm' | 'in';

const inchTwin: Partial<Record<UnitName, UnitName>> = { mm: 'in', mm2: 'in2', cc: 'cuin' };

/** The unit in which a figure kept in `home` is shown. */
export function displayUnit(home: UnitName, lengths: LengthDisplay): UnitName {
  return lengths === 'in' ? (inchTwin[home] ?? home) : home;
}

const perHome: Partial<Record<UnitName, number>> = {
  in: 1 / MILLIMETRES_PER.in,
  in2: 1 / MILLIMETRES_PER.in ** 2,
  cuin: 1000 / MILLIMETRES_PER.in ** 3,
};

/** `value` in `home`, expressed in the unit in which it is shown. */
export function toDisplay(value: number, home: UnitName, lengths: LengthDisplay): number {
  return value * (perHome[displayUnit(home, lengths)] ?? 1);
}

/** `value` as shown, brought back to the home unit. */
export function fromDisplay(value: number, home: UnitName, lengths: LengthDisplay): number {
  return value / (perHome[displayUnit(home, lengths)] ?? 1);
}

/** Names people type, by quantity, and what each is called by the converter. */
export const typedUnits: Partial<Record<Quantity, Readonly<Record<string, string>>>> = {
  length: {
    mm: 'mm',
    cm: 'cm',
    m: 'm',
    um: 'um',
    µm: 'um',
    μm: 'um',
    micron: 'um',
    microns: 'um',
    in: 'inch',
    inch: 'inch',
    inches: 'inch',
    '"': 'inch',
    '″': 'inch',
    thou: 'mil',
    mil: 'mil',
    ft: 'foot',
    feet: 'foot',
  },
  angle: { deg: 'deg', degree: 'deg', degrees: 'deg', '°': 'deg', rad: 'rad' },
  area: { mm2: 'mm^2', 'mm²': 'mm^2', cm2: 'cm^2', 'cm²': 'cm^2', in2: 'sqin', 'in²': 'sqin' },
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
    cuin: 'cuin',
    'cu in': 'cuin',
    'in³': 'cuin',
    in3: 'cuin',
    'us gal': 'gallon',
    usgal: 'gallon',
    'imp gal': 'imperialgallon',
    impgal: 'imperialgallon',
    'uk gal': 'imperialgallon',
    ukgal: 'imperialgallon',
    'us pt': 'pint',
    uspt: 'pint',
    'imp pt': 'imperialpint',
    imppt: 'imperialpint',
    'us fl oz': 'floz',
    usfloz: 'floz',
    'imp fl oz': 'imperialfloz',
    impfloz: 'imperialfloz',
  },
  mass: { g: 'g', gram: 'g', grams: 'g', gf: 'g', kg: 'kg', oz: 'oz', lb: 'lbm' },
  density: {
    'kg/m3': 'kg/m^3',
    'kg/m³': 'kg/m^3',
    'g/cc': 'g/cc',
    'g/cm3': 'g/cc',
    'g/cm³': 'g/cc',
    'g/ml': 'g/ml',
    'kg/l': 'kg/l',
  },
  pressure: {
    kpa: 'kPa',
    pa: 'Pa',
    hpa: 'hPa',
    mbar: 'mbar',
    bar: 'bar',
    psi: 'psi',
    mmhg: 'mmHg',
    inhg: 'inHg',
    atm: 'atm',
  },
  temperature: {
    degc: 'degC',
    c: 'degC',
    '°c': 'degC',
    degf: 'degF',
    f: 'degF',
    '°f': 'degF',
    k: 'K',
  },
  time: { ms: 'ms', s: 's', min: 'minute', h: 'hour', hours: 'hour' },
  current: { a: 'A', ma: 'mA', amp: 'A', amps: 'A' },
  voltage: { v: 'V', mv: 'mV', volt: 'V', volts: 'V' },
  resistance: { ohm: 'ohm', ohms: 'ohm', Ω: 'ohm', ω: 'ohm', kohm: 'kohm' },
  inductance: { mh: 'mH', h: 'H', uh: 'uH', µh: 'uH', μh: 'uH' },
  energy: { mj: 'mJ', j: 'J' },
  velocity: { 'm/s': 'm/s' },
};

/** The converter's name for a home unit. */
export function converterName(home: UnitName): string {
  const spec = units[home];
  return typedUnits[spec.quantity]?.[spec.token.toLowerCase()] ?? spec.token;
}

/** Names that mean the home unit itself, where no conversion exists. */
export const plainNames: Partial<Record<Quantity, readonly string[]>> = {
  speed: ['rpm', 'rev/min', 'r/min'],
  share: ['%', 'per cent', 'percent'],
  ratio: [':1', ': 1', 'to 1'],
};

/** How to name a quantity and its usual units in a sentence. */
export const quantityWords: Record<Quantity, { readonly noun: string; readonly like: string }> = {
  length: { noun: 'a length', like: '12.5, 12.5 mm, 0.49 in, 87 thou or 3/32 in' },
  angle: { noun: 'an angle', like: '24.5 or 24.5 deg' },
  area: { noun: 'an area', like: '300 or 300 mm2' },
  volume: { noun: 'a volume', like: '8.5, 8.5 cc or 0.52 cu in' },
  mass: { noun: 'a mass', like: '6.5 or 6.5 g' },
  density: { noun: 'a density', like: '740 kg/m3 or 0.74 g/cc' },
  pressure: { noun: 'a pressure', like: '101.3, 1013 hPa or 29.92 inHg' },
  temperature: { noun: 'a temperature', like: '18, 18 degC or 64 degF' },
  time: { noun: 'a time', like: '4 or 4 ms' },
  speed: { noun: 'a speed', like: '3000 or 3000 rpm' },
  current: { noun: 'a current', like: '3.5 or 3.5 A' },
  voltage: { noun: 'a voltage', like: '6 or 6 V' },
  resistance: { noun: 'a resistance', like: '1.5 or 1.5 ohm' },
  inductance: { noun: 'an inductance', like: '6 or 6 mH' },
  energy: { noun: 'an energy', like: '25 or 25 mJ' },
  power: { noun: 'a power', like: '15 or 15 W' },
  share: { noun: 'a share in per cent', like: '75 or 75 %' },
  ratio: { noun: 'a ratio', like: '25 or 25:1' },
  count: { noun: 'a whole number', like: '3' },
  number: { noun: 'a number', like: '1.5' },
  gradient: { noun: 'a rate', like: '0.2' },
  velocity: { noun: 'a speed', like: '10 or 10 m/s' },
  'time-area': { noun: 'a time-area', like: '0.01' },
};
