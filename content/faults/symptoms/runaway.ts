import * as fuel from '../causes-fuel.ts';
import * as engine from '../causes-engine.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const screams: Symptom = {
  id: 'runs-away',
  title: 'It screams: it revs by itself and does not heed the twistgrip',
  also: [
    'screams',
    'runs away',
    'runaway',
    'races by itself',
    'revs by itself',
    'revs hang',
    'stuck throttle',
    'revs up by itself',
    'revs on its own',
    'revs rise by themselves',
    'engine will not stop',
    'will not stop',
    'throttle stuck open',
    'throttle sticks open',
  ],
  atOnce:
    'Switch off and shut the twistgrip. Runs it on: a flat rigid board over every inlet. Or stall it: pull the clutch lever (the drive is free), top gear, the brake of the driven wheel hard on, and let the clutch lever out at once (the drive takes hold). Without a clutch there is only the board. Do not start it again before the cause is found.',
  first: {
    ask: 'Does every slide fall on its stop by itself?',
    how: 'Engine stopped and cold. Open and let go, with the bars turned to both sides; look into each mouth with a torch.',
    no: fuel.slide,
    yes: {
      ask: 'Did the switch stop the spark of every coil?',
      how: 'All plugs in their caps on bare metal away from the plug holes, fuel shut. Turn it over and throw the switch.',
      no: {
        ...spark.noCutOut,
        act: `${spark.noCutOut.act} That is not why it raced: then go on with the leak test.`,
      },
      yes: {
        ask: 'Do crankcase and cylinder hold under pressure and under suction?',
        how: 'Leak test, five minutes each way. A crank seal that holds pressure can still let air in under suction.',
        no: fuel.airLeak,
        yes: {
          ask: 'Did the bowls stay full?',
          how: 'Drain each bowl into a can and compare. It races lean as the bowls run empty.',
          no: fuel.noFuel,
          yes: engine.hotPlug,
        },
      },
    },
  },
};
