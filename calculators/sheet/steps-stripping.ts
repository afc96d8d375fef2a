import type { Step } from './steps.ts';

/** Each carburettor apart, clean, and its pilot proved. */
export const strippingSteps = {
  strip: {
    stage: 'carburettors',
    title: 'Strip each carburettor and count its parts',
    why: 'How it was set is the best guess at how it ran. Parts that have worn together must go back together.',
    how: [
      'Photograph it from all sides, hoses and cables on. Mark body and every part 1, 2, 3, and never mix them.',
      'Air screw gently in until it just seats: count the turns and write them. Then take it out.',
      'Needle groove, sizes stamped on jets and slide, which way up the float sits: into the notes.',
      'Lay the parts out in the order in which they came, and count them: as many for each carburettor.',
    ],
    tool: 'Screwdrivers that fill the slot, trays with numbers, camera',
    caution:
      'Outdoors or well aired, no heater, flame or spark, battery off. Drain it into a lidded metal tin. A screw forced onto its seat spreads the drilling.',
    reading: {
      label: 'Air screw as it was, turns out',
      per: 'Carburettor',
      unit: 'none',
      min: 0,
      max: 10,
      why: 'a screw further out falls out',
      step: 0.25,
      judging: 'noted',
      tooHigh: '',
      tooLow: '',
    },
    after: {},
    calculators: [],
    articles: ['stripping-and-cleaning'],
  },
  clean: {
    stage: 'carburettors',
    title: 'Clean each carburettor and prove its passages',
    why: 'A film thinner than a hair takes a third of a pilot jet. An engine that has stood starts on the choke and will not idle.',
    how: [
      'Rubber, plastic, float and needle out first. Then from mild to strong: hot water and washing-up liquid, white spirit, carburettor cleaner.',
      'White crust is corrosion by water, and its powder blocks jets: off with wood or nylon, wet, and wash every passage. Where it has eaten a seat or a thread, the part is done.',
      'Prove each passage: cleaner in at one end, a jet out at every other. A drilling that answers weakly is not clear.',
      'Float in hot water, outdoors: bubbles are a leak. Needle and seat by a rubber bulb: shut, no air passes.',
      'Dry it at once, with air or a warm place.',
    ],
    tool: 'Brushes, cleaner with a thin tube, syringe or bulb, can of air',
    caution:
      'Eye protection and gloves: jets spit back. Compressed air away from you, never by mouth: petrol and cleaner poison, most of all in the lungs. No wheel cleaner: some hold hydrofluoric acid. Never heat what has held petrol with a flame.',
    after: {},
    waitsFor: ['strip'],
    calculators: [],
    articles: ['stripping-and-cleaning'],
  },
  pilot: {
    stage: 'carburettors',
    title: 'Measure the pilot jets',
    why: 'The pilot feeds the engine from shut to an eighth open, and it blocks first, since its hole is the smallest. One blocked is one cylinder that does not idle.',
    how: [
      'Hold it to the light: a round, bright, sharp-edged hole, as its twin from the next carburettor.',
      'The largest pin that drops in by its own weight is the bore. A pin only measures: never push or turn it.',
      'No pin so thin? 20 ml of water with a drop of washing-up liquid through each, timed: jets of one number agree within a few per cent.',
    ],
    tool: 'Pin gauges (copper or brass ones are kinder), magnifier',
    caution:
      'Nothing harder than a nylon bristle or soft copper goes in, and then air, away from you.',
    reading: {
      label: 'Pilot jet bore',
      per: 'Carburettor',
      unit: 'mm',
      min: 0.05,
      max: 3,
      why: 'no pilot jet is smaller or larger',
      step: 0.01,
      judging: 'figure',
      target: 'pilot-jet',
      tolerance: 'pilot-tolerance',
      tooHigh: 'Change this jet: it is larger by',
      tooLow: 'Clean or change this jet: it is smaller by',
      moves: 'Another pilot jet wants another place of the air screw: set that after it.',
    },
    after: { clean: 'What came out with the dirt was part of the bore.' },
    calculators: [],
    articles: ['stripping-and-cleaning', 'which-circuit-at-which-throttle'],
  },
} as const satisfies Record<string, Step>;
