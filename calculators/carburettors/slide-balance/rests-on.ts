import type { RestsOn } from '../../frame/types.ts';
import type { Values } from './compute.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

/** From gauges an opening is told by the thread. */
const openings = (v: Values) =>
  v.method === 'vacuum'
    ? (['slides', 'method', 'vacuum', 'per-turn', 'thread'] as const)
    : (['slides', 'method', 'opening'] as const);
const turns = (v: Values) => [...openings(v), 'to', 'wanted', 'thread'] as const;
const play = (v: Values) => [...turns(v), 'adjuster'] as const;

export const restsOn: RestsOn<typeof inputs, typeof results> = {
  spread: openings,
  work: turns,
  turn: turns,
  tightest: (v) => [...play(v), 'free-play'],
  'free-after': (v) => [...play(v), 'free-play-N'],
  'give-back': (v) => [...play(v), 'free-play', 'least-play'],
};
