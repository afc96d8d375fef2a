/**
 * Density of petrol, of petrol with ethanol and with oil, at its temperature.
 *
 * The parts are mixed by volume at 15 °C, at which fuel is sold and specified, and each then expands
 * as it does by itself. That ethanol and petrol take up a little more room mixed than apart (less
 * than 0.3 per cent) is left out.
 */
import { assertWithin } from '../numeric/within.ts';

export interface FuelMix {
  /** Petrol without ethanol, kg/m³ at 15 °C, 653 to 770. */
  readonly petrolDensity: number;
  /** Ethanol in what is sold as petrol, per cent by volume, 0 to 100. */
  readonly ethanolPercent: number;
  /** Parts of petrol (as sold) to one part of oil, above 0; Infinity for none. */
  readonly oilRatio: number;
  /** Oil, kg/m³ at 15 °C, above 0. */
  readonly oilDensity: number;
}

/** Middle of what EN 228 allows petrol (720 to 775 kg/m³ at 15 °C). */
export const USUAL_PETROL = 745;
/** Two-stroke oil on mineral base; common practice, a data sheet gives the oil's own. */
export const USUAL_OIL = 870;

/**
 * Pure ethanol, kg/m³ at 20 °C, and its loss for each degree.
 *
 * Source: formula of the international alcohol tables (OIML R 22), as in Council Directive 76/766/EEC
 * of 27 July 1976, annex, section 4: 789.24 kg/m³ at 20 °C for pure ethanol, and its slope about
 * there.
 */
const ETHANOL_AT_20 = 789.24;
const ETHANOL_SLOPE = 0.852;

/**
 * Volume at 15 °C over volume at `temperature`, for a liquid that expands by `alpha` of its volume
 * per degree at 15 °C.
 *
 * Source: ASTM D1250-80 (API MPMS chapter 11.1, ISO 91-1), the form of tables 54B and 54D.
 */
function shrinkage(alpha: number, temperature: number): number {
  const change = alpha * (temperature - 15);
  return Math.exp(-change * (1 + 0.8 * change));
}

/** Densities of petrol for which the standard’s rule below holds, kg/m³ at 15 °C. */
export const PETROL_DENSITIES = { min: 653, max: 770 } as const;
/** Temperatures of the fuel for which it is reckoned, °C. */
export const FUEL_TEMPERATURES = { min: -20, max: 60 } as const;

/** ASTM D1250-80, table 54B, for `PETROL_DENSITIES`. */
const petrolExpansion = (density: number): number =>
  346.4228 / (density * density) + 0.4388 / density;

/** ASTM D1250-80, table 54D, lubricating oils. */
const oilExpansion = (density: number): number => 0.6278 / density;

/**
 * Density of petrol without ethanol at a temperature.
 *
 * @param density kg/m³ at 15 °C, 653 to 770.
 * @param temperature °C, −20 to 60.
 * @returns kg/m³.
 * @throws MathsError `out-of-range`.
 */
export function petrolDensity(density: number, temperature: number): number {
  assertWithin(
    {
      quantity: 'petrolDensity',
      words: 'The density of petrol at 15 °C',
      unit: 'kg/m³',
      ...PETROL_DENSITIES,
      why: 'The standard’s rule for how petrol expands holds in this range. Pump petrol is about 720 to 775 with its ethanol, a little less without.',
    },
    density,
  );
  assertTemperature(temperature);
  return density * shrinkage(petrolExpansion(density), temperature);
}

/** Density of pure ethanol, kg/m³, at −20 to 60 °C. Throws MathsError `out-of-range`. */
export function ethanolDensity(temperature: number): number {
  assertTemperature(temperature);
  return ETHANOL_AT_20 - ETHANOL_SLOPE * (temperature - 20);
}

/**
 * Density of a mix at a temperature.
 *
 * @param temperature °C, −20 to 60.
 * @returns kg/m³.
 * @throws MathsError `out-of-range`.
 */
export function fuelDensity(mix: FuelMix, temperature: number): number {
  assertWithin(
    {
      quantity: 'ethanolPercent',
      words: 'The share of ethanol',
      unit: '%',
      min: 0,
      max: 100,
      why: 'It is per cent by volume of what is sold: 5 in E5, 10 in E10.',
    },
    mix.ethanolPercent,
  );
  if (mix.oilRatio !== Infinity) {
    assertWithin(
      {
        quantity: 'oilRatio',
        words: 'The oil ratio',
        unit: '',
        min: 0,
        above: true,
        why: 'It is parts of petrol to one of oil, such as 25.',
      },
      mix.oilRatio,
    );
  }
  assertWithin(
    {
      quantity: 'oilDensity',
      words: 'The density of oil at 15 °C',
      unit: 'kg/m³',
      min: 0,
      above: true,
      why: 'The oil’s data sheet gives it, often near 870.',
    },
    mix.oilDensity,
  );
  const ethanol = mix.ethanolPercent / 100;
  const parts: readonly (readonly [volume: number, at15: number, now: number])[] = [
    [1 - ethanol, mix.petrolDensity, petrolDensity(mix.petrolDensity, temperature)],
    [ethanol, ethanolDensity(15), ethanolDensity(temperature)],
    [
      1 / mix.oilRatio,
      mix.oilDensity,
      mix.oilDensity * shrinkage(oilExpansion(mix.oilDensity), temperature),
    ],
  ];
  const mass = parts.reduce((sum, [volume, at15]) => sum + volume * at15, 0);
  const volume = parts.reduce((sum, [part, at15, now]) => sum + (part * at15) / now, 0);
  return mass / volume;
}

function assertTemperature(temperature: number): void {
  assertWithin(
    {
      quantity: 'temperature',
      words: 'The temperature of the fuel',
      unit: '°C',
      ...FUEL_TEMPERATURES,
      why: 'Petrol in a warmer chamber boils, and colder than that nobody starts an engine for pleasure.',
    },
    temperature,
  );
}
