import type { RestsOn } from '../../frame/types.ts';
import type { Values } from './compute.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const flow = ['by', 'volume', 'head', 'coefficient'] as const;
const number = ['by', 'number-means', 'known-number', 'known-bore'] as const;

/** What makes an area out of a reading. */
const way = (v: Values) => (v.by === 'pin' ? (['by'] as const) : v.by === 'flow' ? flow : number);
const reading = (v: Values) =>
  v.by === 'pin' ? ('bore' as const) : v.by === 'flow' ? ('time' as const) : ('number' as const);
const own = (v: Values) => [...way(v), 'jets', `${reading(v)}-N`] as const;
const all = (v: Values) => [...way(v), 'jets', reading(v)] as const;
const chosen = (v: Values) =>
  v.size === undefined
    ? ([...all(v), 'wanted', 'size'] as const)
    : ([...all(v), 'wanted', 'size', 'tolerance'] as const);

export const restsOn: RestsOn<typeof inputs, typeof results> = {
  spread: chosen,
  'set-size': chosen,
  'next-spread': chosen,
  chosen,
  'chosen-size': chosen,
  rejected: (v) =>
    v.size === undefined ? [...chosen(v), 'tolerance'] : [...all(v), 'size', 'tolerance'],
  'jet-size': own,
  'jet-area': own,
  against: (v) => (v.size === undefined ? chosen(v) : [...own(v), 'size']),
};
