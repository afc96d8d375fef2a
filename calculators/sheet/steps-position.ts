import type { Step } from './steps.ts';

const discOff = 'The disc comes off before the case is opened, and goes back a little different.';
const sealOff = 'The disc comes off for a seal behind it, and goes back a little different.';

/** From a dry engine to the true top. */
export const positionSteps = {
  oil: {
    stage: 'position',
    title: 'Oil it before the first turn',
    why: 'An engine that has stood is dry inside. Bores, big ends and main bearings score in the first turns, and a rusty bore tears its rings.',
    how: [
      'Plugs out. Look into every bore with a torch: rust or a stuck ring is seen to before anything turns.',
      'Put about 5 ml of two-stroke oil through each plug hole, round the wall (common practice).',
      'Put as much through each inlet or transfer port, for the big end and the main bearings below.',
      'Wait an hour. Then turn it by hand, forwards, two full turns. Stop at anything that binds.',
    ],
    tool: 'Two-stroke oil, syringe with a soft tube, torch, ring spanner',
    caution:
      'Ignition off, kick lever folded away. What runs down into the crankcase is drained before the first start: oil does not compress, and a cylinder full of it bends a rod.',
    after: {},
    calculators: [],
    articles: ['proving-a-mixed-engine'],
  },
  measure: {
    stage: 'position',
    title: 'Measure bore, stroke and rod',
    why: 'Every timing figure is turned into a piston position by stroke and rod. On an engine of mixed parts neither can be taken from a book.',
    how: [
      'Say first how many cylinders it has: every step from here has a box for each.',
      'Enter bore, stroke, rod and pin offset in their boxes, then press “Done”.',
    ],
    tool: 'Depth gauge or indicator, caliper, inside micrometer',
    figures: ['cylinders', 'bore', 'stroke', 'rod', 'offset'],
    after: {},
    waitsFor: ['oil'],
    movedBy: {
      'rod-play': 'Another rod may have another length, and another crank another stroke.',
      clearance:
        'A barrel that was bored has another bore, and another piston may have another pin offset.',
    },
    calculators: ['piston-position'],
    articles: ['where-the-piston-is', 'proving-a-mixed-engine'],
  },
  top: {
    stage: 'position',
    title: 'Find true top dead centre',
    why: 'Near the top the piston hardly moves, so the highest reading of an indicator is a guess of a degree or more. A stop on both sides of the top halves the error out.',
    how: [
      'Engine in parts: first the crank and the piston, this once the head is on.',
      'Turn gently forwards until the piston touches the stop, and read the disc: so many degrees before its zero.',
      'Turn the other way until it touches again, and read: so many degrees past its zero.',
      'The disc is off by (past − before) / 2. Turn it on the crank by that, and stop the piston on both sides once more.',
      'Write what is left: + where the disc stands past its zero at the true top, counted the way the engine turns.',
      'With several cylinders the disc is zeroed on cylinder 1 and stays so. At each other one write what it shows at the true top, 120.2 say. Where the sheet knows that its set stands at 120°, that is taken as 0.2° past it; where it does not, take off the degrees by which its top comes after that of cylinder 1.',
    ],
    tool: 'Positive stop or indicator in the plug hole, degree disc, fixed pointer',
    caution:
      'Never turn an engine backwards by the nut or bolt of its rotor: it may undo. Turn it back by another end of the crank, or by the wheel in gear. Gently against the stop: one bent or pushed through a crown costs the piston. Ignition off, plugs out, kick lever folded away.',
    reading: {
      label: 'Disc at the true top (+ past its zero)',
      per: 'Cylinder',
      unit: 'deg',
      min: -30,
      max: 30,
      why: 'a disc further off has been set to another mark or another cylinder',
      step: 0.1,
      judging: 'zero',
      tolerance: 'top-tolerance',
      tooHigh: 'Turn the disc on the crank, against the way the engine turns, by',
      tooLow: 'Turn the disc on the crank, the way the engine turns, by',
      moves:
        'Every figure read from the disc moves with it: where the ports open, and a timing read in degrees.',
      movesAll: 'One disc shows every cylinder: turned on the crank for one, it moves them all.',
    },
    after: {},
    waitsFor: ['oil'],
    movedBy: {
      'run-out': discOff,
      'end-float': discOff,
      'rod-play': discOff,
      clearance:
        'Another piston may have another pin offset, which moves the true top by nearly half a degree for each millimetre.',
      leak: sealOff,
      suction: sealOff,
    },
    takes: { 'find-tdc': 'tdc-reading' },
    calculators: ['find-tdc'],
    articles: ['finding-top-dead-centre'],
  },
} as const satisfies Record<string, Step>;
