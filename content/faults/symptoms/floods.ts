import * as fuel from '../causes-fuel.ts';
import type { Symptom } from '../types.ts';

export const floods: Symptom = {
  id: 'floods',
  title: 'It floods: fuel runs out of a carburettor or into the crankcase',
  also: [
    'floods',
    'flooded',
    'flooding',
    'overflows',
    'fuel runs out',
    'crankcase full of petrol',
    'carb floods',
    'carburettor floods',
    'carb overflows',
    'petrol runs out',
    'petrol drips from the carburettor',
    'overflow',
  ],
  atOnce:
    'Tap shut, ignition off, leads off the plugs and earthed. Wipe up, and let the vapour go. A flooded crankcase: plugs out, drain screw out where there is one, twistgrip full open, and turn it over by hand until the plug holes blow dry, faces and every spark away from them. Never kick an engine that is full: fuel does not compress, and a rod bends.',
  first: {
    ask: 'Does it stop when the float bowl is tapped lightly?',
    how: 'Handle of a screwdriver, engine cold, no flame. Grit in the float valve lets go.',
    yes: {
      ...fuel.valve,
      id: 'grit',
      cause: 'Grit in the float valve',
      act: 'Clean valve, bowl and tank filter, and prove the tap shuts. It comes again until the tank is clean.',
    },
    no: {
      ask: 'Is there fuel inside the float?',
      how: 'Bowl off over a can; take the float out and shake it at the ear.',
      yes: fuel.sunkFloat,
      no: {
        ask: 'Is the float height at its figure?',
        how: 'Tang just touching the needle; depth gauge from the gasket face.',
        no: fuel.float,
        yes: {
          ask: 'Does the valve hold the head of fuel with the float lifted by hand?',
          how: 'Pipe on, tap open, the float lifted gently, a can below: count a minute without a drop.',
          no: fuel.valve,
          yes: {
            ...fuel.valve,
            id: 'head',
            cause: 'The head of fuel is too high for the seat’s diameter, or the float catches',
            act: 'Work out in the calculator what the float must hold shut against that head. See that it moves freely over its whole way, and that the bowl’s gasket does not touch it.',
          },
        },
      },
    },
  },
};
