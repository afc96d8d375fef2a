import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const oil = ['fuel', 'by', 'ratio', 'percent'] as const;
const tank = [...oil, 'already', 'already-ratio'] as const;

export const restsOn = {
  oil,
  'oil-us': oil,
  'oil-imp': oil,
  'fuel-us': ['fuel'],
  'fuel-imp': ['fuel'],
  'mixed-ratio': tank,
  'oil-whole': tank,
  'oil-percent': tank,
  total: [...oil, 'already'],
} as const satisfies RestsOn<typeof inputs, typeof results>;
