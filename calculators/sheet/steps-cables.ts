import type { Step } from './steps.ts';

/** Cables, screws and slides. */
export const cableSteps = {
  cables: {
    stage: 'carburettors',
    title: 'Fit slides and cables, and leave them play',
    why: 'A cable without play holds its slide open, and the engine races when the bars are turned. A slide that hangs does not shut at all.',
    how: [
      'Cutaway towards the air filter. Without its spring the slide drops through its whole travel by its own weight; with it, it shuts with a click.',
      'Cable clean, not frayed, oiled, its nipple and outer seated at both ends.',
      'Play: how far the outer can be drawn out of the adjuster before the slide moves, grip shut. Bars to both sides: write the smallest.',
    ],
    tool: 'Caliper or rule, light oil, spanners',
    caution:
      'Tap shut, engine cold. A slide that does not fall shut by itself is a runaway (an engine that revs by itself) waiting to happen: find what holds it before you go on.',
    reading: {
      label: 'Play of the cable',
      per: 'Carburettor',
      asManyAs: 'carburettors',
      unit: 'mm',
      min: 0,
      max: 30,
      why: 'a cable with more is unhooked',
      step: 0.5,
      judging: 'at-least',
      target: 'least-play',
      byThread: true,
      tooHigh: '',
      tooLow: 'Turn its adjuster in, those of several carburettors alike. Its play is only',
      moves:
        'An adjuster that was turned moves its slide: idle screws and the slides together after it, and that it can be stopped.',
    },
    after: {
      cutaway: 'Another slide hangs on its cable a little different.',
      clip: 'To move a clip the slide comes off its cable, and goes back a little different.',
    },
    movedBy: {
      slides: 'A cable that was taken up to raise its slide has lost as much of its play.',
    },
    fallsAway: { by: 'throttle-slides', when: (n) => n === 0, why: 'no slide hangs on a cable' },
    calculators: ['slide-balance'],
    articles: ['opening-all-slides-together'],
    series: { 'slide-balance': 'free-play' },
  },
  screws: {
    stage: 'carburettors',
    title: 'Set the air and idle screws to a start',
    why: 'They decide the mixture and the opening at idle. All alike, they let the engine start; the engine itself decides the rest.',
    how: [
      'Air screw: in until it just seats, without force, then out by the turns in the sheet. Out lets in more air, which is leaner.',
      'Idle screw: until the slide just lifts off its lowest place, by the amount in the sheet; all alike.',
      'Cables slack while you do it. The slides are brought together after it.',
    ],
    tool: 'Screwdriver that fits, drill shanks',
    caution:
      'Engine stopped. An idle screw far in holds its slide open: the engine then races and does not stop by the slide.',
    figures: ['air-screw', 'idle-lift'],
    after: {
      clean: 'The air screw has been out.',
      pilot: 'Another pilot jet wants another place of the air screw.',
      float: 'Another fuel level makes the idle richer or leaner.',
      cutaway: 'Another slide comes down on its screw elsewhere.',
      clip: 'The slide has been out, and may come down on its screw elsewhere.',
      cables: 'A cable without play holds its slide off its idle screw.',
    },
    movedBy: {
      slides: 'A cable that was taken up may hold its slide off its idle screw.',
    },
    fallsAway: {
      by: 'pilot-jets',
      when: (n, { 'throttle-slides': slides }) => n === 0 && slides === 0,
      why: 'no screw rules its idle',
    },
    calculators: ['slide-balance'],
    articles: ['which-circuit-at-which-throttle'],
  },
  slides: {
    stage: 'carburettors',
    title: 'Bring the slides together',
    why: 'A slide that opens first does the work of the others. At a small opening the thickness of a sheet of paper is a large share of it.',
    how: [
      'Open the twistgrip to a small opening, measure under each slide, turn the cable adjusters: out raises the slide.',
      'Then see that every one shuts on its idle screw, and that the bars, turned both ways, do not pull a cable.',
    ],
    tool: 'Drill shanks as pin gauges, spanners',
    caution:
      'Engine stopped, ignition off. Count the shanks out from under the slides before the engine is turned: a slide held open lets it run away (rev by itself).',
    reading: {
      label: 'Opening',
      per: 'Carburettor',
      asManyAs: 'carburettors',
      unit: 'mm',
      min: 0,
      max: 60,
      why: 'no slide of such an engine opens further',
      step: 0.05,
      judging: 'together',
      tolerance: 'slide-tolerance',
      tooHigh: 'Lower this slide by',
      tooLow: 'Raise this slide by',
      moves:
        'A cable that is taken up loses its play and may hold the slide off its idle screw: measure the play, try the idle screws, and that it can be stopped, after it.',
    },
    after: {
      cutaway: 'Another slide hangs on its cable a little different.',
      clip: 'To move a clip the slide comes off its cable, and goes back a little different.',
      cables: 'An adjuster that was turned moves its slide.',
      screws: 'An idle screw that was turned changes the play of its cable.',
    },
    fallsAway: {
      by: 'cylinders',
      when: (n, { carburettors, 'throttle-slides': slides }) =>
        n === 1 || carburettors === 1 || slides === 0,
      why: 'no slide has another to open with',
    },
    calculators: ['slide-balance'],
    articles: ['opening-all-slides-together'],
    series: { 'slide-balance': 'opening' },
  },
} as const satisfies Record<string, Step>;
