import psychrolib from 'psychrolib';
import {
  airDensity,
  standardAltitude,
  standardDensity,
  standardPressure,
  stationPressure,
  type Air,
} from '../../calculators/maths/air.ts';
import { convert } from '../../calculators/maths/units.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'air-and-jet';

const USSA =
  'U.S. Standard Atmosphere, 1976 (NOAA, NASA, USAF), Table I, pages 52 to 55; in these heights the same as ISO 2533:1975';

/** Heights on the map as geopotential ones, with the radius of the earth which that standard takes. */
const geopotential = (z: number): number => (6_356_766 * z) / (6_356_766 + z);

const printedDensities = (
  [
    [0, 1.225, 5e-5],
    [1000, 1.1117, 5e-5],
    [1600, 1.0476, 5e-5],
    [2000, 1.0066, 5e-5],
    [3000, 0.90925, 5e-6],
    [4500, 0.77704, 5e-6],
    [5000, 0.73643, 5e-6],
  ] as const
).map(([z, expected, half]): OutsideCheck => ({
  topic,
  what: `Density of the standard atmosphere ${z} m above the sea`,
  source: USSA,
  kind: 'standard',
  unit: 'kg/m³',
  expected,
  ours: () => standardDensity(geopotential(z)),
  tolerance: half * 1.001,
  why: 'printed to that digit',
}));

/** The table cuts its pressures off after the fifth figure. */
const printedPressures = (
  [
    [1000, 89.876],
    [2000, 79.501],
    [3000, 70.121],
    [4500, 57.752],
    [5000, 54.048],
  ] as const
).map(([z, expected]): OutsideCheck => ({
  topic,
  what: `Pressure of the standard atmosphere ${z} m above the sea`,
  source: USSA,
  kind: 'standard',
  unit: 'kPa',
  expected: expected + 0.0005,
  ours: () => standardPressure(geopotential(z)),
  tolerance: 0.0005,
  why: 'the table cuts off after that digit, so the true figure is on average half a digit more',
}));

const isoRows = (
  [
    [500, 95.4608, 1.16727],
    [1000, 89.8746, 1.11164],
    [2000, 79.4952, 1.00649],
    [3000, 70.1085, 0.909122],
  ] as const
).flatMap(([height, pressure, density]): OutsideCheck[] => {
  const row = {
    topic,
    source: 'ISO 2533:1975, Standard atmosphere, main table; recalled from memory',
    kind: 'from memory',
  } as const;
  return [
    {
      ...row,
      what: `Pressure of the standard atmosphere at ${height} m geopotential height`,
      unit: 'kPa',
      expected: pressure,
      ours: () => standardPressure(height),
      tolerance: 1e-4,
      why: 'one unit of the last digit',
    },
    {
      ...row,
      what: `Density of the standard atmosphere at ${height} m geopotential height`,
      unit: 'kg/m³',
      expected: density,
      ours: () => standardDensity(height),
      tolerance: 1e-5,
      why: 'one unit of the last digit',
    },
  ];
});

const days: readonly Air[] = [-10, 0, 10, 20, 30, 40].flatMap((temperature) =>
  [0, 50, 100].flatMap((humidity) =>
    [70, 90, 101.325].map((pressure) => ({ temperature, humidity, pressure })),
  ),
);

const words = ({ temperature, humidity, pressure }: Air): string =>
  `${temperature} °C, ${pressure} kPa, humidity ${humidity} %`;

const byPsychrolib = ({ temperature, humidity, pressure }: Air): number => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  const pascals = pressure * 1000;
  const ratio = psychrolib.GetHumRatioFromRelHum(temperature, humidity / 100, pascals);
  return psychrolib.GetMoistAirDensity(temperature, ratio, pascals);
};

const againstPsychrolib = days.map((air): OutsideCheck => ({
  topic,
  what: `Density of air at ${words(air)}`,
  source: 'psychrolib 1.1.1 (formulas of the ASHRAE Handbook Fundamentals 2017)',
  kind: 'library',
  unit: 'kg/m³',
  expected: () => byPsychrolib(air),
  ours: () => airDensity(air),
  tolerance: 1.2e-3,
  why: 'it leaves out that air is not quite an ideal gas, and below 0 °C counts humidity over ice: a thousandth',
}));

/** OIML R 111-1, equation E.3-1, in hPa and per cent. */
const byOiml = ({ temperature, humidity, pressure }: Air): number =>
  (0.34848 * pressure * 10 - 0.009 * humidity * Math.exp(0.061 * temperature)) /
  (273.15 + temperature);

const againstOiml = [10, 15, 20, 25, 30].flatMap((temperature) =>
  [20, 50, 80].map((humidity): OutsideCheck => {
    const air: Air = { temperature, humidity, pressure: 100 };
    return {
      topic,
      what: `Density of air at ${words(air)}`,
      source:
        'OIML R 111-1 (2004), annex E, equation E.3-1, the plain form of the CIPM formula for 900 to 1100 hPa, 10 to 30 °C and less than 80 %',
      kind: 'standard',
      unit: 'kg/m³',
      expected: () => byOiml(air),
      ours: () => airDensity(air),
      tolerance: 3.7e-4,
      why: 'that document gives it 2 parts in 10 000; it is older than CIPM-2007, which raised the density by nearly 1 more',
    };
  }),
);

const room: Air = { temperature: 20, pressure: 101.325, humidity: 50 };
const relativeChange = (key: keyof Air, step: number): number =>
  (airDensity({ ...room, [key]: room[key] + step }) -
    airDensity({ ...room, [key]: room[key] - step })) /
  (2 * step * airDensity(room));

const sensitivities = (
  [
    ['for each °C', 'temperature', 1, -4e-3, 5e-4, '1/°C'],
    ['for each kPa', 'pressure', 1, 1e-2, 5e-4, '1/kPa'],
    ['for 100 % of humidity', 'humidity', 0.01, -9e-3, 5e-4, '1'],
  ] as const
).map(([what, key, scale, expected, tolerance, unit]): OutsideCheck => ({
  topic,
  what: `Change of the density of air ${what}, as a share of it, about 20 °C, 101.325 kPa and 50 %`,
  source:
    'A. Picard, R. S. Davis, M. Gläser and K. Fujii, Revised formula for the density of moist air (CIPM-2007), Metrologia 45 (2008), pages 149-155, table of sensitivities; recalled from memory',
  kind: 'from memory',
  unit,
  expected,
  ours: () => relativeChange(key, 0.1) / scale,
  tolerance,
  why: 'printed to one figure',
}));

const printedByCipm = (
  [
    [10, 730, 40, 1.19569],
    [40, 760, 40, 1.11497],
  ] as const
).map(([temperature, mercury, humidity, density]): OutsideCheck => {
  const air: Air = { temperature, humidity, pressure: convert(mercury / 10 / 2.54, 'inHg', 'kPa') };
  return {
    topic,
    what: `Density of air at ${temperature} °C, ${mercury} mmHg and ${humidity} %`,
    source:
      'Mass Metrology, appendix, page 205, table of the density of air by CIPM-2007, as quoted in the tests of an open package for calibrating masses',
    kind: 'published',
    unit: 'kg/m³',
    expected: density,
    ours: () => airDensity(air),
    tolerance: 1e-4,
    why: 'quoted to the ten-thousandth',
  };
});

const altimeter = (
  [
    [30.11, 5577],
    [30.13, 5431],
    [29.2, 3000],
    [30.6, 1000],
  ] as const
).map(([inches, feet]): OutsideCheck => {
  const reported = convert(inches, 'inHg', 'kPa');
  const metres = convert(feet, 'ft', 'mm') / 1000;
  return {
    topic,
    what: `Pressure on the spot, ${feet} ft above the sea, with ${inches} inHg reported`,
    source:
      'National Weather Service (El Paso), station pressure from altimeter setting: p = A·((288 − 0.0065·h)/288)^5.2561; quoted second-hand',
    kind: 'published',
    unit: 'kPa',
    expected: () => reported * ((288 - 0.0065 * metres) / 288) ** 5.2561,
    ours: () => stationPressure(reported, metres),
    tolerance: 0.1,
    why: 'it multiplies where an altimeter shifts the height, which differs by up to 0.1 kPa',
  };
});

export const checks: readonly OutsideCheck[] = [
  ...printedDensities,
  ...printedPressures,
  ...isoRows,
  ...printedByCipm,
  ...[0, 1500, 3000].map((height): OutsideCheck => ({
    topic,
    what: `Pressure of the standard atmosphere at ${height} m`,
    source: 'psychrolib 1.1.1 (ASHRAE Handbook Fundamentals 2017, chapter 1, equation 3)',
    kind: 'library',
    unit: 'kPa',
    expected: () => {
      psychrolib.SetUnitSystem(psychrolib.SI);
      return psychrolib.GetStandardAtmPressure(height) / 1000;
    },
    ours: () => standardPressure(height),
    tolerance: 2e-3,
    why: 'its constants are rounded',
  })),
  {
    topic,
    what: 'Height at which the standard atmosphere has 89.8746 kPa',
    source: 'ISO 2533:1975, main table; recalled from memory',
    kind: 'from memory',
    unit: 'm',
    expected: 1000,
    ours: () => standardAltitude(89.8746),
    tolerance: 0.01,
  },
  ...againstPsychrolib,
  ...againstOiml,
  ...sensitivities,
  ...altimeter,
];
