import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const oneCoil: Symptom = {
  id: 'one-coil',
  title: 'Spark at only one coil, or at all but one',
  also: [
    'spark at one plug only',
    'one coil dead',
    'no spark on one cylinder',
    'spark on two of three',
  ],
  first: {
    ask: 'Does the fault go along when plug and cap are changed with a neighbour’s?',
    how: 'Ignition off. Change plug and cap together, fuel shut, each plug in its cap on bare metal away from the plug holes. Turn it over and look which one is dark now.',
    yes: {
      ask: 'Does it go along with the plug alone?',
      how: 'Put the caps back and leave the plugs changed over.',
      yes: spark.plug,
      no: spark.lead,
    },
    no: {
      ask: 'Are there volts at the feed of the dead coil?',
      how: 'Meter from its feed to bare metal, ignition on, beside the reading of a coil that sparks.',
      no: spark.feed,
      yes: {
        ask: 'Does the fault go along when the wires from two sets to their coils are changed over?',
        how: 'Ignition off; change the points’ wires of the dead coil and of a good one at the coils. Turn it over by hand and only look: the sparks come at the wrong time, so the plugs stay out. Put the wires back afterwards.',
        no: spark.coil,
        yes: {
          ask: 'Does the set open and shut, clean, to its gap?',
          how: 'Feeler blades at the top of the lobe; look at both faces. Write the gap beside those of the other sets.',
          no: {
            ...spark.gap,
            cause: 'A set that does not open, does not shut, or is dirty',
            measured: undefined,
          },
          yes: {
            ask: 'Does it spark with another condenser?',
            how: 'Clip a good one in place, its case to the plate, the old one’s wire off.',
            yes: spark.condenser,
            no: spark.insulation,
          },
        },
      },
    },
  },
};
