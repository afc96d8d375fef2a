import type { Results } from '../../frame/types.ts';

const marks = 'marks';

export const results = {
  'tape-length': {
    label: 'Tape once round',
    unit: 'mm',
    help: 'Flat, from zero to zero: π times the rotor’s diameter plus one thickness of tape.',
    lead: true,
    decimals: 2,
  },
  'tape-per-degree': {
    label: '1° on the tape',
    unit: 'mm',
    help: 'Along the flat tape.',
    lead: true,
    decimals: 3,
  },
  'disc-per-degree': {
    label: '1° at the disc’s edge',
    unit: 'mm',
    help: 'What you have to tell apart with the eye.',
    lead: true,
    decimals: 2,
  },
  'mark-angle': {
    label: 'From the top',
    unit: 'deg',
    help: 'Crank degrees before or after true top dead centre.',
    table: marks,
    decimals: 2,
  },
  'mark-reading': {
    label: 'Disc reads',
    unit: 'deg',
    help: 'What the pointer shows there, its zero set to true top dead centre.',
    table: marks,
    decimals: 2,
  },
  'mark-place': {
    label: 'On the tape',
    unit: 'mm',
    help: 'From its zero, along the flat tape.',
    table: marks,
    decimals: 2,
  },
  'off-centre-error': {
    label: 'Disc off centre: out by up to',
    unit: 'deg',
    help: 'At the edge, on the side square to the shift. The mean of two pointers across from each other is free of it.',
    decimals: 2,
  },
  'disc-print-error': {
    label: 'Print stretched unevenly: out by up to',
    unit: 'deg',
    help: 'Anywhere on the disc. Stretched alike both ways, a disc stays true.',
    decimals: 2,
  },
  'tape-print-error': {
    label: 'Tape out over the whole round by',
    unit: 'deg',
    help: 'Positive where the printed tape is too long. It grows evenly from the zero.',
    decimals: 2,
    signed: true,
  },
} as const satisfies Results;
