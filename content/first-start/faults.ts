import type { StepId } from '../../calculators/sheet/steps.ts';

/** One thing to look at, in order of what is likely and quick to measure. */
export interface Look {
  /** What to measure or try, and what it tells. */
  readonly look: string;
  /** The step of the job that measures it. */
  readonly step?: StepId;
  readonly calculator?: string;
}

export interface Fault {
  readonly id: string;
  readonly symptom: string;
  /** What must be done before anything is looked at. */
  readonly atOnce?: string;
  readonly looks: readonly Look[];
}

/** From symptom to the measured figure. Common practice throughout, in the usual order. */
export const faults: readonly Fault[] = [
  {
    id: 'runs-away',
    symptom: 'It revs by itself and does not heed the slide',
    atOnce:
      'Switch off. If it runs on, close every inlet with its board, tap shut; on a machine that stands on its wheels, brake hard on, top gear, and let the clutch take up sharply to stall it. Stand clear of wheel, chain and flywheel. Do not reach across it.',
    looks: [
      {
        look: 'A slide stuck or a cable too short: does each one fall on its stop?',
        step: 'slides',
        calculator: 'slide-balance',
      },
      { look: 'Air past a seal or joint: what is lost in five minutes?', step: 'leak' },
      {
        look: 'Weak for want of fuel: float height and flow through the valve.',
        step: 'float',
        calculator: 'float-level',
      },
      { look: 'Did the switch earth every coil?', step: 'stop' },
    ],
  },
  {
    id: 'kicks-back',
    symptom: 'It kicks back at the lever or runs backwards',
    atOnce: 'Switch off; do not kick again until the timing is measured.',
    looks: [
      {
        look: 'Timing of every cylinder: one too early is enough.',
        step: 'timing',
        calculator: 'plate-setting',
      },
      {
        look: 'Gap wider than when it was timed: a wider gap is earlier.',
        step: 'gap',
        calculator: 'breaker-cam',
      },
      {
        look: 'Top dead centre: was the disc set on the right cylinder?',
        step: 'top',
        calculator: 'find-tdc',
      },
    ],
  },
  {
    id: 'knocks',
    symptom: 'It knocks under load',
    atOnce: 'Shut off and let it cool. Knocking holes a piston within a minute.',
    looks: [
      {
        look: 'Timing: how many degrees early is the earliest cylinder?',
        step: 'timing',
        calculator: 'piston-position',
      },
      { look: 'Squish and compression.', step: 'squish', calculator: 'compression' },
      {
        look: 'Weak: leaks first, then the jet for the air of the day.',
        step: 'leak',
        calculator: 'air-and-jet',
      },
      { look: 'Fuel: grade, age, and oil in it.', step: 'fuel', calculator: 'fuel-and-oil' },
    ],
  },
  {
    id: 'metal-noise',
    symptom: 'A hard knock once a turn',
    atOnce: 'Stop it and do not start it again.',
    looks: [
      { look: 'Squish, measured again with solder.', step: 'squish', calculator: 'compression' },
      {
        look: 'Play: rock the crank over the top with an indicator on the crown.',
        step: 'top',
        calculator: 'find-tdc',
      },
    ],
  },
  {
    id: 'no-spark',
    symptom: 'It does not fire at all, and there is no spark',
    looks: [
      {
        look: 'Gap and clean contacts: oil on them is enough to stop it.',
        step: 'gap',
        calculator: 'breaker-cam',
      },
      {
        look: 'Resistance of the coil, and voltage at it with the points shut.',
        step: 'coil',
        calculator: 'coil-charge',
      },
      {
        look: 'The switch. One that stops by earthing: its wire off at the points, try again, and put it back before the engine can start. One that breaks the supply: the voltage on both sides of it.',
        step: 'stop',
      },
      { look: 'Plug gap, and another plug.', step: 'plug' },
    ],
  },
  {
    id: 'spark-no-start',
    symptom: 'There is spark and it does not fire',
    looks: [
      {
        look: 'Plugs wet or dry? Wet: flooded, dry it (ignition off, tap shut, plugs out and kept away from the spray, no spark near it).',
        step: 'float',
        calculator: 'float-level',
      },
      { look: 'Dry: is there fuel at the bowl’s drain, and is the jet clear?', step: 'jets' },
      {
        look: 'Timing, by lamp; and the leads on the right cylinders.',
        step: 'timing',
        calculator: 'plate-setting',
      },
      { look: 'Crankcase: without its pumping no fuel comes up.', step: 'leak' },
      {
        look: 'Ports: does the exhaust open where it should?',
        step: 'exhaust',
        calculator: 'port-timing',
      },
    ],
  },
  {
    id: 'one-dead',
    symptom: 'One cylinder does not work',
    looks: [
      { look: 'Change its plug with a neighbour’s: does the fault go along?', step: 'plug' },
      {
        look: 'Its gap and its dwell beside those of the others.',
        step: 'gap',
        calculator: 'breaker-cam',
      },
      {
        look: 'Its coil’s resistance beside those of the others.',
        step: 'coil',
        calculator: 'coil-charge',
      },
      { look: 'Its float and its jet.', step: 'float', calculator: 'float-level' },
      { look: 'Its leak test.', step: 'leak' },
    ],
  },
  {
    id: 'floods',
    symptom: 'Fuel runs out of a carburettor, or it floods when standing',
    atOnce: 'Tap shut, ignition off, no spark. Wipe up, let the vapour go, and only then work on.',
    looks: [
      {
        look: 'Float height, and a float that has fuel inside: shake it.',
        step: 'float',
        calculator: 'float-level',
      },
      { look: 'Needle and seat: a ring worn into the needle’s cone.', step: 'float' },
      { look: 'Head of fuel too high for the seat’s diameter.', calculator: 'float-level' },
    ],
  },
  {
    id: 'hot-one',
    symptom: 'One cylinder runs hotter than the others',
    atOnce: 'Stop before it seizes: clutch in if it tightens.',
    looks: [
      { look: 'Its seals and joints.', step: 'leak' },
      {
        look: 'Its jet and needle clip beside the others’.',
        step: 'jets',
        calculator: 'needle-and-clip',
      },
      { look: 'Its timing beside the others’.', step: 'timing', calculator: 'plate-setting' },
      { look: 'Its slide opening first?', step: 'slides', calculator: 'slide-balance' },
    ],
  },
  {
    id: 'weak-all',
    symptom: 'It runs, and pulls badly on every cylinder',
    looks: [
      {
        look: 'Timing late: gap closed up as the heel wore?',
        step: 'gap',
        calculator: 'breaker-cam',
      },
      { look: 'Current in the coil at speed.', step: 'coil', calculator: 'coil-charge' },
      { look: 'Exhaust opening and compression.', step: 'exhaust', calculator: 'port-timing' },
      { look: 'Head volumes.', step: 'head-volume', calculator: 'compression' },
      { look: 'Rich: floats, clip, air of the day.', step: 'clip', calculator: 'air-and-jet' },
    ],
  },
  {
    id: 'uneven',
    symptom: 'It shakes at small opening and smooths out above',
    looks: [
      { look: 'Slides together at a small opening.', step: 'slides', calculator: 'slide-balance' },
      {
        look: 'Spread of the timing between cylinders.',
        step: 'timing',
        calculator: 'plate-setting',
      },
      { look: 'Float heights alike.', step: 'float', calculator: 'float-level' },
    ],
  },
];
