import * as fuel from '../causes-fuel.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const uneven: Symptom = {
  id: 'uneven',
  title: 'It shakes at small opening and smooths out above',
  also: ['shakes', 'uneven', 'rough', 'out of balance', 'vibrates'],
  first: {
    ask: 'Do all exhaust pipes get hot alike in the first minute?',
    how: 'Back of the hand near each pipe, not touching.',
    no: {
      ...fuel.pilot,
      id: 'cold-pilot',
      cause: 'One cylinder drops out at idle, most often by its pilot jet',
    },
    yes: {
      ask: 'Are the slides together at a small opening?',
      how: 'Drill shanks under them, engine stopped. Count them out again.',
      no: fuel.slides,
      yes: {
        ask: 'Are air and idle screws alike?',
        how: 'Count the turns of each to its seat, write them down, and turn it back.',
        no: fuel.airScrew,
        yes: {
          ask: 'Do all cylinders fire at the same figure?',
          how: 'Gap, then lamp and indicator: the spread between them counts.',
          no: {
            ...spark.late,
            id: 'spread',
            cause: 'The timing differs from cylinder to cylinder',
            measured: 'out',
          },
          yes: fuel.float,
        },
      },
    },
  },
};
