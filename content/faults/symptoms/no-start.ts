import * as fuel from '../causes-fuel.ts';
import * as engine from '../causes-engine.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const noStart: Symptom = {
  id: 'spark-no-start',
  title: 'There is spark, and it does not start',
  also: [
    'will not start',
    'does not start',
    'wont start',
    'spark but no start',
    'first start fails',
  ],
  first: {
    ask: 'Are the plugs wet with fuel?',
    how: 'After some ten kicks take every plug out, and look at it and smell it. Outdoors, no flame, leads earthed.',
    yes: {
      ask: 'Does it fire once it has been blown dry, with new dry plugs?',
      how: 'Clear it as the caution at the head says, fit dry plugs, slides shut and choke off, and try again.',
      yes: fuel.flooded,
      no: {
        ask: 'Is the spark fat and blue-white, with a snap?',
        how: 'Plug in its cap on bare metal, away from the plug holes, fuel shut. A thin one does not jump under compression.',
        no: {
          ...spark.condenser,
          cause: 'A poor spark: condenser, contacts, feed or coil',
          id: 'poor',
          act: 'Go through “A poor spark” on this page. Most often it is the condenser, the contacts or the volts at the coil.',
        },
        yes: {
          ask: 'Does each set open where its own piston stands just before the top?',
          how: 'Lamp across the points, indicator or rod in the plug hole: read the millimetres before the top at each cylinder.',
          no: spark.leads,
          yes: {
            ...spark.late,
            id: 'timing',
            cause: 'The timing is off its figure',
            measured: 'out',
          },
        },
      },
    },
    no: {
      ask: 'Does fuel run at the bowl’s drain?',
      how: 'Engine cold, a can under it, tap open: open the drain screw. It must run and go on running.',
      no: fuel.noFuel,
      yes: {
        ask: 'Does it fire on a teaspoon of fuel mixture down the plug hole?',
        how: 'From a syringe, two or three millilitres, plug back in, the can shut and carried away first. Stand clear of carburettor mouths.',
        yes: fuel.pilot,
        no: {
          ask: 'Does the crankcase hold its pressure?',
          how: 'The leak test of the sheet. Without its pumping no fuel comes up.',
          no: fuel.airLeak,
          yes: {
            ask: 'Is the compression alike on every cylinder?',
            how: 'Gauge in the plug hole, slide full open, the same kicks for each, ignition off. Write the readings side by side.',
            no: engine.compression,
            yes: {
              ask: 'Has it reeds, and does one of them stand open?',
              how: 'Carburettor off, torch into the inlet: each petal lies on its seat all round. Where piston or disc opens the inlet, answer no.',
              yes: engine.reed,
              no: engine.exhaustPort,
            },
          },
        },
      },
    },
  },
};
