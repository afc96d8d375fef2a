import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const noSpark: Symptom = {
  id: 'no-spark',
  title: 'No spark at any plug',
  also: ['no spark', 'dead ignition', 'does not spark', 'lost spark'],
  first: {
    ask: 'Are there volts at the coils’ feed, with the ignition on?',
    how: 'Voltmeter or lamp from each coil’s feed to bare metal of the engine. Read the volts, and compare them with those of the battery. A flywheel magneto has no feed, and questions of its own below.',
    no: spark.feed,
    yes: {
      ask: 'Does it spark with the stop wire off the points?',
      how: 'Only where the switch stops the engine by earthing: take its wire off, turn the engine over, look at the plug. The wire goes back before the engine can start. A switch that breaks the feed has been measured above: answer no.',
      yes: spark.cutOut,
      no: {
        ask: 'Do the volts at the insulated contact fall as the points shut, and rise as they open?',
        how: 'Meter rated for 1000 V from the contact to the engine, ignition on, turned by hand, fingers off: live points reach several hundred volts as they open. Read open, and shut: open they show the battery, shut less than about a quarter of a volt.',
        yes: {
          ask: 'Is there a spark when the lead alone, without its cap, is clipped near the engine?',
          how: 'Fuel shut, plugs in their holes. Clip the lead so that its end stands 5 mm from bare metal, take the hands off, and turn the engine over.',
          yes: { ...spark.lead, act: `${spark.lead.act} Then try each plug.` },
          no: {
            ask: 'Does the coil show its figure, and a reading from lead to terminal?',
            how: 'Battery off, both low-tension wires off, coil cold. Ohmmeter across the primary; then from the lead to one terminal.',
            yes: spark.condenser,
            no: spark.coil,
          },
        },
        no: {
          ask: 'Are there volts at the contact with the points open?',
          how: 'Put card between the contacts, ignition on, and read at the insulated side.',
          yes: spark.contacts,
          no: {
            ask: 'Do the volts come back with the set’s wire taken off the coil?',
            how: 'Ignition on, the coil’s wire to the points off: read at that terminal of the coil.',
            yes: {
              ask: 'Do they stay when the coil is joined to the set and the condenser alone is off?',
              how: 'Ignition off, condenser’s wire off, card still between the contacts, ignition on: read again.',
              yes: {
                ...spark.condenser,
                id: 'condenser-short',
                cause: 'A condenser that is shorted to earth',
              },
              no: spark.insulation,
            },
            no: { ...spark.coil, id: 'coil-open', cause: 'The coil’s primary is open' },
          },
        },
      },
    },
  },
};
