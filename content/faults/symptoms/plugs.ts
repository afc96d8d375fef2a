import * as engine from '../causes-engine.ts';
import * as fuel from '../causes-fuel.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const plugs: Symptom = {
  id: 'plugs',
  title: 'The plug colours are wrong: black, wet, white, or unlike each other',
  also: [
    'plug black',
    'plug white',
    'plug wet',
    'plug colour',
    'plug reading',
    'sooty plug',
    'black plug',
    'wet plug',
    'fouled plug',
    'fouls plugs',
    'oily plug',
    'oil on the plug',
  ],
  first: {
    ask: 'Were they read after a run under load that was cut off cleanly?',
    how: 'Switch and slides shut together at the end of a steady pull. After idling a plug shows nothing but idling.',
    no: {
      ...engine.usual,
      id: 'read-anew',
      cause: 'The reading itself',
      act: 'Fit clean plugs, make a steady run under load, cut it off cleanly, and lay them side by side in the order of the cylinders. Then come back.',
      article: 'coils-and-condensers',
    },
    yes: {
      ask: 'Is a plug white, blistered, or with grey specks?',
      how: 'A glass, in daylight. Grey specks are metal off the crown: do not run it again before the crown has been looked at.',
      yes: {
        ask: 'Is its timing earlier than the figure?',
        how: 'Gap first, then lamp and indicator.',
        yes: spark.early,
        no: {
          ask: 'Does that cylinder hold in the leak test?',
          how: 'Pressure and suction, five minutes each.',
          no: fuel.airLeak,
          yes: fuel.smallJet,
        },
      },
      no: {
        ask: 'Is a plug wet?',
        how: 'Touch it to white paper: fuel dries, oil stays.',
        yes: {
          ask: 'Does that cylinder spark as well as the others?',
          how: 'In its cap on bare metal, away from the plug holes, fuel shut.',
          no: { ...spark.plug, cause: 'That cylinder does not fire: plug, cap, set or coil' },
          yes: {
            ask: 'Does the wet dry away from the paper?',
            how: 'Out of doors, a quarter of an hour. Petrol goes; a stain of oil stays where there was much of it.',
            yes: fuel.float,
            no: {
              ...fuel.airLeak,
              id: 'oil',
              measured: undefined,
              cause:
                'Oil in that cylinder: left from building, or drawn past the crank seal on the gearbox side',
            },
          },
        },
        no: {
          ask: 'Are they black and dry?',
          how: 'Soot that rubs off on a finger.',
          yes: {
            ask: 'Is it one cylinder only?',
            how: 'Side by side, in the order of the cylinders.',
            yes: { ...fuel.clip, cause: 'That carburettor is rich (too much petrol for its air)' },
            no: fuel.largeJet,
          },
          no: {
            ...engine.usual,
            id: 'right',
            cause: 'Nothing: tan to grey and all alike is as it should be',
            act: 'Leave jets and timing as they are. Write down what is in it.',
          },
        },
      },
    },
  },
};
