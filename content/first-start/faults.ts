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
    symptom: 'It runs away: it revs by itself and does not heed the twistgrip',
    atOnce:
      'Switch off; then a board over every inlet, or stall it by clutch and brake, as under “If it runs away” at the head of this page. When it stands, do not start it again before the reason is found.',
    looks: [
      {
        look: 'A slide stuck or a cable too short: does each one fall on its stop?',
        step: 'slides',
        calculator: 'slide-balance',
      },
      {
        look: 'Air past a seal or joint: what is lost in five minutes, under pressure and under suction?',
        step: 'leak',
      },
      {
        look: 'Weak (lean: too little petrol for its air) for want of fuel: float height and flow through the valve.',
        step: 'float',
        calculator: 'float-level',
      },
      { look: 'Does the switch stop the spark of every coil?', step: 'stop' },
    ],
  },
  {
    id: 'kicks-back',
    symptom: 'It kicks back at the lever or runs backwards',
    atOnce: 'Switch off; do not kick again until the timing is measured.',
    looks: [
      {
        look: 'Timing of every cylinder against the figure in your sheet: one too early is enough.',
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
    symptom: 'It knocks under load: a sharp rattle',
    atOnce: 'Shut off and let it cool. Knocking holes a piston within a minute.',
    looks: [
      {
        look: 'Timing: how many degrees early, against the figure in your sheet, is the earliest cylinder?',
        step: 'timing',
        calculator: 'piston-position',
      },
      { look: 'Squish and compression.', step: 'squish', calculator: 'compression' },
      {
        look: 'Weak (lean): leaks first, then the jet for the air of the day.',
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
      { look: 'Piston clearance: one that slaps is worst cold.', step: 'clearance' },
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
        look: 'Gap and clean contacts: oil on them, or the protective film of new ones, is enough to stop it.',
        step: 'gap',
        calculator: 'breaker-cam',
      },
      {
        look: 'The condenser. At the contacts a small, dull flicker as they open is normal; a bright, steady, blue-white flashing points to a bad condenser or a wrong one.',
        step: 'coil',
      },
      {
        look: 'Insulation of the set: a tester at 500 V, coil, condenser and leads off it.',
        step: 'gap',
      },
      {
        look: 'Resistance of the coil, cold; and the voltage at it with the points shut. As live points open a meter sees several hundred volts: one rated for that, and fingers off.',
        step: 'coil',
        calculator: 'coil-charge',
      },
      {
        look: 'The switch. One that stops by earthing: its wire off at the points, try again, and put it back before the engine can start. One that breaks the supply: the voltage on both sides of it.',
        step: 'stop',
      },
      { look: 'Plug gap, and another plug, dry.', step: 'plug' },
    ],
  },
  {
    id: 'spark-no-start',
    symptom: 'There is spark and it does not fire',
    looks: [
      {
        look: 'The spark at the plug: short, fat, blue-white and with a snap is good. Thin, yellow or orange and silent is poor, and does not jump under compression.',
        step: 'coil',
        calculator: 'coil-charge',
      },
      {
        look: 'Plugs wet or dry? Wet: it is flooded; clear it as under “Fuel runs out of a carburettor”, and fit dry plugs.',
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
    symptom: 'One cylinder does not fire',
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
    symptom: 'Fuel runs out of a carburettor, or the crankcase is flooded',
    atOnce:
      'Tap shut, ignition off, leads off the plugs and earthed. Wipe up, let the vapour go. A flooded crankcase: plugs out, drain screw out where there is one, twistgrip full open, and turn it over by hand until the plug holes blow dry, faces and every spark away from them. Slides shut again, dry plugs in. Never kick an engine that is full: fuel does not compress, and a rod bends.',
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
    atOnce:
      'Stop before it seizes. If it tightens, pull the clutch lever (the drive is free) and switch off.',
    looks: [
      { look: 'Its seals and joints, under pressure and under suction.', step: 'leak' },
      { look: 'Its piston clearance, if it tightens when hot.', step: 'clearance' },
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
    symptom: 'It runs, and is short of power on every cylinder',
    looks: [
      {
        look: 'Timing late against the figure in your sheet: has the gap closed up as the heel wore?',
        step: 'gap',
        calculator: 'breaker-cam',
      },
      { look: 'Current in the coil at speed.', step: 'coil', calculator: 'coil-charge' },
      { look: 'Exhaust opening and compression.', step: 'exhaust', calculator: 'port-timing' },
      { look: 'Head volumes.', step: 'head-volume', calculator: 'compression' },
      {
        look: 'Rich (too much petrol for its air): floats, clip, air of the day.',
        step: 'clip',
        calculator: 'air-and-jet',
      },
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
      { look: 'Air and idle screws alike.', step: 'screws' },
    ],
  },
];
