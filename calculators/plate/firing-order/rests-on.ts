import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const angles = ['cylinders', 'firing-order', 'pin', 'lean'] as const;
const piston = ['reciprocating', 'stroke', 'rpm'] as const;
const force = [...angles, ...piston] as const;

export const restsOn = {
  sequence: angles,
  uneven: angles,
  sets: angles,
  top: angles,
  set: angles,
  lobe: angles,
  order: angles,
  interval: angles,
  primary: force,
  'primary-left': [...force, 'factor'],
  secondary: [...force, 'rod'],
  'primary-couple': [...force, 'place'],
  'couple-left': [...force, 'place', 'factor'],
  'secondary-couple': [...force, 'place', 'rod'],
  single: piston,
  'bob-weight': ['rotating', 'reciprocating', 'factor'],
} as const satisfies RestsOn<typeof inputs, typeof results>;
