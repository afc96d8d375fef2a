import { DEMO_RATIO } from '../../demo/engine.ts';
import { defineCalculator } from '../../frame/define.ts';
import { percentOfRatio } from '../../maths/fuel/fuel-and-oil.ts';
import { compute, ratioOf } from './compute.ts';
import { inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'fuel-and-oil',
  title: 'Fuel and oil',
  purpose:
    'The oil for a ratio or a per cent, and what a part-filled tank of another ratio comes to when it is topped up.',
  inHand: ['fuel'],
  alsoCalled: [
    'premix',
    'petroil',
    'two-stroke mix',
    'oil ratio',
    '25:1',
    '50:1',
    'mixing oil',
    'oil in petrol',
    'oil in fuel',
    'how much oil',
    'oil in litres',
    'oil per litre',
    'oil per gallon',
  ],
  inputs,
  results,
  restsOn,
  fieldOf: {
    fuel: 'fuel',
    ratio: 'ratio',
    percent: 'percent',
    already: 'already',
    alreadyRatio: 'already-ratio',
    oil: 'fuel',
  },
  compute,
  carry: (choice, option, v) => {
    if (choice !== 'by') return [];
    return option === 'ratio'
      ? [{ from: 'percent', to: { ratio: ratioOf(v) } }]
      : [{ from: 'ratio', to: { percent: percentOfRatio(v.ratio) } }];
  },
  remarks,
  picture: Picture,
  ready: {
    caption: `Oil at ${DEMO_RATIO} to 1`,
    vary: 'fuel',
    over: [1, 2, 3, 4, 5, 6, 8, 10, 15, 20],
    show: ['oil', 'oil-us', 'oil-imp', 'fuel-us', 'fuel-imp'],
  },
  care: 'Petrol vapour: mix out of doors, no flame or spark.',
  cautions: [
    'Petrol vapour is heavier than air, creeps along the floor and takes fire from a flame or spark far off. Mix out of doors, engine cold, no smoking, can on the ground and the nozzle touching it, so that no charge of electricity builds up.',
    'Only a can made for fuel, closed and marked with what is in it and its ratio. Never a drinking bottle.',
    'The ratio is the engine maker’s. Too little oil seizes the engine; the ratio on an oil bottle is for other engines.',
  ],
  limits: [
    'Parts are by volume, and a ratio counts oil against petrol, not against the mix: 25 to 1 is 1 part in 26.',
    'What is in the tank already is known no better than your dipstick and its label. Drain what is old or of unknown ratio.',
    'Stir-up, warmth and how well the oil mixes are not in it. Petrol keeps for weeks, not for a winter.',
  ],
  articles: ['fuel-and-oil', 'first-fire'],
});
