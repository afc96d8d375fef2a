import { demoJets } from '../../demo/jets.ts';
import { choice } from '../../frame/define.ts';
import { AIR_TEMPERATURES } from '../../maths/carburettor/air.ts';
import type { Inputs, NumberInput, OptionalInput } from '../../frame/types.ts';
import { mainJet } from '../../frame/ranges.ts';

export const groups = {
  now: 'The air now',
  right: 'The air when it was last right',
  jet: 'The jet that was right',
  flow: 'Jets stamped by flow',
} as const;

const temperature = {
  kind: 'number',
  help: 'Of the air the engine draws.',
  measure:
    'Thermometer in the shade and out of the engine’s heat, at the height of the air filter.',
  unit: 'degC',
  ...AIR_TEMPERATURES,
  why: 'outside that the formula for damp air is not proved',
  step: 1,
  error: 1,
} as const satisfies Omit<NumberInput, 'default' | 'label'>;

const humidity = {
  kind: 'number',
  help: 'Relative humidity. 60 is a fair guess for temperate weather.',
  unit: '%',
  min: 0,
  max: 100,
  why: 'it is relative humidity, which is 100% in fog',
  step: 5,
  error: 10,
} as const satisfies Omit<NumberInput, 'default' | 'label'>;

const altitude = {
  kind: 'number',
  help: 'From a map.',
  measure:
    'Where no pressure is given below, its ± stands for the weather too: from fair to foul the barometer moves as it does over some 150 m of height either way. With a pressure read on the spot the height is not used; with one from a report, set the ± to that of your map.',
  unit: 'm',
  min: -500,
  max: 6000,
  why: 'no road leads lower or higher',
  step: 50,
  error: 150,
} as const satisfies Omit<NumberInput, 'default' | 'label'>;

const pressure = {
  kind: 'optional',
  help: 'Leave it empty to take the standard pressure at that height; the weather may then put it out by 2 or 3 per cent.',
  measure:
    'Barometer, or the pressure that a telephone shows for the spot. The pressure of a weather report is reduced to sea level: say so below.',
  unit: 'air',
  usual: 101,
  min: 40,
  max: 110,
  why: 'no road is so high and no barometer stands so high; 1013 hPa is 101.3 kPa',
  step: 0.1,
  error: 0.2,
} as const satisfies Omit<OptionalInput, 'label'>;

const reduced = {
  label: 'That pressure is',
  help: 'Only matters above sea level.',
  options: { here: 'Read on the spot', sea: 'From a report, reduced to sea level' },
  default: 'here',
} as const;

export const inputs = {
  temperature: { ...temperature, label: 'Temperature now', group: groups.now, default: 28 },
  humidity: { ...humidity, label: 'Humidity now', group: groups.now, default: 60 },
  altitude: { ...altitude, label: 'Height above the sea now', group: groups.now, default: 900 },
  pressure: { ...pressure, label: 'Air pressure now', group: groups.now },
  'pressure-is': choice({
    ...reduced,
    group: groups.now,
    when: (v) => v.pressure !== undefined,
  }),
  'right-temperature': {
    ...temperature,
    label: 'Temperature when right',
    group: groups.right,
    default: 12,
  },
  'right-humidity': { ...humidity, label: 'Humidity when right', group: groups.right, default: 70 },
  'right-altitude': {
    ...altitude,
    label: 'Height above the sea when right',
    group: groups.right,
    default: 100,
  },
  'right-pressure': { ...pressure, label: 'Air pressure when right', group: groups.right },
  'right-pressure-is': choice({
    ...reduced,
    label: 'That pressure was',
    group: groups.right,
    when: (v) => v['right-pressure'] !== undefined,
  }),
  jet: {
    kind: 'number',
    group: groups.jet,
    label: 'Jet diameter',
    help: 'Of the jet with which the engine was right in that air.',
    measure:
      'By its stamp where the stamp is the diameter in hundredths of a millimetre, or with a pin gauge. Never run a drill through a jet: it opens it.',
    unit: 'mm',
    ...mainJet,
    default: demoJets.main,
    step: 0.01,
    error: 0.01,
  },
  sizes: {
    kind: 'list',
    group: groups.jet,
    label: 'Jets at hand',
    help: 'Diameters of the jets you have, separated by spaces.',
    unit: 'mm',
    ...mainJet,
    default: [1, 1.02, 1.05, 1.08, 1.1, 1.12, 1.15, 1.18],
    step: 0.01,
    most: 30,
  },
  number: {
    kind: 'number',
    group: groups.flow,
    label: 'Number on the jet',
    help: 'Where the number goes with the flow and not with the diameter: twice the number passes twice the fuel.',
    unit: 'none',
    min: 1,
    max: 1000,
    why: 'no scheme of numbers goes further',
    default: demoJets.mainNumber,
    step: 5,
  },
} as const satisfies Inputs;
