import * as engine from '../causes-engine.ts';
import type { Symptom } from '../types.ts';

export const metalNoise: Symptom = {
  id: 'metal-noise',
  title: 'A hard knock once a turn',
  also: ['metal noise', 'hard knock', 'piston slap', 'big end knock', 'rattle'],
  atOnce: 'Stop it, and do not start it again before the cause is found.',
  first: {
    ask: 'Does it turn by hand through two turns, plugs out, with nothing that touches?',
    how: 'Ring spanner, forwards, ignition off. Stop at any resistance, and note the degrees and the cylinder.',
    no: {
      ...engine.squish,
      measured: undefined,
      cause: 'Something touches: crown and head first, then any other part that turns',
      act: 'Head off: a bright mark on crown or head says that they meet. If there is none, look where it bound, at the degrees you noted: bore and ring ends, web and case, rotor and plate. Before it goes together measure the squish with solder on both sides along the pin.',
    },
    yes: {
      ask: 'Is there up-and-down play at a big end?',
      how: 'Indicator on the crown near the top: push and pull the rod, and read what the crank does not explain.',
      yes: engine.play,
      no: {
        ask: 'Was the noise worst cold, and less when warm?',
        how: 'From memory: do not run it to find out.',
        yes: engine.clearance,
        no: {
          ask: 'Is the squish at its figure?',
          how: 'Solder on both sides along the pin, over the top by hand. Less than its figure touches at speed, when the rod stretches.',
          no: { ...engine.squish, id: 'squish-small' },
          yes: {
            ...engine.play,
            id: 'mains',
            cause: 'Main bearings, or a rotor or primary gear loose on its shaft',
            act: 'Check rotor and primary nut by torque, and the key under each. Turn the mains by hand: rattle or gravel ends the run.',
          },
        },
      },
    },
  },
};
