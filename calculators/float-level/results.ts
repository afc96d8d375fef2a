import type { Results } from '../frame/types.ts';

const belowOrAbove = (value: number): string => (value < 0 ? 'above the face' : 'below the face');
const bendWord = (value: number): string =>
  Math.abs(value) < 0.005 ? '' : value > 0 ? 'towards the needle' : 'away from it';

export const results = {
  level: {
    label: 'Fuel level',
    unit: 'mm',
    help: 'Below the gasket face when the valve has just shut, for the gauge reading above.',
    lead: true,
    decimals: 2,
    word: belowOrAbove,
  },
  tang: {
    label: 'Tang for 1 mm of height',
    unit: 'mm',
    help: 'How far the tang is bent, at the needle, to change the gauge reading by 1 mm.',
    lead: true,
    decimals: 3,
  },
  'level-per-head': {
    label: '100 mm more head',
    unit: 'mm',
    help: 'By how much the fuel rises when the tank stands 100 mm higher or fuller.',
    lead: true,
    decimals: 3,
    word: () => 'higher',
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
    word: bendWord,
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
    label: 'Seat 0.5 mm larger',
    unit: 'mm',
    help: 'By how much the fuel rises with a seat of that size.',
    decimals: 3,
    word: () => 'higher',
  },
  'level-per-density': {
    label: 'Fuel 20 kg/m³ denser',
    unit: 'mm',
    help: 'By how much the fuel stands lower, since the float swims higher in it.',
    decimals: 2,
    word: () => 'lower',
  },
  'level-at-jet': {
    label: 'Level at the jet, tilted',
    unit: 'mm',
    help: 'Below the gasket face at the jet tube, with the tilt given.',
    decimals: 2,
    word: belowOrAbove,
  },
  spread: {
    label: 'Spread of the levels',
    unit: 'mm',
    help: 'Highest less lowest of the carburettors as found.',
    decimals: 2,
  },
  'found-level': {
    label: 'Level as found',
    unit: 'mm',
    help: 'Below the gasket face.',
    table: 'side',
    decimals: 2,
  },
  off: {
    label: 'Fuel too high (+) or low',
    unit: 'mm',
    help: 'Against the level that the gauge reading above gives.',
    table: 'side',
    decimals: 2,
    signed: true,
  },
  bend: {
    label: 'Bend the tang',
    unit: 'mm',
    help: 'At the needle; + towards it.',
    table: 'side',
    decimals: 2,
    signed: true,
  },
} as const satisfies Results;
