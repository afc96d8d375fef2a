import type { Results } from '../../frame/types.ts';

export const results = {
  'exhaust-time-area': {
    label: 'Exhaust',
    unit: 's/m',
    help: 'Specific time-area from opening to closing.',
    lead: true,
    decimals: 5,
  },
  'blowdown-time-area': {
    label: 'Blowdown',
    unit: 's/m',
    help: 'Specific time-area of the exhaust until the transfers open.',
    lead: true,
    decimals: 5,
  },
  'transfer-time-area': {
    label: 'Transfers',
    unit: 's/m',
    help: 'Specific time-area of all transfers together.',
    lead: true,
    decimals: 5,
  },
  'inlet-time-area': {
    label: 'Inlet',
    unit: 's/m',
    help: 'Specific time-area of the inlet, from opening to closing.',
    decimals: 5,
  },
  'exhaust-mean': {
    label: 'Exhaust, mean open area',
    unit: 'mm2',
    help: 'Averaged over its duration.',
    decimals: 0,
  },
  'transfer-mean': {
    label: 'Transfers, mean open area',
    unit: 'mm2',
    help: 'All of them, averaged over their duration.',
    decimals: 0,
  },
  'inlet-mean': {
    label: 'Inlet, mean open area',
    unit: 'mm2',
    help: 'Averaged over its duration.',
    decimals: 0,
  },
  'exhaust-open': {
    label: 'Exhaust open for',
    unit: 'ms',
    help: 'At this speed.',
    decimals: 2,
  },
  'blowdown-open': {
    label: 'Blowdown lasts',
    unit: 'ms',
    help: 'At this speed.',
    decimals: 2,
  },
  swept: {
    label: 'Swept volume',
    unit: 'cc',
    help: 'What the time-areas are divided by.',
    decimals: 1,
  },
} as const satisfies Results;
