import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const piston = ['stroke', 'rod', 'offset', 'deck'] as const;
const exhaust = [
  ...piston,
  'exhaust-edge',
  'exhaust-width',
  'exhaust-height',
  'exhaust-corner',
  'exhaust-count',
] as const;
const transfer = [
  ...piston,
  'transfer-edge',
  'transfer-width',
  'transfer-height',
  'transfer-corner',
  'transfer-count',
] as const;
const inlet = [
  ...piston,
  'inlet',
  'inlet-edge',
  'skirt',
  'inlet-width',
  'inlet-height',
  'inlet-corner',
  'inlet-count',
  'disc-opens',
  'disc-closes',
  'disc-area',
  'disc-edge',
] as const;

export const restsOn = {
  'exhaust-time-area': [...exhaust, 'bore', 'rpm'],
  'blowdown-time-area': [...exhaust, 'transfer-edge', 'bore', 'rpm'],
  'transfer-time-area': [...transfer, 'bore', 'rpm'],
  'inlet-time-area': [...inlet, 'bore', 'rpm'],
  'exhaust-mean': exhaust,
  'transfer-mean': transfer,
  'inlet-mean': inlet,
  'exhaust-open': [...piston, 'exhaust-edge', 'rpm'],
  'blowdown-open': [...piston, 'exhaust-edge', 'transfer-edge', 'rpm'],
  swept: ['stroke', 'rod', 'offset', 'bore'],
} as const satisfies RestsOn<typeof inputs, typeof results>;
