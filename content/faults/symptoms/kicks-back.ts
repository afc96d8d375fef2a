import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const kicksBack: Symptom = {
  id: 'kicks-back',
  title: 'It kicks back, or runs backwards',
  also: [
    'kicks back',
    'kickback',
    'kick back',
    'runs backwards',
    'breaks the kick lever',
    'ignition too early',
    'timing too early',
    'fires too early',
    'too much advance',
  ],
  atOnce: 'Switch off. Do not kick again until the timing of every cylinder is measured.',
  first: {
    ask: 'Is every points gap at its figure?',
    how: 'Plugs out, ignition off: feeler blades at the top of the lobe, set by set. A wider gap fires earlier.',
    no: spark.gap,
    yes: {
      ask: 'Is the rotor’s key whole, and the rotor fast on its taper?',
      how: 'Where a flywheel or a cam sits on a taper of the crank: hold the crank and rock it, then draw it off with its own puller and look. If nothing sits on a taper: answer yes.',
      no: spark.rotorKey,
      yes: {
        ask: 'Does the disc stand at zero at the true top of cylinder 1?',
        how: 'Positive stop from both sides: the two readings should be alike.',
        no: spark.top,
        yes: {
          ask: 'Does any cylinder fire earlier than the figure in the sheet?',
          how: 'Lamp across the points, turned forwards, and read each piston below its top. One too early is enough.',
          yes: spark.early,
          no: {
            ask: 'Does each lead go to the cylinder whose set has just opened?',
            how: 'Turn forwards to each opening, and follow wire, coil and lead to the plug.',
            no: spark.leads,
            yes: {
              ...spark.early,
              id: 'slow-kick',
              measured: undefined,
              cause: 'The figure is too early to be kicked slowly',
              act: 'Kick right through, from just past the top. If it still kicks back, hold the figure against the maker’s for this engine: one that was given for another rod or with a governor is too early. Convert it, and set it anew.',
              calculator: 'piston-position',
              article: 'what-a-degree-is-worth',
            },
          },
        },
      },
    },
  },
};
