import type { Results } from '../../frame/types.ts';

const table = 'levels';

export const results = {
  cold: {
    label: 'Clearance cold',
    unit: 'mm',
    help: 'Bore less piston, on the diameter.',
    lead: true,
    decimals: 3,
  },
  'per-mille': {
    label: 'Of the bore',
    unit: '‰',
    help: 'Thousandths of the bore.',
    lead: true,
    decimals: 2,
  },
  hot: {
    label: 'Clearance hot',
    unit: 'mm',
    help: 'At the running temperatures. Negative where they would jam.',
    lead: true,
    decimals: 3,
  },
  'fills-at': {
    label: 'The piston fills the bore at',
    unit: 'degC',
    help: 'Temperature of the skirt at which nothing is left, the bore at its own.',
    decimals: 0,
  },
  'ring-gap-hot': {
    label: 'Ring gap hot',
    unit: 'mm',
    help: 'At the running temperatures. Negative where its ends would have met.',
    decimals: 3,
  },
  'ring-percent': {
    label: 'Ring gap of the bore',
    unit: '%',
    help: 'Cold. 0.3 to 0.5% is common practice.',
    decimals: 2,
  },
  oval: {
    label: 'Across less along',
    unit: 'mm',
    help: 'Positive where it is wider across the crank.',
    table,
    decimals: 3,
    signed: true,
  },
  slack: {
    label: 'Clearance across',
    unit: 'mm',
    help: 'Reading across the crank less the piston.',
    table,
    decimals: 3,
  },
  taper: {
    label: 'Taper',
    unit: 'mm',
    help: 'The largest difference between heights in one direction, on the diameter.',
    decimals: 3,
  },
  ovality: {
    label: 'Ovality',
    unit: 'mm',
    help: 'The largest difference between directions at one height.',
    decimals: 3,
  },
  'widest-clearance': {
    label: 'Clearance at the widest reading',
    unit: 'mm',
    help: 'Where the bore is worn most.',
    decimals: 3,
  },
  oversize: {
    label: 'Next oversize',
    unit: 'mm',
    help: 'Over the standard bore; 0 where the standard bore still holds.',
    decimals: 2,
    jumps: true,
  },
  rebore: {
    label: 'Hone the bore to',
    unit: 'mm',
    help: 'At bench temperature. Measure the new piston first, and hone to that and its clearance.',
    decimals: 3,
    jumps: true,
  },
  'rebore-piston': {
    label: 'For a piston of',
    unit: 'mm',
    help: 'That bore less the middle of the clearance wanted.',
    decimals: 3,
    jumps: true,
  },
} as const satisfies Results;
