import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const cold = ['bore', 'piston'] as const;
const ofBore = ['bore', 'bore-expansion', 'bore-temperature', 'measured-at'] as const;
const ofRing = ['ring-gap', 'ring-expansion', 'ring-temperature'] as const;
const readings = ['levels', 'along', 'across'] as const;
const next = [...readings, 'standard', 'oversize-step', 'clean-up'] as const;

export const restsOn = {
  cold,
  'per-mille': cold,
  hot: [...ofBore, 'piston', 'piston-expansion', 'piston-temperature'],
  'fills-at': [...ofBore, 'piston', 'piston-expansion'],
  'ring-gap-hot': [...ofBore, ...ofRing],
  'ring-percent': ['bore', 'ring-gap'],
  oval: readings,
  slack: ['levels', 'across', 'piston'],
  taper: readings,
  ovality: readings,
  'widest-clearance': [...readings, 'piston'],
  oversize: next,
  rebore: next,
  'rebore-piston': [...next, 'least', 'most'],
} as const satisfies RestsOn<typeof inputs, typeof results>;
