import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const poorSpark: Symptom = {
  id: 'poor-spark',
  title: 'A poor spark: thin, yellow or orange, without a snap',
  also: [
    'yellow spark',
    'thin spark',
    'orange spark',
    'faint spark',
    'points burn',
    'burnt points',
    'points pitted',
    'points arc',
    'sparks at the points',
    'points spark blue',
    'blue flashing at the points',
    'points flash',
    'brown spark',
  ],
  first: {
    ask: 'Is it good with a new dry plug, its gap set?',
    how: 'Fuel shut, the plug in its cap on bare metal away from the plug holes. Good is short, fat, blue-white and with a snap.',
    yes: spark.plug,
    no: {
      ask: 'Is there a bright, steady, blue-white flashing at the contacts?',
      how: 'Look after dark or in shade, while somebody turns it over. A small, dull flicker is as it should be.',
      yes: spark.condenser,
      no: {
        ask: 'Has the coil its full volts while the points are shut?',
        how: 'Points shut, ignition on, for a few seconds only. Read across the coil’s two terminals and then across the battery: no more than about half a volt between them, on 6 V half of that. A flywheel magneto has no feed, and questions of its own below.',
        yes: {
          ask: 'Do gap and dwell agree with the sheet?',
          how: 'Feeler blades at the top of the lobe. A wide gap leaves the coil little time to fill.',
          no: spark.gap,
          yes: {
            ask: 'Does the coil show its primary figure, cold?',
            how: 'Ohmmeter across it, both wires off, less what the meter’s leads show.',
            no: spark.coil,
            yes: {
              ask: 'Is it good straight from the lead, without the cap?',
              how: 'Fuel shut, plugs in their holes. Clip the lead so that its end stands 5 mm from bare metal, take the hands off, and turn the engine over.',
              yes: spark.lead,
              no: spark.polarity,
            },
          },
        },
        no: {
          ask: 'Is a volt or more lost between the contact and the engine, points shut?',
          how: 'Meter from the insulated contact to bare metal of the engine, points shut. Less than 0.2 V is right.',
          yes: spark.contacts,
          no: {
            ask: 'Is more than about 0.2 V lost between plate and battery earth?',
            how: 'Meter from the plate to the battery’s earth post, ignition on, points shut.',
            yes: spark.earth,
            no: spark.feed,
          },
        },
      },
    },
  },
};
