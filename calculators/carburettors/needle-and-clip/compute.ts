import { impossible, type ComputedOf, type ResultValue, type ValuesOf } from '../../frame/types.ts';
import { MathsError } from '../../maths/numeric/errors.ts';
import { findRoot } from '../../maths/numeric/find-root.ts';
import {
  annulus,
  holeArea,
  inSeries,
  needleDiameterAt,
  needleRise,
  shareOfDrop,
  type TaperedNeedle,
} from '../../maths/carburettor/needle.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
export type Computed = ComputedOf<typeof results>;

/** Throttle of each row of the table, per cent. */
export const throttles = [0, 12.5, 25, 37.5, 50, 62.5, 75, 87.5, 100] as const;

export const needleOf = (v: Values): TaperedNeedle => ({
  diameter: v['needle-diameter'],
  taper: v.taper,
  straight: v.straight,
});

export const secondOf = (v: Values): TaperedNeedle => ({
  diameter: v['second-diameter'],
  taper: v['second-taper'],
  straight: v['second-straight'],
});

/** How far the needle has risen from its lowest place, mm. */
export const riseAt = (v: Values, throttle: number, clip = v.clip): number =>
  needleRise((v['slide-travel'] * throttle) / 100, clip, v['clip-pitch']);

/** Area of the ring at a throttle in per cent, with the clip in a groove, mm². */
const ringAt = (
  v: Values,
  throttle: number,
  clip = v.clip,
  needle: TaperedNeedle = needleOf(v),
): number => annulus(v['jet-bore'], needle, riseAt(v, throttle, clip));

/** The same, or nothing where the needle would be out of its jet. */
export function ringIfAny(
  v: Values,
  throttle: number,
  clip = v.clip,
  needle: TaperedNeedle = needleOf(v),
): number | undefined {
  try {
    return ringAt(v, throttle, clip, needle);
  } catch (error) {
    if (error instanceof MathsError) return undefined;
    throw error;
  }
}

/** All figures of a column, or why there is none. */
function column(figures: readonly (number | undefined)[], why: string): ResultValue {
  const there = figures.filter((figure) => figure !== undefined);
  return there.length === figures.length ? there : impossible(why);
}

function throttleOfEqual(v: Values, main: number): ResultValue {
  const above = (throttle: number): number => (ringIfAny(v, throttle) ?? Infinity) - main;
  if (above(0) >= 0) return 0;
  if (above(100) < 0) {
    return impossible(
      'Even at full throttle the ring is smaller than the main jet, so that the needle is in charge throughout. Check jet, needle and main jet.',
    );
  }
  return findRoot(above, 0, 100, 1e-9);
}

const outOfJet =
  'In part of the table the needle would be out of its jet, so that part of it is left out. Check the taper.';

export function compute(v: Values): Computed {
  if (v.clip > v.clips) {
    throw new MathsError(
      'no-such-groove',
      ['clip', 'clips'],
      `The clip cannot sit in groove ${String(v.clip)} of a needle with ${String(v.clips)}. Count the grooves from the top; enter a groove from 1 to ${String(v.clips)}.`,
    );
  }
  const ring = ringAt(v, v.throttle);
  const lower = ringAt(v, v.throttle, v.clip + 1);
  const main = holeArea(v['main-jet']);
  const grooves = Array.from({ length: v.clips }, (_, i) => ringIfAny(v, v.throttle, i + 1));
  const second = ringIfAny(v, v.throttle, v.clip, secondOf(v));
  const noSecond =
    'The second needle does not fit this jet, or would be out of it at this throttle.';
  const rings = throttles.map((throttle) => ringIfAny(v, throttle));
  return {
    annulus: ring,
    'annulus-per-clip': lower - ring,
    'clip-percent': 100 * (inSeries(lower, main) / inSeries(ring, main) - 1),
    'needle-at-mouth': needleDiameterAt(needleOf(v), riseAt(v, v.throttle)),
    'needle-share': 100 * shareOfDrop(ring, main),
    'passing-area': inSeries(ring, main),
    'main-area': main,
    'equal-at': throttleOfEqual(v, main),
    'second-annulus': second ?? impossible(noSecond),
    'second-percent': second === undefined ? impossible(noSecond) : 100 * (second / ring - 1),
    'clip-annulus': column(grooves, outOfJet),
    'clip-change': column(
      grooves.map((area) => (area === undefined ? undefined : 100 * (area / ring - 1))),
      outOfJet,
    ),
    'throttle-annulus': column(rings, outOfJet),
    'throttle-share': column(
      rings.map((area) => (area === undefined ? undefined : 100 * shareOfDrop(area, main))),
      outOfJet,
    ),
  };
}
