import * as fuel from '../causes-fuel.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const bogs: Symptom = {
  id: 'bogs',
  title: 'It bogs: it hesitates or dies as the twistgrip is opened',
  also: [
    'bogs',
    'bogs down',
    'hesitates',
    'flat spot',
    'stumbles',
    'dies when opened',
    'falls flat',
  ],
  first: {
    ask: 'Is it better with the choke a little on?',
    how: 'Warm, at the opening where it bogs, for a moment only. Better means that it was weak (lean: too little petrol for its air) there.',
    yes: {
      ask: 'Does the bowl stay full on a long pull?',
      how: 'Cut off clean at the end of a pull, tap shut, and drain each bowl into a can: compare.',
      no: fuel.noFuel,
      yes: {
        ask: 'Does the engine hold in the leak test?',
        how: 'Pressure and suction, five minutes each, before any jet is changed.',
        no: fuel.airLeak,
        yes: {
          ask: 'Is it just off idle?',
          how: 'By tape marks on the twistgrip: below an eighth.',
          yes: fuel.pilot,
          no: {
            ask: 'Is it between an eighth and a quarter open?',
            how: 'By the tape marks, warm, in neutral and then under load.',
            yes: { ...fuel.cutaway, id: 'weak-cutaway' },
            no: {
              ask: 'Is it below three quarters?',
              how: 'By the tape marks, under load.',
              yes: {
                ...fuel.clip,
                cause:
                  'Weak (lean: too little petrol for its air) in the middle: clip too near the top, or the wrong needle',
                act: 'Count the grooves from the top, 1 the highest: all cylinders alike. One groove down is richer. If they are right, hold needle and needle jet against their figures. Wear is not the cause: it makes the middle rich.',
              },
              no: fuel.smallJet,
            },
          },
        },
      },
    },
    no: {
      ask: 'Are the slides together at a small opening?',
      how: 'Drill shanks under the slides, engine stopped. Count them out again.',
      no: fuel.slides,
      yes: {
        ask: 'Are gap and timing at their figures?',
        how: 'Feeler blades; lamp and indicator at every cylinder. Late is dull.',
        no: spark.late,
        yes: {
          ask: 'Is the float height at its figure in every bowl?',
          how: 'Tang just touching the needle.',
          no: fuel.float,
          yes: {
            ask: 'Is it between an eighth and a quarter open?',
            how: 'By tape marks on the twistgrip, warm, in neutral and then under load.',
            yes: fuel.cutaway,
            no: {
              ...fuel.clip,
              id: 'rich-clip',
              cause: 'Rich (too much petrol for its air) in the middle: clip, needle or needle jet',
            },
          },
        },
      },
    },
  },
};
