import type { ComputedOf, ValuesOf } from '../../frame/types.ts';
import {
  balanceSlides,
  freePlayAfter,
  leastWorkOpening,
  openingsFromVacuum,
} from '../../maths/carburettor/slide-balance.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
export type Computed = ComputedOf<typeof results>;

/** Openings, mm. From gauges they are known against each other only, and the narrowest counts as 0. */
function openingsOf(v: Values): readonly number[] {
  if (v.method === 'drill') return v.opening;
  const relative = openingsFromVacuum(v.vacuum, v['per-turn'], v.thread);
  const narrowest = Math.min(...relative);
  return relative.map((opening) => opening - narrowest);
}

/** The reading that all are brought to: an opening in mm, or a vacuum in kPa. */
export function targetOf(v: Values): number {
  // The more vacuum, the less open: of two that ask for the same work the less open is wanted.
  if (v.method === 'vacuum') return -leastWorkOpening(v.vacuum.map((reading) => -reading));
  return v.to === 'wanted' ? v.wanted : leastWorkOpening(v.opening);
}

export function compute(v: Values): Computed {
  const openings = openingsOf(v);
  const wanted =
    v.method === 'vacuum'
      ? openings[v.vacuum.indexOf(targetOf(v))]
      : v.to === 'wanted'
        ? v.wanted
        : undefined;
  const { turns, work, spread } = balanceSlides(openings, v.thread, wanted);
  const lifts = turns.map((turn) => turn * v.thread);
  const takenUp = v.adjuster === 'cable' ? lifts : lifts.map((lift) => -lift);
  const play = freePlayAfter(v['free-play'], takenUp, v['least-play']);
  return {
    spread,
    work,
    'give-back': play.giveBack,
    tightest: Math.min(...play.after),
    turn: turns,
    'free-after': play.after,
  };
}
