import { MathsError } from '../numeric/errors.ts';
import { MILLIMETRES_PER } from './length-units.ts';
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from './standard.ts';

const INCH = MILLIMETRES_PER.in;
const CUBIC_INCH = (INCH * INCH * INCH) / 1000;
const US_GALLON = 231 * CUBIC_INCH;
const IMPERIAL_GALLON = 4546.09;
const POUND = 453.59237;
const POUND_PER_SQUARE_INCH = (POUND * STANDARD_GRAVITY) / (INCH * INCH);
const MILLIMETRE_OF_MERCURY = (13.5951 * STANDARD_GRAVITY) / 1000;

/**
 * For each quantity, how much of its home unit is in one of each unit: mm, degrees, mm², cc, g, kPa,
 * ms, rpm, A, Ah, V, ohm, mH, µF, mJ, W, m/s, kg/m³, 1 and millionths for each K. The only factors in
 * the house: what is typed, what is shown and what the articles work out all go through them.
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8. Exact there, or worked out here from
 * figures that are exact there: the US gallon of 231 cubic inches, the pound of 453.592 37 g, mercury
 * by convention of 13.5951 times the density of water, the kilogram-force of 9.806 65 N. The imperial
 * gallon of 4.546 09 litres, its eighth and its 160th: Weights and Measures Act 1985, Schedule 1.
 */
const FACTORS = {
  length: MILLIMETRES_PER,
  angle: { deg: 1, rad: 180 / Math.PI, arcmin: 1 / 60, rev: 360 },
  area: { 'mm²': 1, 'cm²': 100, 'in²': INCH * INCH },
  volume: {
    cc: 1,
    ml: 1,
    l: 1000,
    'cu in': CUBIC_INCH,
    'US gal': US_GALLON,
    'US pt': US_GALLON / 8,
    'US fl oz': US_GALLON / 128,
    'imp gal': IMPERIAL_GALLON,
    'imp pt': IMPERIAL_GALLON / 8,
    'imp fl oz': IMPERIAL_GALLON / 160,
  },
  mass: { g: 1, kg: 1000, mg: 0.001, lb: POUND, oz: POUND / 16 },
  pressure: {
    kPa: 1,
    Pa: 0.001,
    hPa: 0.1,
    MPa: 1000,
    mbar: 0.1,
    bar: 100,
    atm: STANDARD_ATMOSPHERE,
    psi: POUND_PER_SQUARE_INCH,
    mmHg: MILLIMETRE_OF_MERCURY,
    cmHg: MILLIMETRE_OF_MERCURY * 10,
    inHg: MILLIMETRE_OF_MERCURY * INCH,
    'kgf/cm²': STANDARD_GRAVITY * 10,
  },
  time: { ms: 1, s: 1000, µs: 0.001, min: 60_000, h: 3_600_000 },
  speed: { rpm: 1, Hz: 60, 'rad/s': 30 / Math.PI },
  current: { A: 1, mA: 0.001 },
  charge: { Ah: 1, mAh: 0.001 },
  voltage: { V: 1, mV: 0.001, kV: 1000 },
  resistance: { ohm: 1, mohm: 0.001, kohm: 1000, Mohm: 1e6 },
  inductance: { mH: 1, H: 1000, µH: 0.001 },
  capacitance: { µF: 1, nF: 0.001, pF: 1e-6 },
  energy: { mJ: 1, J: 1000 },
  power: { W: 1, kW: 1000 },
  velocity: { 'm/s': 1, 'km/h': 1 / 3.6 },
  density: { 'kg/m³': 1, 'g/cc': 1000 },
  ratio: { '1': 1, '%': 0.01, '‰': 0.001 },
  expansion: { 'ppm/K': 1, 'ppm/°F': 1.8 },
} as const satisfies Record<string, Readonly<Record<string, number>>>;

/** Kelvin at 0 of each scale of temperature, and kelvin in one of its degrees. Exact, as above. */
const TEMPERATURES = {
  K: [0, 1],
  '°C': [273.15, 1],
  '°F': [459.67 / 1.8, 1 / 1.8],
} as const satisfies Record<string, readonly [zero: number, degree: number]>;

type Units = typeof FACTORS;

/** Every unit there is here, by the name it has in the table. */
export type Unit =
  { [Quantity in keyof Units]: keyof Units[Quantity] }[keyof Units] | keyof typeof TEMPERATURES;

/** A double carries 15 decimal digits faithfully; what stands beyond them is rounding error. */
const FAITHFUL_DIGITS = 15;

/**
 * What a unit measures, such as `length` for `thou`.
 *
 * @throws MathsError `unknown-unit`.
 */
export function quantityOf(unit: string): string {
  if (Object.hasOwn(TEMPERATURES, unit)) return 'temperature';
  for (const [quantity, factors] of Object.entries(FACTORS)) {
    if (Object.hasOwn(factors, unit)) return quantity;
  }
  throw new MathsError('unknown-unit', ['unit'], `There is no unit “${unit}” here.`);
}

/**
 * A value in another unit of the same quantity, to 15 significant digits: 18 thou are 0.4572 mm, and
 * not 0.45719999999999994.
 *
 * @param value Any number, in `fromUnit`.
 * @throws MathsError `unknown-unit`, or `unit-mismatch` between, say, a length and an angle.
 */
export function convert(value: number, fromUnit: string, toUnit: string): number {
  const quantity = quantityOf(fromUnit);
  const wanted = quantityOf(toUnit);
  if (quantity !== wanted) {
    throw new MathsError(
      'unit-mismatch',
      ['unit'],
      `“${fromUnit}” is a unit of ${quantity} and cannot be turned into “${toUnit}”, a unit of ${wanted}.`,
    );
  }
  if (fromUnit === toUnit) return value;
  return Number(exchanged(value, quantity, fromUnit, toUnit).toPrecision(FAITHFUL_DIGITS));
}

function exchanged(value: number, quantity: string, fromUnit: string, toUnit: string): number {
  if (quantity === 'temperature') {
    const scales: Readonly<Record<string, readonly [number, number]>> = TEMPERATURES;
    const [fromZero, fromDegree] = scales[fromUnit]!;
    const [toZero, toDegree] = scales[toUnit]!;
    return (value * fromDegree + (fromZero - toZero)) / toDegree;
  }
  const factors = (FACTORS as Readonly<Record<string, Readonly<Record<string, number>>>>)[
    quantity
  ]!;
  return (value * factors[fromUnit]!) / factors[toUnit]!;
}
