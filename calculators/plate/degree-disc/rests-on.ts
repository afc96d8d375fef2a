import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const marks = ['marks', 'marks-after', 'stroke', 'rod', 'offset'] as const;

export const restsOn = {
  'tape-length': ['rotor', 'thickness'],
  'tape-per-degree': ['rotor', 'thickness'],
  'disc-per-degree': ['outside'],
  'mark-angle': marks,
  'mark-reading': [...marks, 'numbering'],
  'mark-place': [...marks, 'rotor', 'thickness'],
  'off-centre-error': ['outside', 'off-centre'],
  'disc-print-error': ['bar-across', 'bar-up'],
  'tape-print-error': ['bar-across'],
} as const satisfies RestsOn<typeof inputs, typeof results>;
