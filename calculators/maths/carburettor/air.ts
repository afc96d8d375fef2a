/**
 * Density of the air an engine draws: from temperature, pressure and humidity, and the pressure from
 * the height above the sea where there is no barometer.
 */
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from '../units/standard.ts';
import { assertWithin } from '../numeric/within.ts';

export interface Air {
  /** °C, −30 to 55. */
  readonly temperature: number;
  /** As a barometer on the spot shows it, kPa, above 0. Not reduced to sea level. */
  readonly pressure: number;
  /** Relative humidity, per cent, 0 to 100. */
  readonly humidity: number;
}

/** Temperatures of the air, °C, for which the formula for damp air is taken here. */
export const AIR_TEMPERATURES = { min: -30, max: 55 } as const;

const ZERO_CELSIUS = 273.15;

function assertAir({ temperature, pressure, humidity }: Air): void {
  assertWithin(
    {
      quantity: 'temperature',
      words: 'The temperature of the air',
      unit: '°C',
      ...AIR_TEMPERATURES,
      why: 'Outside that the formula for damp air is not proved. Measure in the shade, where the engine draws its air.',
    },
    temperature,
  );
  assertWithin(
    {
      quantity: 'pressure',
      words: 'The air pressure',
      unit: 'kPa',
      min: 0,
      above: true,
      why: 'Without pressure there is no air. 1013 hPa or mbar is 101.3 kPa; 29.92 inches of mercury is the same.',
    },
    pressure,
  );
  assertWithin(
    {
      quantity: 'humidity',
      words: 'The humidity',
      unit: '%',
      min: 0,
      max: 100,
      why: 'It is relative humidity, which is 100% in fog.',
    },
    humidity,
  );
}

/** Pressure of saturated water vapour over water, Pa, at a temperature in kelvin (CIPM-2007, A.1). */
function saturationPressure(kelvin: number): number {
  return Math.exp(
    1.2378847e-5 * kelvin * kelvin - 1.9121316e-2 * kelvin + 33.93711047 - 6343.1645 / kelvin,
  );
}

/**
 * Density of moist air.
 *
 * Source: A. Picard, R. S. Davis, M. Gläser and K. Fujii, "Revised formula for the density of moist
 * air (CIPM-2007)", Metrologia 45 (2008), pages 149-155, equation 5 and appendix A, with the usual
 * 400 parts per million of carbon dioxide. The authors give it for 600 to 1100 hPa and 15 to 27 °C;
 * outside that the fits for vapour and compressibility are a little less exact, by far less than a
 * jet can show.
 *
 * @returns kg/m³.
 * @throws MathsError `out-of-range`.
 */
export function airDensity(air: Air): number {
  assertAir(air);
  const { temperature: t } = air;
  const kelvin = t + ZERO_CELSIUS;
  const p = air.pressure * 1000;
  const enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
  const xv = ((air.humidity / 100) * enhancement * saturationPressure(kelvin)) / p;
  const z =
    1 -
    (p / kelvin) *
      (1.58123e-6 -
        2.9331e-8 * t +
        1.1043e-10 * t * t +
        (5.707e-6 - 2.051e-8 * t) * xv +
        (1.9898e-4 - 2.376e-6 * t) * xv * xv) +
    (p / kelvin) ** 2 * (1.83e-11 - 0.765e-8 * xv * xv);
  return ((3.48374e-3 * p) / (z * kelvin)) * (1 - 0.378 * xv);
}

/** ISO 2533:1975, clause 2: warmth at sea level, the fall of temperature with height, and g·M/(R·fall). */
const SEA_LEVEL_KELVIN = 288.15;
const FALL = 0.0065;
const GAS_CONSTANT = 287.05287;
const EXPONENT = STANDARD_GRAVITY / (GAS_CONSTANT * FALL);

function assertAltitude(altitude: number): void {
  assertWithin(
    {
      quantity: 'altitude',
      words: 'The height above sea level',
      unit: 'm',
      min: -2000,
      max: 11_000,
      why: 'Between those the air of the standard cools evenly with height. A figure in feet needs its unit: 5000 ft.',
    },
    altitude,
  );
}

/**
 * Pressure of the standard atmosphere at a height above sea level.
 *
 * Source: ISO 2533:1975, Standard atmosphere, in which it is the same as the U.S. Standard
 * Atmosphere, 1976. Heights there are geopotential; at 3000 m the difference from those on a map is
 * 1.4 m.
 *
 * @param altitude m, −2000 to 11 000.
 * @returns kPa.
 * @throws MathsError `out-of-range`.
 */
export function standardPressure(altitude: number): number {
  assertAltitude(altitude);
  return STANDARD_ATMOSPHERE * (1 - (FALL * altitude) / SEA_LEVEL_KELVIN) ** EXPONENT;
}

/** The height in m at which the standard atmosphere has a pressure in kPa; inverse of the above. */
export function standardAltitude(pressure: number): number {
  return (SEA_LEVEL_KELVIN / FALL) * (1 - (pressure / STANDARD_ATMOSPHERE) ** (1 / EXPONENT));
}

/**
 * The height in m at which the standard atmosphere is as dense as the air at hand: the density
 * altitude. Any density that `airDensity` gives, in kg/m³; negative where the air is denser than
 * standard air at sea level.
 */
export function densityAltitude(density: number): number {
  const atSeaLevel = (1000 * STANDARD_ATMOSPHERE) / (GAS_CONSTANT * SEA_LEVEL_KELVIN);
  return (SEA_LEVEL_KELVIN / FALL) * (1 - (density / atSeaLevel) ** (1 / (EXPONENT - 1)));
}

/**
 * The pressure on the spot, from one that a weather report has reduced to sea level.
 *
 * The standard atmosphere is shifted in height until it has the reported pressure at sea level, as
 * an altimeter does. Source: ICAO Doc 7488 and ISO 2533 for the atmosphere; the method is that of
 * the altimeter setting. In frost or heat a report reduced with the day's temperature differs from
 * it by up to about 1 per cent at 1500 m.
 *
 * @param reported kPa reduced to sea level, 85 or more.
 * @param altitude m, −2000 to 11 000.
 * @returns kPa.
 * @throws MathsError `out-of-range`.
 */
export function stationPressure(reported: number, altitude: number): number {
  assertWithin(
    {
      quantity: 'pressure',
      words: 'A pressure reduced to sea level',
      unit: 'kPa',
      min: 85,
      why: 'No weather on earth has less. If it was read off a barometer on the spot, say so above.',
    },
    reported,
  );
  assertAltitude(altitude);
  const shifted = altitude + standardAltitude(reported);
  return STANDARD_ATMOSPHERE * (1 - (FALL * shifted) / SEA_LEVEL_KELVIN) ** EXPONENT;
}
