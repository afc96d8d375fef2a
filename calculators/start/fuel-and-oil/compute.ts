import { attempt } from '../../frame/attempt.ts';
import type { ComputedOf, ValuesOf } from '../../frame/types.ts';
import {
  mixedRatio,
  oilFor,
  oilToReach,
  percentOfRatio,
  ratioOfPercent,
  type InTank,
} from '../../maths/fuel/fuel-and-oil.ts';
import { convert } from '../../maths/units/units.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
export type Computed = ComputedOf<typeof results>;

const ML_PER_LITRE = 1000;

export const ratioOf = (v: Values): number =>
  v.by === 'percent' ? ratioOfPercent(v.percent) : v.ratio;

const tankOf = (v: Values): InTank => ({ volume: v.already, ratio: v['already-ratio'] });

export function compute(v: Values): Computed {
  const ratio = ratioOf(v);
  const oil = oilFor(v.fuel, ratio);
  const mixed = mixedRatio(v.fuel, oil, tankOf(v));
  return {
    oil: ML_PER_LITRE * oil,
    'mixed-ratio': mixed,
    'oil-whole': attempt(() => ML_PER_LITRE * oilToReach(v.fuel, ratio, tankOf(v))),
    total: v.fuel + oil + v.already,
    'oil-percent': percentOfRatio(mixed),
    'oil-us': convert(oil, 'l', 'US fl oz'),
    'oil-imp': convert(oil, 'l', 'imp fl oz'),
    'fuel-us': convert(v.fuel, 'l', 'US gal'),
    'fuel-imp': convert(v.fuel, 'l', 'imp gal'),
  };
}
