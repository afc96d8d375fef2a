import * as engine from '../causes-engine.ts';
import * as fuel from '../causes-fuel.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const someCylinders: Symptom = {
  id: 'one-dead',
  title: 'It runs on some cylinders only',
  also: [
    'runs on two',
    'runs on one',
    'one cylinder dead',
    'one cylinder does not fire',
    'misses on one cylinder',
    'misfire',
    'cold exhaust pipe',
    'one cylinder not firing',
    'dead cylinder',
    'runs on one cylinder',
  ],
  first: {
    ask: 'Is the plug of the cold cylinder wet?',
    how: 'After a minute the cold exhaust pipe tells which one: feel near it with the back of the hand, not touching. Stop, and take its plug out.',
    yes: {
      ask: 'Does the fault go along when its plug is changed with a neighbour’s?',
      how: 'Engine stopped, gloves. Change the two plugs over, run half a minute outdoors, stop, and find the cold pipe again.',
      yes: spark.plug,
      no: {
        ask: 'Does it spark as well as its neighbours?',
        how: 'Plugs in their caps on bare metal, away from the plug holes, fuel shut.',
        no: {
          ...spark.condenser,
          id: 'spark',
          cause: 'No spark or a poor one at this cylinder',
          act: 'Go through “Spark at only one coil” on this page: cap, feed, set, condenser, coil.',
        },
        yes: {
          ask: 'Does its plug spark as its own piston comes just before the top?',
          how: 'All plugs out, in their caps on bare metal away from the holes, fuel shut, ignition on. Turn forwards by hand; a rod in the plug hole tells where the piston is. A coil with two leads sparks at both its plugs each time: a spare spark near the bottom does not count.',
          no: spark.leads,
          yes: {
            ...fuel.flooded,
            cause: 'It floods: fuel level or float valve of this carburettor',
          },
        },
      },
    },
    no: {
      ask: 'Does its bowl fill as fast as the others?',
      how: 'Engine cold, can under it: drain the bowl, open the tap, drain it again after a minute and compare.',
      no: fuel.noFuel,
      yes: {
        ask: 'Does it join in when its slide is opened by hand at the cable?',
        how: 'At a small opening lift this slide alone a little by its cable, engine in neutral. It joins in above idle and drops out at idle.',
        yes: fuel.pilot,
        no: {
          ask: 'Does it hold its pressure in the leak test?',
          how: 'Pressure and suction, five minutes each, beside the figure in the sheet.',
          no: fuel.airLeak,
          yes: engine.compression,
        },
      },
    },
  },
};
