import type { ComputedOf, ValuesOf } from '../../frame/types.ts';
import {
  airDensity,
  densityAltitude,
  standardPressure,
  stationPressure,
} from '../../maths/carburettor/air.ts';
import { MathsError } from '../../maths/numeric/errors.ts';
import {
  jetAreaRatio,
  jetOfArea,
  mixtureRatio,
  sizesAbout,
  type Sizes,
} from '../../maths/carburettor/jets.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
export type Computed = ComputedOf<typeof results>;

type Day = 'now' | 'right';

const keyOf = (day: Day, key: string): string => (day === 'now' ? key : `right-${key}`);

/** Turns the maths package's names into the keys of the day they concern. */
function onDay<T>(day: Day, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof MathsError)) throw error;
    throw new MathsError(
      error.code,
      error.quantities.map((quantity) => keyOf(day, quantity)),
      error.message,
    );
  }
}

/** Pressure on the spot, kPa, on either day. */
function pressureOn(v: Values, day: Day): number {
  const typed = day === 'now' ? v.pressure : v['right-pressure'];
  const altitude = day === 'now' ? v.altitude : v['right-altitude'];
  const kind = day === 'now' ? v['pressure-is'] : v['right-pressure-is'];
  return onDay(day, () => {
    if (typed === undefined) return standardPressure(altitude);
    return kind === 'sea' ? stationPressure(typed, altitude) : typed;
  });
}

/** Density of the air, kg/m³, on either day. */
function densityOn(v: Values, day: Day): number {
  const pressure = pressureOn(v, day);
  return onDay(day, () =>
    airDensity({
      temperature: day === 'now' ? v.temperature : v['right-temperature'],
      humidity: day === 'now' ? v.humidity : v['right-humidity'],
      pressure,
    }),
  );
}

/** How many decimals all sizes bear, mm: those of the finest, two at least and three at most. */
export const sizeDecimals = (sizes: readonly number[]): number =>
  Math.min(3, Math.max(2, ...sizes.map((size) => String(size).split('.')[1]?.length ?? 0)));

/** The jets at hand, finest first. */
export const inOrder = (sizes: readonly number[]): readonly number[] =>
  [...sizes].sort((a, b) => a - b);

/** The jets at hand to either side of the wanted one. */
export const nextTo = (v: Values, jet: number): Sizes => sizesAbout(jet, v.sizes);

export function compute(v: Values): Computed {
  const density = densityOn(v, 'now');
  const rightDensity = densityOn(v, 'right');
  const relative = density / rightDensity;
  const ratio = jetAreaRatio(relative);
  const jet = jetOfArea(v.jet, ratio);
  return {
    'relative-density': relative,
    'jet-area-ratio': ratio,
    jet,
    mixture: 100 * (mixtureRatio(relative) - 1),
    'size-mixture': inOrder(v.sizes).map(
      (size) => 100 * (mixtureRatio(relative, (size / v.jet) ** 2) - 1),
    ),
    'number-for': v.number * ratio,
    density,
    'right-density': rightDensity,
    'pressure-here': pressureOn(v, 'now'),
    'density-altitude': densityAltitude(density),
  };
}

/** The jet that the air would want at another temperature, mm. */
export function jetAt(v: Values, temperature: number, day: Day): number {
  const pressure = pressureOn(v, day);
  const humidity = day === 'now' ? v.humidity : v['right-humidity'];
  const relative = airDensity({ temperature, humidity, pressure }) / densityOn(v, 'right');
  return jetOfArea(v.jet, jetAreaRatio(relative));
}
