import { MathsError } from './errors.ts';
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
 * For each quantity, how much of its home unit is in one of each unit: mm, degrees, cc, g, kPa, ms,
 * rpm, A, V, ohm, mH, mJ, kg/m³ and 1.
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8. Exact there, or worked out here from
 * figures that are exact there: the US gallon of 231 cubic inches, the imperial gallon of
 * 4.546 09 litres, the pound of 453.592 37 g, mercury by
 * convention of 13.5951 times the density of water.
 */
const FACTORS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  length: MILLIMETRES_PER,
  angle: { deg: 1, rad: 180 / Math.PI, arcmin: 1 / 60, rev: 360 },
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
    mbar: 0.1,
    bar: 100,
    atm: STANDARD_ATMOSPHERE,
    psi: POUND_PER_SQUARE_INCH,
    mmHg: MILLIMETRE_OF_MERCURY,
    inHg: MILLIMETRE_OF_MERCURY * INCH,
  },
  time: { ms: 1, s: 1000, µs: 0.001, min: 60_000 },
  speed: { rpm: 1, Hz: 60, 'rad/s': 30 / Math.PI },
  current: { A: 1, mA: 0.001 },
  voltage: { V: 1, mV: 0.001, kV: 1000 },
  resistance: { ohm: 1, mohm: 0.001, kohm: 1000 },
  inductance: { mH: 1, H: 1000, µH: 0.001 },
  energy: { mJ: 1, J: 1000 },
  density: { 'kg/m³': 1, 'g/cc': 1000 },
  ratio: { '1': 1, '%': 0.01 },
};

/** Kelvin at 0 of each scale of temperature, and kelvin in one of its degrees. Exact, as above. */
const TEMPERATURES: Readonly<Record<string, readonly [zero: number, degree: number]>> = {
  K: [0, 1],
  '°C': [273.15, 1],
  '°F': [459.67 / 1.8, 1 / 1.8],
};

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
 * A value in another unit of the same quantity.
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
  if (quantity === 'temperature') {
    const [fromZero, fromDegree] = TEMPERATURES[fromUnit]!;
    const [toZero, toDegree] = TEMPERATURES[toUnit]!;
    return (value * fromDegree + (fromZero - toZero)) / toDegree;
  }
  const factors = FACTORS[quantity]!;
  return (value * factors[fromUnit]!) / factors[toUnit]!;
}
