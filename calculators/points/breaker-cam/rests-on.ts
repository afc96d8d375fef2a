import type { RestsOn } from '../../frame/types.ts';
import type { Values } from './compute.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const flank = ['from', 'gap', 'dwell', 'lift', 'rise', 'top', 'profile'] as const;
const wear = ['lever', 'wear-per', 'wear-rate'] as const;
const trials = ['trials', 'trial-gap', 'trial-angle'] as const;
const ofAll = [...flank, 'lobes'] as const;
/** A dwell wanted is told of one lobe of so many; a gap is that of any lobe. */
const gap = (v: Values) => (v.from === 'dwell' ? ofAll : flank);

export const restsOn: RestsOn<typeof inputs, typeof results> = {
  'dwell-angle': ofAll,
  'dwell-percent': ofAll,
  'gap-set': gap,
  opens: gap,
  'open-angle': gap,
  opening: (v) => [...gap(v), 'at'],
  'crank-degrees-per-gap': (v) => [...gap(v), 'speed-ratio'],
  'crank-degrees-per-thou': (v) => [...gap(v), 'speed-ratio'],
  'heel-lift': ['lever', 'lift'],
  'worn-gap': (v) => [...gap(v), ...wear, 'running'],
  'worn-retard': (v) => [...gap(v), 'speed-ratio', ...wear, 'running'],
  'run-to-limit': (v) => [...gap(v), 'speed-ratio', ...wear, 'retard-limit'],
  'trial-slope': trials,
  'trial-range': trials,
  'trial-lift': trials,
  'trial-angle-at-gap': (v) => [...gap(v), ...trials],
};
