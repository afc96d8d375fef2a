import type { RestsOn } from '../../frame/types.ts';
import type { camInputs } from '../cam-inputs.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const circuit = ['volts', 'resistance', 'ballast'] as const;
const coil = ['resistance', 'ballast', 'inductance'] as const;
const shut = ['dwell-angle', 'speed-ratio'] as const;
const charge = [...circuit, 'inductance', ...shut] as const;

export const restsOn = {
  current: [...charge, 'rpm'],
  energy: [...charge, 'rpm'],
  'current-percent': [...charge, 'rpm'],
  heat: [...charge, 'rpm', 'lobes'],
  'charge-time': [...shut, 'rpm'],
  'speed-at-share': [...coil, ...shut, 'share'],
  'final-current': circuit,
  'stopped-heat': circuit,
  'time-constant': coil,
  'ballast-for': ['volts', 'resistance', 'current-limit'],
  sparks: ['rpm', 'lobes', 'speed-ratio'],
  'time-at': [...shut, 'speeds'],
  'current-at': [...charge, 'speeds'],
  'energy-at': [...charge, 'speeds'],
} as const satisfies RestsOn<typeof inputs & typeof camInputs, typeof results>;
