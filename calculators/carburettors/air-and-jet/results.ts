import type { Results } from '../../frame/types.ts';

export const results = {
  'relative-density': {
    label: 'Relative density',
    unit: 'none',
    help: 'Density of the air now over that when the jet was right.',
    lead: true,
    decimals: 3,
  },
  'jet-area-ratio': {
    label: 'Jet area, times',
    unit: 'none',
    help: 'What the area of the jet has to be multiplied by to keep the mixture.',
    lead: true,
    decimals: 3,
  },
  jet: {
    label: 'Jet that keeps the mixture',
    short: 'Jet to keep it',
    unit: 'mm',
    help: 'Its diameter.',
    lead: true,
    decimals: 3,
  },
  mixture: {
    label: 'With the old jet left in',
    unit: '%',
    help: 'How much more fuel goes with each kilogram of air; + is richer.',
    decimals: 1,
    signed: true,
  },
  'size-mixture': {
    label: 'Mixture with it',
    unit: '%',
    help: 'Against the mixture that was right; + is richer.',
    table: 'sizes',
    decimals: 1,
    signed: true,
  },
  'number-for': {
    label: 'Number that keeps the mixture',
    unit: 'none',
    help: 'For jets stamped by flow.',
    decimals: 1,
  },
  density: {
    label: 'Density of the air now',
    unit: 'kg/m3',
    help: 'Moist air, by the CIPM-2007 formula.',
    decimals: 4,
  },
  'right-density': {
    label: 'Density when it was right',
    unit: 'kg/m3',
    help: 'By the same formula.',
    decimals: 4,
  },
  'pressure-here': {
    label: 'Air pressure on the spot',
    unit: 'air',
    help: 'As a barometer would show it, not reduced to sea level.',
    decimals: 2,
  },
  'density-altitude': {
    label: 'Density altitude',
    unit: 'm',
    help: 'The height at which standard air is as thin as this.',
    decimals: 0,
  },
} as const satisfies Results;
