import type { ComputedOf, ValuesOf } from '../../frame/types.ts';
import { assertItsStandard, boreWear, nextOversize } from '../../maths/cylinder/bore-wear.ts';
import {
  fillsAt,
  hotRingGap,
  pistonClearance,
  type PistonInBore,
} from '../../maths/cylinder/piston-clearance.ts';
import { attempt, ifThere } from '../../frame/attempt.ts';
import { Absent, unfit } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
export type Computed = ComputedOf<typeof results>;

/** Piston and bore, with the piston at another temperature where one is given. */
export const partsOf = (v: Values, pistonAt = v['piston-temperature']): PistonInBore => ({
  bore: { size: v.bore, expansion: v['bore-expansion'], temperature: v['bore-temperature'] },
  piston: { size: v.piston, expansion: v['piston-expansion'], temperature: pistonAt },
  measuredAt: v['measured-at'],
});

export function compute(v: Values): Computed {
  const parts = partsOf(v);
  const clearance = pistonClearance(parts);
  const wear = boreWear({ along: v.along, across: v.across });
  const its = attempt(() => assertItsStandard(wear.widest, v.standard));
  const next =
    its instanceof Absent
      ? unfit(its.why, ['along', 'across', 'standard'])
      : attempt(() => nextOversize(wear.widest, v.standard, v['oversize-step'], v['clean-up']));
  const wanted = (v.least + v.most) / 2 / 1000;
  const ring = {
    size: v['ring-gap'],
    expansion: v['ring-expansion'],
    temperature: v['ring-temperature'],
  };
  return {
    cold: clearance.cold,
    'per-mille': clearance.perMille,
    hot: clearance.hot,
    'fills-at': attempt(() => fillsAt(parts)),
    'ring-gap-hot': hotRingGap(parts.bore, ring, v['measured-at']),
    'ring-percent': (100 * v['ring-gap']) / v.bore,
    oval: wear.ovals,
    slack: v.across.map((reading) => reading - v.piston),
    taper: wear.taper,
    ovality: wear.ovality,
    'widest-clearance': wear.widest - v.piston,
    oversize: ifThere(next, ({ over }) => over),
    rebore: ifThere(next, ({ bore }) => bore),
    'rebore-piston': ifThere(next, ({ bore }) => bore * (1 - wanted)),
  };
}
