import * as fuel from '../causes-fuel.ts';
import * as engine from '../causes-engine.ts';
import * as spark from '../causes-ignition.ts';
import type { Action, Symptom } from '../types.ts';

const goodSpark =
  'Plug in its cap on bare metal, away from the plug holes, fuel shut. A thin one does not jump under compression.';
const ownTop =
  'All plugs out, in their caps on bare metal away from the holes, fuel shut, ignition on. Turn forwards by hand; a rod in the plug hole tells where the piston is. A coil with two leads sparks at both its plugs each time: a spare spark near the bottom does not count.';
const poor: Action = {
  ...spark.condenser,
  id: 'poor',
  cause: 'A poor spark: condenser, contacts, feed or coil',
  act: 'Go through “A poor spark” on this page. Most often it is the condenser, the contacts or the volts at the coil.',
};

export const noStart: Symptom = {
  id: 'spark-no-start',
  title: 'There is spark, and it does not start',
  also: [
    'will not start',
    'does not start',
    'wont start',
    'spark but no start',
    'first start fails',
    'hard to start',
    'does not fire',
    'hard to start cold',
  ],
  first: {
    ask: 'Are the plugs wet with fuel?',
    how: 'After some ten kicks take every plug out, and look at it and smell it. Outdoors, no flame, leads earthed.',
    yes: {
      ask: 'Does it fire once it has been blown dry, with new dry plugs?',
      how: 'Tap shut, ignition off, plugs out and earthed. Slides full open, turn it by hand until the holes blow dry, faces and sparks away from them. Fit dry plugs, slides shut and choke off, and try again.',
      yes: fuel.flooded,
      no: {
        ask: 'Is the spark fat and blue-white, with a snap?',
        how: goodSpark,
        no: poor,
        yes: {
          ask: 'Does each plug spark as its own piston comes just before its top?',
          how: ownTop,
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
        ask: 'Does it fire, if only for a moment, on a little fuel mixture down the plug hole?',
        how: 'From a syringe, two or three millilitres, plug back in, the can shut and carried away first. Stand clear of carburettor mouths.',
        yes: {
          ask: 'Does the crankcase hold its pressure?',
          how: 'The leak test of the sheet. Without its pumping no fuel comes up.',
          no: fuel.airLeak,
          yes: {
            ask: 'Has it reeds, and does one of them stand open?',
            how: 'Carburettor off, torch into the inlet: each petal lies on its seat all round. Where piston or disc opens the inlet, answer no.',
            yes: engine.reed,
            no: fuel.pilot,
          },
        },
        no: {
          ask: 'Is the spark of each plug fat and blue-white, with a snap?',
          how: goodSpark,
          no: { ...poor, id: 'poor-dry' },
          yes: {
            ask: 'Does each plug spark just before its own piston’s top, by the figure of the sheet?',
            how: ownTop,
            no: {
              ...spark.leads,
              id: 'moment',
              cause: 'The spark comes at the wrong moment: leads swapped, or the timing off',
              act: 'Where it comes far from the top, follow each lead from its coil to its plug, and each coil’s wire to its own set. Where it comes near the top, set gap and timing.',
            },
            yes: {
              ask: 'Is the compression alike on every cylinder?',
              how: 'Gauge in the plug hole, slide full open, the same kicks for each, ignition off. Write the readings side by side.',
              no: engine.compression,
              yes: engine.exhaustPort,
            },
          },
        },
      },
    },
  },
};
