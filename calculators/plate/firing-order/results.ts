import type { Results } from '../../frame/types.ts';

const cylinders = 'cylinders';
const firings = 'firings';

export const results = {
  sequence: {
    label: 'Firing order',
    unit: 'count',
    help: 'The cylinders one by one, 1 first. Those that fire together are joined by +.',
    lead: true,
    decimals: 0,
    jumps: true,
    isOrder: true,
  },
  sets: {
    label: 'Sets of points, or lobes',
    unit: 'count',
    help: 'Cylinders that fire together take one, with a coil of two leads or a coil for each.',
    decimals: 0,
    jumps: true,
  },
  uneven: {
    label: 'Uneven by: longest interval less shortest',
    short: 'Uneven by',
    unit: 'deg',
    help: '0 fires evenly. Cylinders that fire together count as one.',
    lead: true,
    decimals: 1,
  },
  primary: {
    label: 'Primary force, at most',
    unit: 'N',
    help: 'Once a turn, of all pistons together, without balancing weights.',
    lead: true,
    decimals: 0,
  },
  top: {
    label: 'At the top at',
    unit: 'deg',
    help: 'Crank degrees after the top of cylinder 1.',
    table: cylinders,
    decimals: 1,
    cyclic: 360,
  },
  set: {
    label: 'Its set at',
    unit: 'deg',
    help: 'From set 1, counted the way the cam turns; cam at crank speed.',
    table: cylinders,
    decimals: 1,
    cyclic: 360,
  },
  lobe: {
    label: 'Or its lobe',
    unit: 'deg',
    help: 'From lobe 1, counted the way the cam turns, where all sets stand in one line.',
    table: cylinders,
    decimals: 1,
    cyclic: 360,
  },
  order: {
    label: 'Cylinder',
    unit: 'count',
    help: 'Number of the cylinder that fires.',
    table: firings,
    decimals: 0,
    jumps: true,
  },
  interval: {
    label: 'Then, to the next',
    unit: 'deg',
    help: 'Crank degrees to the next firing. 0 where two fire together.',
    table: firings,
    decimals: 1,
  },
  'primary-left': {
    label: 'Primary force left',
    unit: 'N',
    help: 'At most, with the balancing weights of the factor. Across the cylinders as well as along them.',
    decimals: 0,
  },
  secondary: {
    label: 'Secondary force, at most',
    unit: 'N',
    help: 'Twice a turn, since the rod leans. No weight on the crank balances it.',
    decimals: 0,
  },
  'primary-couple': {
    label: 'Primary couple, at most',
    unit: 'Nm',
    help: 'Rocks the engine end for end once a turn, about the middle between first and last place; without balancing weights.',
    decimals: 1,
  },
  'couple-left': {
    label: 'Primary couple left',
    unit: 'Nm',
    help: 'At most, with the balancing weights of the factor.',
    decimals: 1,
  },
  'secondary-couple': {
    label: 'Secondary couple, at most',
    unit: 'Nm',
    help: 'Rocks it end for end twice a turn.',
    decimals: 1,
  },
  single: {
    label: 'One piston alone',
    unit: 'N',
    help: 'Its own primary force at the top: what the bearings and the webs of that throw carry whatever the others do.',
    decimals: 0,
  },
  'bob-weight': {
    label: 'Weight to balance by, for each cylinder',
    unit: 'g',
    help: 'Hung on its crank pin while the crank is balanced on knife edges: the rotating mass, and the factor’s share of the reciprocating mass. A pin that carries two rods bears twice as much.',
    decimals: 0,
  },
} as const satisfies Results;
