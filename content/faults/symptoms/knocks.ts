import * as engine from '../causes-engine.ts';
import * as fuel from '../causes-fuel.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const knocks: Symptom = {
  id: 'knocks',
  title: 'It knocks under load: a sharp rattle',
  also: ['knock', 'pinking', 'detonation', 'rattles under load', 'pinging'],
  atOnce: 'Shut off, and let it cool. Knocking holes a piston within a minute.',
  first: {
    ask: 'Is the fuel fresh, of the right grade, with its oil in it?',
    how: 'Ask what is in the tank and when it was mixed. Smell it, and look at a glass of it.',
    no: fuel.oldFuel,
    yes: {
      ask: 'Does any cylinder fire earlier than its figure?',
      how: 'Gap first, then lamp and indicator at every cylinder.',
      yes: spark.early,
      no: {
        ask: 'Does the engine hold in the leak test?',
        how: 'Pressure and suction, five minutes each. Air that leaks in makes it weak (lean: too little petrol for its air).',
        no: fuel.airLeak,
        yes: {
          ask: 'Are the main jets the size in the sheet, and clear?',
          how: 'The largest pin that drops in by its own weight.',
          no: fuel.smallJet,
          yes: {
            ask: 'Is the squish at its figure on every cylinder?',
            how: 'Solder on both sides along the pin, over the top by hand.',
            no: engine.squish,
            yes: engine.highCompression,
          },
        },
      },
    },
  },
};
