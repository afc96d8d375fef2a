import type { Results } from '../../frame/types.ts';

export const results = {
  chosen: {
    label: 'Fit jet',
    unit: 'count',
    help: 'Its place in the row.',
    lead: true,
    table: 'set',
    decimals: 0,
    standard: true,
  },
  spread: {
    label: 'Spread of the best set',
    unit: '%',
    help: 'Widest less narrowest area, of the set’s mean area.',
    lead: true,
    decimals: 2,
  },
  'set-size': {
    label: 'Its mean size',
    unit: 'mm',
    help: 'Diameter of a jet with the set’s mean area.',
    lead: true,
    decimals: 3,
  },
  rejected: {
    label: 'Jets to reject',
    unit: 'count',
    help: 'Further from the size wanted, or from the set, than you allow.',
    decimals: 0,
    standard: true,
  },
  'next-spread': {
    label: 'Spread of the next best set',
    unit: '%',
    help: 'Of the other sets of so many jets; the same as the best where there is no other.',
    decimals: 2,
  },
  'chosen-size': {
    label: 'Size',
    unit: 'mm',
    help: 'Diameter.',
    table: 'set',
    decimals: 3,
  },
  'jet-size': {
    label: 'Size',
    unit: 'mm',
    help: 'Diameter, as measured or as it follows from flow or number.',
    table: 'jets',
    decimals: 3,
  },
  'jet-area': {
    label: 'Area',
    unit: 'mm2',
    help: 'Of the hole.',
    table: 'jets',
    decimals: 3,
  },
  against: {
    label: 'Area against it (+ larger)',
    unit: '%',
    help: 'Against the size wanted, or the mean of the set where none is given.',
    table: 'jets',
    decimals: 1,
    signed: true,
  },
} as const satisfies Results;
