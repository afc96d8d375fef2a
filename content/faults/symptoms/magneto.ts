import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const magneto: Symptom = {
  id: 'magneto',
  title: 'A flywheel magneto with no spark, or a poor one',
  also: [
    'magneto no spark',
    'magneto poor spark',
    'flywheel magneto',
    'no battery ignition',
    'weak magnets',
    'magneto thin spark',
  ],
  first: {
    ask: 'Does it spark with the stop wire off the points?',
    how: 'Such a switch stops the engine by earthing. Take its wire off, turn the engine over, look at the plug. The wire goes back before the engine can start.',
    yes: spark.cutOut,
    no: {
      ask: 'Does the set open and shut, clean, to its gap?',
      how: 'Feeler blades at the top of the lobe, through the window of the flywheel where there is one; look at both faces.',
      no: {
        ...spark.gap,
        cause: 'A set that does not open, does not shut, or is dirty',
        measured: undefined,
      },
      yes: {
        ask: 'With card between the contacts and the coil’s wire off, is the set clear of earth?',
        how: 'Ohmmeter on its highest range, or an insulation tester, from the insulated contact to bare metal. A coil left on shows a few ohms, and proves nothing.',
        no: {
          ...spark.insulation,
          cause: 'The insulated side of the set, or a shorted condenser, touches earth',
          act: `Take the condenser’s wire off and measure again: if the way to earth is gone, change the condenser. ${spark.insulation.act}`,
          measured: undefined,
        },
        yes: {
          ask: 'Has the coil both its windings, cold?',
          how: 'Points’ wire off. One end of both windings is earthed at the core: ohmmeter from the points’ wire to the core, an ohm or so (common practice), and from the plug’s lead to the core, some thousands.',
          no: spark.coil,
          yes: {
            ask: 'Is the rotor’s key whole, and the rotor fast on its taper?',
            how: 'Hold the crank and rock the flywheel. Then draw it off with its own puller and look at key and keyway.',
            no: spark.rotorKey,
            yes: {
              ask: 'Does the lead spark by itself, its cap taken off?',
              how: 'Fuel shut, plugs in their holes. Clip the lead so that its end stands 5 mm from bare metal, take the hands off, and turn the engine over fast.',
              yes: { ...spark.lead, act: `${spark.lead.act} Then try each plug.` },
              no: spark.magnet,
            },
          },
        },
      },
    },
  },
};
