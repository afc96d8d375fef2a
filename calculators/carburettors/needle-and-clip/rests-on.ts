import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const travel = ['clip-pitch', 'slide-travel'] as const;
const lift = ['clip', ...travel] as const;
const needle = ['needle-diameter', 'taper', 'straight'] as const;
const ring = [...lift, 'jet-bore', ...needle] as const;
const second = ['second-diameter', 'second-taper', 'second-straight'] as const;

export const restsOn = {
  annulus: [...ring, 'throttle'],
  'annulus-per-clip': [...ring, 'throttle'],
  'clip-percent': [...ring, 'throttle', 'main-jet'],
  'needle-at-mouth': [...lift, ...needle, 'throttle'],
  'needle-share': [...ring, 'throttle', 'main-jet'],
  'passing-area': [...ring, 'throttle', 'main-jet'],
  'main-area': ['main-jet'],
  'equal-at': [...ring, 'main-jet'],
  'second-annulus': [...lift, 'jet-bore', ...second, 'throttle'],
  'second-percent': [...ring, ...second, 'throttle'],
  // Of every groove, whichever the clip is in.
  'clip-annulus': [...travel, 'jet-bore', ...needle, 'clips', 'throttle'],
  'clip-change': [...ring, 'clips', 'throttle'],
  'throttle-annulus': ring,
  'throttle-share': [...ring, 'main-jet'],
} as const satisfies RestsOn<typeof inputs, typeof results>;
