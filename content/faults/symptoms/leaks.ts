import * as fuel from '../causes-fuel.ts';
import type { Symptom } from '../types.ts';

export const leaks: Symptom = {
  id: 'leaks',
  title: 'It leaks: fuel, oil or gas where none should be',
  also: [
    'leaks',
    'drips',
    'weeps',
    'oil leak',
    'petrol leak',
    'smokes from gearbox oil',
    'blowing gasket',
    'leaks petrol',
    'petrol leaks',
    'carb leaks',
    'carburettor leaks',
    'blown head gasket',
    'head gasket blown',
  ],
  atOnce:
    'Petrol: tap shut, no switch, flame or hot pipe near. Wipe up, and let the vapour go before you make a spark.',
  first: {
    ask: 'Is it petrol?',
    how: 'Wipe it dry, wait, and smell a white cloth. Petrol dries and leaves a stain of oil; oil stays.',
    yes: {
      ask: 'Does it come out of the overflow or the carburettor’s mouth?',
      how: 'Tap open for five minutes, engine cold, a can below.',
      yes: fuel.valve,
      no: fuel.bowlJoint,
    },
    no: {
      ask: 'Is there blue-white smoke that goes on, and does the gearbox lose oil?',
      how: 'Dip the gearbox, run it outdoors for some ten minutes in all, two or three at a time where no fan cools it, look from upwind, and dip again cold.',
      yes: {
        ...fuel.airLeak,
        measured: undefined,
        id: 'gear-seal',
        cause: 'The crank seal on the gearbox side draws oil',
      },
      no: {
        ask: 'Is it black and wet at the joint of the head, barrel or exhaust?',
        how: 'Look with a torch, cold, after wiping.',
        yes: {
          ...fuel.airLeak,
          measured: undefined,
          id: 'gasket',
          cause: 'A head, base or exhaust joint that blows',
          act: 'Check the nuts by torque, cold. If it still shows, true the faces on plate glass and fit a new gasket. A new gasket moves the squish: measure it, then make the leak test.',
        },
        no: fuel.airLeak,
      },
    },
  },
};
