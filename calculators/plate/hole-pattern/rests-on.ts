import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const network = [
  'holes',
  'hole',
  'span',
  'distances',
  'a',
  'b',
  'distance',
  'at-inside',
  'at-outside',
  'at-centres',
] as const;
const centre = [...network, 'about', 'circle-holes', 'centre-hole'] as const;
const part = [...centre, 'outline', 'land', 'bulge', 'outside'] as const;
const opening = [...part, 'band', 'in-opening'] as const;

export const restsOn = {
  rms: network,
  spare: ['holes', 'distances'],
  'least-metal': [...opening, 'bore'],
  x: network,
  y: network,
  radius: centre,
  angle: centre,
  fitted: network,
  misfit: network,
  checked: network,
  'centre-x': centre,
  'centre-y': centre,
  'pitch-radius': centre,
  'off-circle': centre,
  across: part,
  upright: part,
  'opening-across': opening,
  'opening-upright': opening,
} as const satisfies RestsOn<typeof inputs, typeof results>;
