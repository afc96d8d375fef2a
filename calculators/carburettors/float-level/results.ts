import type { Results } from '../../frame/types.ts';
import { convert } from '../../maths/units/units.ts';

/** Only said where it is so: a minus alone is easily overlooked. */
const above = (value: number): string => (value < 0 ? '(above it)' : '');

export const results = {
  level: {
    label: 'Fuel below the gasket face',
    unit: 'mm',
    help: 'When the valve has just shut, for the gauge reading above; negative above the face.',
    lead: true,
    decimals: 2,
    word: above,
  },
  tang: {
    label: 'Tang for 1 mm of height',
    unit: 'mm',
    help: 'How far the tang is bent, at the needle, to change the gauge reading by 1 mm.',
    inInches: {
      label: 'Tang for 40 thou of height',
      help: 'How far the tang is bent, at the needle, to change the gauge reading by 40 thou.',
      times: convert(40, 'thou', 'mm'),
    },
    lead: true,
    decimals: 3,
  },
  'level-per-head': {
    label: '100 mm more head raises it',
    short: '100 mm head raises it',
    unit: 'mm',
    help: 'By how much the fuel rises when the tank stands 100 mm higher or fuller.',
    inInches: {
      label: '4 in more head raises it',
      short: '4 in head raises it',
      help: 'By how much the fuel rises when the tank stands 4 in higher or fuller.',
      times: convert(4, 'in', 'mm') / 100,
    },
    lead: true,
    decimals: 3,
  },
  'height-for': {
    label: 'Gauge reading for the level wanted',
    unit: 'mm',
    help: 'Measured to the same edge.',
    decimals: 2,
  },
  'tang-for': {
    label: 'Bend the tang for it',
    unit: 'mm',
    help: 'From the gauge reading above to that one; + towards the needle, which lowers the fuel.',
    decimals: 2,
    signed: true,
  },
  submerged: {
    label: 'Float in the fuel',
    unit: 'mm',
    help: 'How deep its lower face lies below the level when the valve shuts.',
    decimals: 2,
  },
  'needle-push': {
    label: 'Push on the needle',
    unit: 'gf',
    help: 'Of the fuel’s head on the seat’s area: the weight of so many grams.',
    decimals: 2,
  },
  buoyancy: {
    label: 'Buoyancy at shut-off',
    unit: 'gf',
    help: 'The weight of the fuel that the float displaces.',
    decimals: 2,
  },
  reserve: {
    label: 'Head it could still bear',
    unit: 'mm',
    help: 'At which the float would be wholly under and the chamber overflow.',
    decimals: 0,
  },
  'fuel-density': {
    label: 'Density of the fuel',
    unit: 'kg/m3',
    help: 'As typed, or worked out from the mix.',
    decimals: 1,
  },
  'level-per-seat': {
    label: 'A seat 0.5 mm larger raises it',
    unit: 'mm',
    help: 'By how much the fuel rises with a seat of that size.',
    inInches: {
      label: 'A seat 20 thou larger raises it',
      help: 'By how much the fuel rises with a seat of that size.',
      times: convert(20, 'thou', 'mm') / 0.5,
    },
    decimals: 3,
  },
  'level-per-density': {
    label: 'Fuel 20 kg/m³ denser lowers it',
    unit: 'mm',
    help: 'By how much the fuel stands lower, since the float swims higher in it.',
    decimals: 2,
  },
  'level-at-jet': {
    label: 'Below the face at the jet, tilted',
    unit: 'mm',
    help: 'At the jet tube, with the tilt given.',
    decimals: 2,
    word: above,
  },
  spread: {
    label: 'Spread of the levels',
    unit: 'mm',
    help: 'Highest less lowest of the carburettors as found.',
    decimals: 2,
  },
  'found-level': {
    label: 'Fuel below the face',
    unit: 'mm',
    help: 'With that reading.',
    table: 'side',
    decimals: 2,
  },
  bend: {
    label: 'Bend of the tang',
    unit: 'mm',
    help: 'At the needle; + towards it.',
    table: 'side',
    decimals: 2,
    signed: true,
  },
} as const satisfies Results;
