import type { Results } from '../../frame/types.ts';

export const results = {
  current: {
    label: 'Current when the points open',
    unit: 'A',
    help: 'What has grown in the primary by then.',
    lead: true,
    decimals: 2,
  },
  energy: {
    label: 'Energy for the spark',
    unit: 'mJ',
    help: 'Stored in the coil when the points open: half the inductance times the current squared.',
    lead: true,
    decimals: 1,
  },
  'current-percent': {
    label: 'Of full current',
    unit: '%',
    help: 'Of volts ÷ resistance, ballast included.',
    lead: true,
    decimals: 1,
  },
  'charge-time': {
    label: 'Points shut for',
    unit: 'ms',
    help: 'Each time, at this speed.',
    decimals: 2,
  },
  'speed-at-share': {
    label: 'Enough current up to',
    unit: 'rpm',
    help: 'The speed above which the points open before the current has reached the share you want.',
    decimals: 0,
  },
  'final-current': {
    label: 'Standing current',
    unit: 'A',
    help: 'With the points shut for good: volts ÷ resistance, ballast included.',
    decimals: 2,
  },
  'time-constant': {
    label: 'Time constant',
    unit: 'ms',
    help: 'Inductance ÷ resistance. After so long the current has 63 per cent of its final value, after three times as long 95.',
    decimals: 2,
  },
  'ballast-for': {
    label: 'Ballast for the largest current',
    unit: 'ohm',
    help: 'The least resistor in series that keeps the standing current within the largest allowed; 0 if none is needed. Part of it may be there already.',
    decimals: 2,
  },
  sparks: {
    label: 'Sparks in a minute',
    unit: 'none',
    help: 'From one set of points.',
    decimals: 0,
  },
  heat: {
    label: 'Heat in the coil',
    unit: 'W',
    help: 'On average, in the primary winding, running at this speed.',
    decimals: 1,
  },
  'stopped-heat': {
    label: 'Heat when left on',
    unit: 'W',
    help: 'In the primary winding, engine stopped with the points shut.',
    decimals: 1,
  },
  'time-at': {
    label: 'Points shut',
    unit: 'ms',
    help: 'Each time.',
    table: 'speeds',
    decimals: 2,
  },
  'current-at': {
    label: 'Current',
    unit: 'A',
    help: 'When the points open.',
    table: 'speeds',
    decimals: 2,
  },
  'energy-at': {
    label: 'Energy',
    unit: 'mJ',
    help: 'Stored when the points open.',
    table: 'speeds',
    decimals: 1,
  },
} as const satisfies Results;
