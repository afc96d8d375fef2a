import psychrolib from 'psychrolib';
import {
  airDensity,
  densityAltitude,
  standardAltitude,
  standardPressure,
  stationPressure,
  type Air,
} from '../../calculators/maths/carburettor/air.ts';
import { convert } from '../../calculators/maths/units/units.ts';
import { ODE_SOLVER, solvedAt } from './ode.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'air-and-jet';

const USSA =
  'U.S. Standard Atmosphere, 1976 (NOAA, NASA, USAF), Table I, pages 52 to 55; in these heights the same as ISO 2533:1975';

/** Heights on the map as geopotential ones, with the radius of the earth which that standard takes. */
const geopotential = (z: number): number => (6_356_766 * z) / (6_356_766 + z);

/** Over how many metres the air loses 1 kg/m³, at the most in the heights of the table. */
const METRES_FOR_DENSITY = 13_000;

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
  what: `Height in the standard atmosphere at which the air has ${expected} kg/m³`,
  source: USSA,
  kind: 'standard',
  unit: 'm',
  expected: geopotential(z),
  ours: () => densityAltitude(expected),
  tolerance: half * METRES_FOR_DENSITY,
  why: 'the density is printed to so many digits',
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

/** ISO 2533:1975 defines its atmosphere by these: J/(kg·K), m/s², K, K for each metre, and kPa. */
const iso = { gas: 287.05287, gravity: 9.80665, seaLevel: 288.15, fall: 0.0065, pressure: 101.325 };
const isoTemperature = (height: number): number => iso.seaLevel - iso.fall * height;
const HYDROSTATIC = `Equation of a column of air at rest, dp/dh = −g·p/(R·T), with the constants by which ISO 2533:1975 defines its atmosphere, integrated numerically by ${ODE_SOLVER}`;

const isoPressure = (height: number): number =>
  solvedAt(
    (h, [p]) => [(-iso.gravity * p!) / (iso.gas * isoTemperature(h))],
    0,
    [iso.pressure],
    height,
  )[0]!;

const isoRows = [500, 1000, 2000, 3000].flatMap((height): OutsideCheck[] => {
  const row = { topic, source: HYDROSTATIC, kind: 'library', tolerance: 1e-6 } as const;
  return [
    {
      ...row,
      what: `Pressure of the standard atmosphere at ${height} m geopotential height`,
      unit: 'kPa',
      expected: () => isoPressure(height),
      ours: () => standardPressure(height),
    },
    {
      ...row,
      what: `Geopotential height at which air is as dense as the standard atmosphere at ${height} m`,
      unit: 'm',
      expected: height,
      ours: () =>
        densityAltitude((1000 * isoPressure(height)) / (iso.gas * isoTemperature(height))),
      tolerance: 0.02,
      why: 'a difference of 1e-6 kg/m³',
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

const PSYCHROLIB = 'psychrolib 1.1.1 (formulas of the ASHRAE Handbook Fundamentals 2017)';

const byPsychrolib = ({ temperature, humidity, pressure }: Air): number => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  const pascals = pressure * 1000;
  const ratio = psychrolib.GetHumRatioFromRelHum(temperature, humidity / 100, pascals);
  return psychrolib.GetMoistAirDensity(temperature, ratio, pascals);
};

const againstPsychrolib = days.map((air): OutsideCheck => ({
  topic,
  what: `Density of air at ${words(air)}`,
  source: PSYCHROLIB,
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
const relativeChange = (densityOf: (air: Air) => number, key: keyof Air, step: number): number =>
  (densityOf({ ...room, [key]: room[key] + step }) -
    densityOf({ ...room, [key]: room[key] - step })) /
  (2 * step * densityOf(room));

const sensitivities = (
  [
    ['for each °C', 'temperature', 1, 2e-5, '1/°C'],
    ['for each kPa', 'pressure', 1, 2e-5, '1/kPa'],
    ['for 100 % of humidity', 'humidity', 0.01, 1e-4, '1'],
  ] as const
).map(([what, key, scale, tolerance, unit]): OutsideCheck => ({
  topic,
  what: `Change of the density of air ${what}, as a share of it, about 20 °C, 101.325 kPa and 50 %`,
  source: `${PSYCHROLIB}, differences over 0.1 either way`,
  kind: 'library',
  unit,
  expected: () => relativeChange(byPsychrolib, key, 0.1) / scale,
  ours: () => relativeChange(airDensity, key, 0.1) / scale,
  tolerance,
  why: 'it leaves out that air is not quite an ideal gas',
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
      'S. V. Gupta, Mass Metrology, Springer, 2012, page 205, table of the density of air by CIPM-2007, as quoted in the tests of an open package for calibrating masses',
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
      'Smithsonian Meteorological Tables, 6th edition, 1951, page 269, equations 1 and 3, as the documentation of MetPy prints them: A = (p − 0.3)·[1 + (1013.25ⁿ·0.0065/288)·H/(p − 0.3)ⁿ]^(1/n) in mbar and m, n = 0.190284, solved for p',
    kind: 'published',
    unit: 'kPa',
    expected: () => {
      const n = 0.190284;
      return ((10 * reported) ** n - (1013.25 ** n * 0.0065 * metres) / 288) ** (1 / n) / 10 + 0.03;
    },
    ours: () => stationPressure(reported, metres),
    tolerance: 0.035,
    why: 'it allows 0.3 mbar for the height of the instrument, and its constants are rounded',
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
    source: HYDROSTATIC.replace('dp/dh = −g·p/(R·T)', 'dh/dp = −R·T/(g·p)'),
    kind: 'library',
    unit: 'm',
    expected: () =>
      solvedAt(
        (fallen, [h]) => [(iso.gas * isoTemperature(h!)) / (iso.gravity * (iso.pressure - fallen))],
        0,
        [0],
        iso.pressure - 89.8746,
      )[0]!,
    ours: () => standardAltitude(89.8746),
    tolerance: 1e-4,
  },
  ...againstPsychrolib,
  ...againstOiml,
  ...sensitivities,
  ...altimeter,
];
