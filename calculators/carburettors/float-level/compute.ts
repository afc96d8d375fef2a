import { absent, impossibleBy, type ComputedOf, type ValuesOf } from '../../frame/types.ts';
import { MathsError } from '../../maths/numeric/errors.ts';
import {
  displacedMass,
  fuelLevel,
  heightForLevel,
  levelAtJet,
  needlePush,
  risePer100Head,
  submergedDepth,
  tangBend,
  tangRatio,
  type FloatLever,
  type FuelFeed,
  type Gauging,
  type Standing,
} from '../../maths/carburettor/float-level.ts';
import { fuelDensity } from '../../maths/fuel/fuel-density.ts';
import type { inputs } from './inputs.ts';
import { sinking } from './rests-on.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
export type Computed = ComputedOf<typeof results>;

export const leverOf = (v: Values): FloatLever => ({
  pivotToNeedle: v['pivot-to-needle'],
  pivotToFloat: v['pivot-to-float'],
  floatMass: v['float-mass'],
  floatArea: v['float-area'],
  floatDepth: v['float-depth'],
});

function densityOf(v: Values): number {
  if (v['density-from'] === 'typed') return v.density;
  return fuelDensity(
    {
      petrolDensity: v.petrol,
      ethanolPercent: v.ethanol,
      oilRatio: v.oil === 'yes' ? v['oil-ratio'] : Infinity,
      oilDensity: v['oil-density'],
    },
    v.warmth,
  );
}

export const feedOf = (v: Values): FuelFeed => ({
  seat: v.seat,
  head: v.head,
  density: densityOf(v),
});

export const gaugingOf = (v: Values): Gauging => ({
  height: v.height,
  edge: v.edge,
  springDrop: v['spring-drop'],
});

export const standingOf = (v: Values): Standing => ({ tilt: v.tilt });

/** A change of level, or why it has none: the float may not be able to bear the change. */
function change(work: () => number, what: string) {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof MathsError)) throw error;
    return impossibleBy(`With ${what} this float could no longer shut the valve.`, sinking);
  }
}

export function compute(v: Values): Computed {
  const lever = leverOf(v);
  const feed = feedOf(v);
  const gauging = gaugingOf(v);
  const standing = standingOf(v);
  const levelWith = (other: Partial<FuelFeed>, height = v.height): number =>
    fuelLevel(lever, { ...feed, ...other }, { ...gauging, height }, standing);
  const level = levelWith({});
  const rise = risePer100Head(lever, feed, v['spring-drop'], standing);
  const heightFor = heightForLevel(lever, feed, gauging, v.wanted, standing);
  const found = v.found.map((height) => levelWith({}, height));
  const spare = v['float-depth'] - submergedDepth(lever, feed, standing);
  const deeperPer100 = risePer100Head(lever, feed, 0, standing);
  return {
    level,
    tang: tangRatio(lever),
    'level-per-head': rise,
    'height-for': heightFor,
    'tang-for': tangBend(lever, v.height, heightFor),
    submerged: submergedDepth(lever, feed, standing),
    'needle-push': needlePush(feed),
    buoyancy: displacedMass(lever, feed, standing),
    reserve:
      deeperPer100 > 0
        ? v.head + (100 * spare) / deeperPer100
        : absent('A seat of no size lets no head push, so that there is no limit to the head.'),
    'fuel-density': feed.density,
    'level-per-seat': change(
      () => level - levelWith({ seat: feed.seat + 0.5 }),
      'a seat 0.5 mm larger',
    ),
    'level-per-density': levelWith({ density: feed.density + 20 }) - level,
    'level-at-jet': levelAtJet(level, v['jet-from-float'], standing),
    spread: Math.max(...found) - Math.min(...found),
    'found-level': found,
    bend: v.found.map((height) => tangBend(lever, height, v.height)),
  };
}
