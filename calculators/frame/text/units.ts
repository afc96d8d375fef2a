import { convert, type Unit } from '../../maths/units/units.ts';

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
  | 'charge'
  | 'voltage'
  | 'resistance'
  | 'inductance'
  | 'capacitance'
  | 'energy'
  | 'power'
  | 'share'
  | 'ratio'
  | 'count'
  | 'number'
  | 'gradient'
  | 'velocity'
  | 'force'
  | 'couple'
  | 'expansion'
  | 'time-area';

export interface UnitSpec {
  readonly quantity: Quantity;
  /** As printed after a figure. */
  readonly label: string;
  /** As written in an address: no spaces, ASCII. */
  readonly token: string;
  /** Whether a thin space stands between figure and label. */
  readonly spaced: boolean;
  /** Its name in the table of factors; none where nothing converts into it. */
  readonly factor?: Unit;
}

const unit = (
  quantity: Quantity,
  label: string,
  { factor, token = label, spaced = true }: Partial<Pick<UnitSpec, 'factor' | 'token' | 'spaced'>>,
): UnitSpec => ({ quantity, label, token, spaced, ...(factor === undefined ? {} : { factor }) });

/** A unit that the table of factors calls by the label it has for people. */
const plain = (quantity: Quantity, name: Unit): UnitSpec => unit(quantity, name, { factor: name });

/** The units in which inputs and results are kept (home units) or shown. */
export const units = {
  mm: plain('length', 'mm'),
  in: plain('length', 'in'),
  thou: plain('length', 'thou'),
  m: plain('length', 'm'),
  ft: plain('length', 'ft'),
  deg: unit('angle', '°', { factor: 'deg', token: 'deg', spaced: false }),
  mm2: unit('area', 'mm²', { factor: 'mm²', token: 'mm2' }),
  /** Of a wire, which is sold by mm² everywhere: it has no twin in inches. */
  wire: unit('area', 'mm²', { factor: 'mm²', token: 'mm2' }),
  in2: unit('area', 'in²', { factor: 'in²', token: 'in2' }),
  cc: plain('volume', 'cc'),
  litre: unit('volume', 'litres', { factor: 'l', token: 'l' }),
  ml: plain('volume', 'ml'),
  g: plain('mass', 'g'),
  gf: unit('mass', 'gf', { factor: 'g' }),
  'kg/m3': unit('density', 'kg/m³', { factor: 'kg/m³', token: 'kg/m3' }),
  'g/cc': plain('density', 'g/cc'),
  kPa: plain('pressure', 'kPa'),
  psi: plain('pressure', 'psi'),
  /** Of the air and of a vacuum gauge, which is read in kPa, hPa or inches of mercury: it has no twin in psi. */
  air: unit('pressure', 'kPa', { factor: 'kPa', token: 'kPa' }),
  degC: unit('temperature', '°C', { factor: '°C', token: 'degC' }),
  ms: plain('time', 'ms'),
  s: plain('time', 's'),
  min: plain('time', 'min'),
  h: plain('time', 'h'),
  rpm: plain('speed', 'rpm'),
  A: plain('current', 'A'),
  Ah: plain('charge', 'Ah'),
  V: plain('voltage', 'V'),
  ohm: unit('resistance', 'Ω', { factor: 'ohm', token: 'ohm' }),
  mohm: unit('resistance', 'mΩ', { factor: 'mohm', token: 'mohm' }),
  Mohm: unit('resistance', 'MΩ', { factor: 'Mohm', token: 'Mohm' }),
  mH: plain('inductance', 'mH'),
  uF: unit('capacitance', 'µF', { factor: 'µF', token: 'uF' }),
  mJ: plain('energy', 'mJ'),
  W: plain('power', 'W'),
  '%': unit('share', '%', { factor: '%', spaced: false }),
  ratio: unit('ratio', ': 1', { factor: '1', token: '' }),
  count: unit('count', '', {}),
  none: unit('number', '', {}),
  'mm/deg': unit('gradient', 'mm per degree', { token: '' }),
  'thou/deg': unit('gradient', 'thou per degree', { token: '' }),
  'm/s': plain('velocity', 'm/s'),
  N: unit('force', 'N', {}),
  Nm: unit('couple', 'N m', { token: 'Nm' }),
  'ppm/K': unit('expansion', '·10⁻⁶/K', { factor: 'ppm/K', token: 'ppm/K' }),
  '‰': unit('share', '‰', { factor: '‰', token: 'permille', spaced: false }),
  's/m': unit('time-area', 's/m', {}),
} as const satisfies Record<string, UnitSpec>;

export type UnitName = keyof typeof units;

/** The reader's choice of length display, remembered in the browser. */
export type LengthDisplay = 'mm' | 'in';

/**
 * What stands for each home unit when lengths are shown in inches. A volume stays in cc, as every
 * burette is marked.
 */
const inchTwin: Partial<Record<UnitName, UnitName>> = {
  mm: 'in',
  m: 'ft',
  mm2: 'in2',
  kPa: 'psi',
  'mm/deg': 'thou/deg',
};

/** Whether figures in this unit look different when lengths are shown in inches. */
export const hasInchTwin = (home: UnitName): boolean => inchTwin[home] !== undefined;

/** The unit in which a figure kept in `home` is shown, whatever its size. */
export function displayUnit(home: UnitName, lengths: LengthDisplay): UnitName {
  return lengths === 'in' ? (inchTwin[home] ?? home) : home;
}

/** How much of its home unit is in one of each unit that is only shown. */
const inHome: Partial<Record<UnitName, number>> = {
  in: convert(1, 'in', 'mm'),
  thou: convert(1, 'thou', 'mm'),
  ft: convert(1, 'ft', 'm'),
  in2: convert(1, 'in²', 'mm²'),
  psi: convert(1, 'psi', 'kPa'),
  'thou/deg': convert(1, 'thou', 'mm'),
};

/** `value` in its home unit, expressed in `shown`. */
export const toShown = (value: number, shown: UnitName): number => value / (inHome[shown] ?? 1);

/** `value` as shown in `shown`, brought back to its home unit. */
export const fromShown = (value: number, shown: UnitName): number => value * (inHome[shown] ?? 1);

/** `value` in `home`, expressed in the unit in which it is shown. */
export function toDisplay(value: number, home: UnitName, lengths: LengthDisplay): number {
  return toShown(value, displayUnit(home, lengths));
}

/** `value` as shown, brought back to the home unit. */
export function fromDisplay(value: number, home: UnitName, lengths: LengthDisplay): number {
  return fromShown(value, displayUnit(home, lengths));
}

/** How to name a quantity in a sentence. */
export const quantityNouns: Readonly<Record<Quantity, string>> = {
  length: 'a length',
  angle: 'an angle',
  area: 'an area',
  volume: 'a volume',
  mass: 'a mass',
  density: 'a density',
  pressure: 'a pressure',
  temperature: 'a temperature',
  time: 'a time',
  speed: 'a speed',
  current: 'a current',
  charge: 'a charge',
  voltage: 'a voltage',
  resistance: 'a resistance',
  inductance: 'an inductance',
  capacitance: 'a capacitance',
  energy: 'an energy',
  power: 'a power',
  share: 'a share in per cent',
  ratio: 'a ratio',
  count: 'a whole number',
  number: 'a number',
  gradient: 'a rate',
  velocity: 'a speed',
  force: 'a force',
  couple: 'a couple',
  expansion: 'a rate of expansion',
  'time-area': 'a time-area',
};
