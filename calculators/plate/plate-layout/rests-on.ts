import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const lines = ['sets', 'start', 'turning', 'firing-order', 'spacing'] as const;
const pattern = [...lines, 'holes', 'radius', 'angle'] as const;
const stock = ['outside', 'allowance'] as const;
const head = ['sets', 'firing-order', 'spacing', 'worm', 'circles'] as const;
const gear = ['sets', 'firing-order', 'spacing', 'teeth'] as const;
const play = ['run-out', 'clearance'] as const;

export const restsOn = {
  wall: [
    ...pattern,
    'outside',
    'bore',
    'drill',
    'slots',
    'slot-start',
    'slot-radius',
    'slot-width',
    'slot-sweep',
  ],
  square: stock,
  corner: stock,
  cut: stock,
  'octagon-swing': stock,
  'square-swing': stock,
  'least-depth': ['allowance'],
  'most-depth': stock,
  x: pattern,
  y: pattern,
  'next-chord': ['sets', 'firing-order', 'spacing', 'holes', 'radius'],
  chord: ['sets', 'firing-order', 'spacing', 'holes', 'radius-N'],
  'line-chord': ['holes', 'radius-N', 'angle-N'],
  direction: lines,
  turns: head,
  circle: head,
  'further-holes': head,
  'head-error': head,
  tooth: gear,
  'tooth-error': gear,
  'tapping-drill': ['thread'],
  'clearance-fine': ['thread'],
  'clearance-medium': ['thread'],
  'clearance-coarse': ['thread'],
  'off-centre': play,
  'gap-shift': play,
  'timing-shift': [...play, 'heel-radius'],
} as const satisfies RestsOn<typeof inputs, typeof results>;
