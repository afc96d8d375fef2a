import * as engine from '../causes-engine.ts';
import * as fuel from '../causes-fuel.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const shortOfPower: Symptom = {
  id: 'short-of-power',
  title: 'It runs, and is short of power on every cylinder',
  also: [
    'short of power',
    'no power',
    'gutless',
    'slow',
    'will not rev',
    'lacks power',
    'no top speed',
    'sluggish',
    'will not rev out',
    'blocked exhaust',
  ],
  first: {
    ask: 'Are the points gaps at their figure?',
    how: 'Feeler blades at the top of the lobe. As the heel wears the gap closes up, and the timing goes late.',
    no: spark.gap,
    yes: {
      ask: 'Does every slide reach full opening?',
      how: 'Engine stopped, twistgrip hard open: look into each mouth for an edge that still shows.',
      no: {
        ...fuel.slides,
        cause: 'The slides do not open fully',
        act: 'Look for an outer cable out of its seat, a frayed cable, or a twistgrip that turns too little. Then take up the play at the adjusters, all alike, until every slide clears its bore with the twistgrip hard open. Leave each some play when it is shut.',
        measured: undefined,
      },
      yes: {
        ask: 'Is any cylinder later than its figure?',
        how: 'Lamp and indicator, turned forwards.',
        yes: spark.late,
        no: {
          ask: 'Does it misfire only when it turns fast?',
          how: 'Listen on a steady pull, out of doors, clear of all that turns.',
          yes: spark.bounce,
          no: {
            ask: 'Is the compression alike and at its figure?',
            how: 'Gauge in the plug hole, slides full open, the same kicks for each, ignition off.',
            no: engine.compression,
            yes: engine.exhaustPort,
          },
        },
      },
    },
  },
};
