import type { Results } from '../../frame/types.ts';
import { convert } from '../../maths/units/units.ts';

/** 2 thou stand for 0.05 mm of gap where lengths are shown in inches. */
const TWO_THOU = convert(2, 'thou', 'mm') / 0.05;

export const results = {
  'dwell-angle': {
    label: 'Dwell',
    unit: 'deg',
    help: 'Cam degrees for which the points are shut, per lobe.',
    lead: true,
    decimals: 2,
  },
  opens: {
    label: 'Open before the lobe’s middle',
    short: 'Open before middle',
    unit: 'deg',
    help: 'Cam degrees before the middle of the lobe at which the points open.',
    lead: true,
    decimals: 2,
  },
  'crank-degrees-per-gap': {
    label: '0.05 mm of gap moves the timing',
    short: '0.05 mm of gap moves it',
    unit: 'deg',
    help: 'Crank degrees by which the timing comes earlier for 0.05 mm more gap, at this gap.',
    inInches: {
      label: '2 thou of gap moves the timing',
      short: '2 thou of gap moves it',
      help: 'Crank degrees by which the timing comes earlier for 2 thou more gap, at this gap.',
      times: TWO_THOU,
    },
    lead: true,
    decimals: 2,
  },
  'gap-set': {
    label: 'Gap',
    unit: 'mm',
    help: 'At full lift: as given, or as needed for the dwell you want.',
    decimals: 3,
  },
  'dwell-percent': {
    label: 'Dwell as a share',
    unit: '%',
    help: 'Of the angle from one lobe to the next.',
    decimals: 1,
  },
  'open-angle': {
    label: 'Open',
    unit: 'deg',
    help: 'Cam degrees per lobe for which the points are apart. With the dwell it makes up the pitch of the lobes.',
    decimals: 2,
  },
  'crank-degrees-per-thou': {
    label: '0.001 in of gap moves the timing',
    unit: 'deg',
    help: 'The same as above for a thousandth of an inch.',
    decimals: 3,
    word: () => 'of crank',
  },
  'heel-lift': {
    label: 'Lift at the heel',
    unit: 'mm',
    help: 'Of the lobe itself: the lift at the contacts divided by the lever ratio.',
    decimals: 3,
  },
  opening: {
    label: 'Contacts apart in the picture',
    unit: 'mm',
    help: 'With the cam turned as drawn. 0 is shut.',
    decimals: 3,
  },
  'worn-gap': {
    label: 'Gap after that running',
    unit: 'mm',
    help: 'The gap less the wear of the heel times the lever ratio.',
    decimals: 3,
  },
  'worn-retard': {
    label: 'Timing has fallen late by',
    unit: 'deg',
    help: 'Crank degrees later than when the gap was set.',
    decimals: 2,
    word: () => 'of crank',
  },
  'run-to-limit': {
    label: 'Reset the gap after',
    unit: 'none',
    help: 'Hours or kilometres, as chosen, until the timing has fallen late by what you will put up with.',
    decimals: 0,
    word: (_, values) => (values['wear-per'] === 'km' ? 'km' : 'h'),
  },
  'trial-slope': {
    label: 'From the trials, 0.05 mm is worth',
    unit: 'deg',
    help: 'Crank degrees, from the line through your own trials. Its ± comes from the ± of your readings.',
    inInches: {
      label: 'From the trials, 2 thou is worth',
      help: 'Crank degrees, from the line through your own trials. Its ± comes from the ± of your readings.',
      times: TWO_THOU,
    },
    decimals: 2,
    word: () => 'of crank',
  },
  'trial-range': {
    label: 'Scatter of the trials says ±',
    unit: 'deg',
    bare: true,
    help: 'On the same figure: half of the range that holds the truth 95 times in 100, judged by how far the trials lie off their line.',
    decimals: 2,
  },
  'trial-lift': {
    label: 'Lift near opening',
    unit: 'mm/deg',
    help: 'How far your lobe lifts the contacts in one degree of crank where they open, from the trials.',
    decimals: 4,
  },
  'trial-angle-at-gap': {
    label: 'With the gap above, the points open at',
    unit: 'deg',
    help: 'From the line through the trials.',
    decimals: 2,
    word: () => 'BTDC',
  },
} as const satisfies Results;
