import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const flank = ['from', 'gap', 'dwell', 'lift', 'rise', 'top', 'profile'] as const;
const wear = ['lever', 'wear-per', 'wear-rate'] as const;
const trials = ['trials', 'trial-gap', 'trial-angle'] as const;
/** A dwell wanted is told of one lobe of so many. */
const gap = [...flank, 'lobes'] as const;

export const restsOn = {
  'dwell-angle': gap,
  'dwell-percent': gap,
  'gap-set': gap,
  opens: gap,
  'open-angle': gap,
  opening: [...gap, 'at'],
  'crank-degrees-per-gap': [...gap, 'speed-ratio'],
  'crank-degrees-per-thou': [...gap, 'speed-ratio'],
  'heel-lift': ['lever', 'lift'],
  'worn-gap': [...gap, ...wear, 'running'],
  'worn-retard': [...gap, 'speed-ratio', ...wear, 'running'],
  'run-to-limit': [...gap, 'speed-ratio', ...wear, 'retard-limit'],
  'trial-slope': trials,
  'trial-range': trials,
  'trial-lift': trials,
  'trial-angle-at-gap': [...gap, ...trials],
} as const satisfies RestsOn<typeof inputs, typeof results>;
