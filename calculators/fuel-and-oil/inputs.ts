import { DEMO_RATIO } from '../demo-engine.ts';
import { choice } from '../frame/define.ts';
import type { AnyValues, Inputs } from '../frame/types.ts';

export const groups = { fuel: 'What you put in', tank: 'What is in the tank already' } as const;

const some = (v: AnyValues): boolean => (v.already as number) > 0;

export const inputs = {
  fuel: {
    kind: 'number',
    group: groups.fuel,
    label: 'Petrol',
    help: 'Without oil. Litres, or type “2 us gal” or “1 imp gal”.',
    unit: 'litre',
    min: 0,
    max: 1000,
    why: 'less than nothing cannot be put in, and no can or drum here holds more',
    default: 5,
    step: 0.5,
    error: 0.05,
  },
  by: choice({
    group: groups.fuel,
    label: 'Oil given as',
    help: 'Parts of petrol to one of oil, or oil in per cent of the petrol.',
    options: { ratio: 'Ratio', percent: 'Per cent of the petrol' },
    default: 'ratio',
  }),
  ratio: {
    kind: 'number',
    group: groups.fuel,
    label: 'Ratio',
    help: 'Parts of petrol to one part of oil.',
    unit: 'ratio',
    min: 5,
    max: 1000,
    why: 'with more oil it hardly burns, and with less there is none to speak of; 4 per cent is 25 to 1',
    default: DEMO_RATIO,
    step: 1,
    when: (v) => v.by === 'ratio',
  },
  percent: {
    kind: 'number',
    group: groups.fuel,
    label: 'Oil in per cent of the petrol',
    help: '4 per cent is 25 to 1.',
    unit: '%',
    min: 0.1,
    max: 20,
    why: 'with more oil it hardly burns, and with less there is none to speak of; 25 to 1 is 4 per cent',
    default: 100 / DEMO_RATIO,
    step: 0.5,
    when: (v) => v.by === 'percent',
  },
  already: {
    kind: 'number',
    group: groups.tank,
    label: 'Mix in the tank',
    help: 'Petrol and oil together that are there before. 0 for an empty tank.',
    measure: 'A dipstick marked by filling the empty tank litre by litre.',
    unit: 'litre',
    min: 0,
    max: 1000,
    why: 'less than nothing cannot be there, and no tank here holds more',
    default: 0,
    step: 0.5,
    error: 0.2,
  },
  'already-ratio': {
    kind: 'number',
    group: groups.tank,
    label: 'Its ratio',
    help: 'Parts of petrol to one of oil of the mix in the tank.',
    unit: 'ratio',
    min: 5,
    max: 1000,
    why: 'it is parts of petrol to one of oil; 2 per cent is 50 to 1',
    default: 50,
    step: 1,
    when: some,
  },
} as const satisfies Inputs;
