import * as engine from '../causes-engine.ts';
import * as fuel from '../causes-fuel.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const hotStart: Symptom = {
  id: 'hot-start',
  title: 'It will not start hot',
  also: [
    'will not start hot',
    'hot start',
    'wont start when hot',
    'dies when hot',
    'starts cold only',
    'hard to start hot',
    'hard to start when warm',
    'will not restart',
  ],
  first: {
    ask: 'Does it start with the twistgrip wide open and the choke off?',
    how: 'Choke off, tap shut, three to five kicks with the slides full open; shut them as it fires.',
    yes: {
      ask: 'Does the choke come off fully?',
      how: 'Look: flap open, plunger on its seat, tickler up.',
      no: fuel.choke,
      yes: { ...fuel.float, cause: 'It floods as it stands hot: fuel level or float valve' },
    },
    no: {
      ask: 'Is the spark good while it is hot?',
      how: 'Gloves. Plug in its cap on bare metal, away from the plug holes, fuel shut. Look at once, not when it has cooled.',
      no: {
        ask: 'Is there bright, steady, blue-white flashing at the contacts while hot?',
        how: 'In shade, as somebody turns it over.',
        yes: spark.condenser,
        no: spark.hotCoil,
      },
      yes: {
        ask: 'Is there fuel at the bowl’s drain while hot?',
        how: 'Only when the pipes no longer hiss at a wet brush: a can below, no flame.',
        no: fuel.noFuel,
        yes: {
          ask: 'Does it hold in the leak test?',
          how: 'Once it is cold: pressure and suction, five minutes each. A seal may let go hot: compare with the figure found cold.',
          no: fuel.airLeak,
          yes: engine.compression,
        },
      },
    },
  },
};
