import type { Results } from '../../frame/types.ts';

const table = 'cylinders';

export const results = {
  'plate-move': {
    label: 'Turn the plate to move the timing by',
    unjudged: 'Timing moved by the plate',
    unit: 'deg',
    help: 'Crank degrees. Positive advances: turn the plate against the turning of the cam.',
    lead: true,
    decimals: 2,
    signed: true,
    sided: true,
    word: (value: number) => (value > 0 ? 'advance' : value < 0 ? 'retard' : ''),
  },
  worst: {
    label: 'Worst error left',
    unit: 'deg',
    help: 'With the plate so turned and the sets left alone. No other turn makes it less.',
    lead: true,
    decimals: 2,
  },
  spread: {
    label: 'Between earliest and latest',
    short: 'Earliest to latest',
    unit: 'deg',
    help: 'Crank degrees. Turning the plate cannot change it; only moving a set in its slot can.',
    lead: true,
    decimals: 2,
  },
  'plate-turn': {
    label: 'The plate itself turns',
    unit: 'deg',
    help: 'About the shaft; positive against the turning of the cam, which advances. The same as the timing on the crankshaft, half of it on a half-speed shaft.',
    decimals: 2,
    signed: true,
  },
  'plate-edge': {
    label: 'At the plate’s mark',
    unit: 'mm',
    help: 'How far a line scribed across plate and case parts. Positive against the turning of the cam, which advances.',
    decimals: 2,
    signed: true,
  },
  'as-found': {
    label: 'Found at',
    unit: 'deg',
    help: 'Crank degrees before top dead centre.',
    table,
    decimals: 2,
  },
  'error-before': {
    label: 'Error as found, + early',
    unit: 'deg',
    help: 'Crank degrees, positive early.',
    table,
    decimals: 2,
    signed: true,
  },
  error: {
    label: 'Left after the plate, + early',
    unit: 'deg',
    help: 'Crank degrees left after the turn of the plate, positive early.',
    table,
    decimals: 2,
    signed: true,
  },
  'set-move': {
    label: 'Move in the slot, + advances',
    unit: 'mm',
    help: 'Along the slot to take away the rest. Positive advances: against the turning of the cam.',
    table,
    decimals: 2,
    signed: true,
  },
  position: {
    label: 'Opens at, by the plate alone',
    unit: 'mm',
    help: 'Piston travel before top dead centre after the turn of the plate, before any set is moved.',
    table,
    decimals: 2,
  },
} as const satisfies Results;
