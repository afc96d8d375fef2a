import * as engine from '../causes-engine.ts';
import * as fuel from '../causes-fuel.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const runsOn: Symptom = {
  id: 'runs-on',
  title: 'It runs on with the ignition off',
  also: [
    'runs on',
    'will not stop',
    'keeps running',
    'does not stop',
    'dieseling',
    'runs with the key off',
  ],
  atOnce:
    'Shut the twistgrip. A flat rigid board over every inlet, or stall it: pull the clutch lever (the drive is free), top gear, brake of the driven wheel hard on, let the clutch lever out (the drive takes hold). Without a clutch there is only the board. Then leave it until it is cold.',
  first: {
    ask: 'Does the switch stop the spark at every plug?',
    how: 'Cold, all plugs in their caps on bare metal away from the plug holes, fuel shut. Turn it over and throw the switch.',
    no: spark.noCutOut,
    yes: {
      ask: 'Does every slide fall on its stop?',
      how: 'Open and let go, bars turned both ways.',
      no: fuel.slide,
      yes: {
        ask: 'Do the plugs look white, or is the head crusted with carbon?',
        how: 'Plugs out, cold; torch down the plug holes.',
        yes: engine.hotPlug,
        no: {
          ask: 'Does the engine hold in the leak test?',
          how: 'Pressure and suction, five minutes each.',
          no: fuel.airLeak,
          yes: fuel.smallJet,
        },
      },
    },
  },
};
