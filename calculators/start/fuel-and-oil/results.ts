import type { Results } from '../../frame/types.ts';

export const results = {
  oil: {
    label: 'Oil for this petrol',
    unit: 'ml',
    help: 'For the petrol put in, whatever is in the tank.',
    lead: true,
    decimals: 0,
  },
  'mixed-ratio': {
    label: 'In the tank then',
    unit: 'ratio',
    help: 'Ratio of the whole tank after petrol and that oil.',
    lead: true,
    decimals: 1,
  },
  'oil-whole': {
    label: 'Oil to bring all to the ratio',
    short: 'Oil for all of it',
    unit: 'ml',
    help: 'To put in with the petrol instead, so that the whole tank comes to the ratio wanted.',
    lead: true,
    decimals: 0,
  },
  total: {
    label: 'Mix in the tank then',
    unit: 'litre',
    help: 'With the oil for this petrol.',
    decimals: 2,
  },
  'oil-percent': {
    label: 'Oil in the tank then',
    unit: '%',
    help: 'Of the petrol in it.',
    decimals: 2,
  },
  'oil-us': {
    label: 'Oil, US fluid ounces',
    unit: 'none',
    help: 'For this petrol; 128 to the US gallon.',
    decimals: 1,
  },
  'oil-imp': {
    label: 'Oil, imperial fluid ounces',
    unit: 'none',
    help: 'For this petrol; 160 to the imperial gallon.',
    decimals: 1,
  },
  'fuel-us': {
    label: 'Petrol, US gallons',
    unit: 'none',
    help: 'The petrol put in.',
    decimals: 2,
  },
  'fuel-imp': {
    label: 'Petrol, imperial gallons',
    unit: 'none',
    help: 'The petrol put in.',
    decimals: 2,
  },
} as const satisfies Results;
