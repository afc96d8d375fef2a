import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const density = [
  'density-from',
  'petrol',
  'ethanol',
  'oil',
  'oil-ratio',
  'oil-density',
  'warmth',
  'density',
] as const;
const arm = ['pivot-to-needle', 'pivot-to-float'] as const;
const balance = [...arm, 'float-mass', 'seat', 'head', 'tilt', ...density] as const;
const floating = [...balance, 'float-area'] as const;
/** What decides whether the float can shut the valve at all. */
export const sinking = [...floating, 'float-depth'] as const;
/** All that ties a reading of the gauge to a level. */
const gauge = [...sinking, 'edge', 'spring-drop'] as const;

export const restsOn = {
  level: [...gauge, 'height'],
  tang: arm,
  'level-per-head': [...arm, 'float-mass', 'float-area', 'spring-drop', 'seat', 'tilt', ...density],
  'height-for': [...gauge, 'wanted'],
  'tang-for': [...gauge, 'height', 'wanted'],
  submerged: floating,
  'needle-push': ['seat', 'head', ...density],
  buoyancy: balance,
  reserve: sinking,
  'fuel-density': density,
  'level-per-seat': [...gauge, 'height'],
  'level-per-density': [...gauge, 'height'],
  'level-at-jet': [...gauge, 'height', 'jet-from-float'],
  spread: [...gauge, 'carburettors', 'found'],
  'found-level': [...gauge, 'carburettors', 'found-N'],
  bend: [...arm, 'height', 'carburettors', 'found-N'],
} as const satisfies RestsOn<typeof inputs, typeof results>;
