import { barrelOff, CASE_OPENED } from './steps-reasons.ts';
import type { Step } from './steps.ts';

const joints = {
  ...CASE_OPENED,
  clearance: barrelOff,
  'ring-gap': barrelOff,
  squish: 'Head or barrel has been off, and its joint is new.',
  'head-volume': 'The head has been off, and its joint is new.',
  exhaust: 'The barrel has been moved, and its joint is new.',
  inlet: barrelOff,
  reeds: 'The reeds have been out, and their joint is new.',
};

const bothWays =
  'A seal or a joint that was changed is to be proved under pressure and under suction.';

const tested = {
  per: 'Cylinder',
  unit: 'kPa',
  min: 0,
  max: 50,
  why: 'no more was pumped in or drawn off',
  step: 0.5,
  judging: 'at-most',
  target: 'leak-drop',
  tooLow: '',
} as const;

/** Reeds, and the crankcase under pressure and under suction. */
export const sealingSteps = {
  reeds: {
    stage: 'geometry',
    title: 'Try the reeds',
    why: 'A petal that does not lie shut lets the charge blow back: hard to start, and weak (lean: too little petrol for the air) at small openings.',
    how: [
      'Reed block out. Petals whole: no chip, no frayed corner, no pale line across the root.',
      'Against the light, petals at rest: the thickest feeler that passes under the tip of the worst.',
      'Stops not bent, their screws tight and locked.',
    ],
    tool: 'Feeler blades, good light',
    caution:
      'What comes loose here is drawn through the engine: locking compound on every screw, no petal with a crack put back.',
    reading: {
      label: 'Gap under the worst petal',
      per: 'Cylinder',
      unit: 'mm',
      min: 0,
      max: 20,
      why: 'a petal that stands further off is broken',
      step: 0.05,
      judging: 'at-most',
      target: 'reed-gap',
      tooHigh: 'Turn the petals over, or change them; dress a seat that is not flat. The gap is',
      tooLow: '',
      moves: 'The reed block has a new joint: the leak tests after it.',
    },
    after: {},
    fallsAway: { by: 'reeds', when: (petals = 0) => petals === 0, why: 'no reeds are entered' },
    calculators: [],
    articles: ['proving-a-mixed-engine'],
  },
  leak: {
    stage: 'geometry',
    title: 'Test crankcase and cylinder under pressure',
    why: 'A two-stroke breathes through its crankcase. Air drawn in past a seal makes the mixture weak (lean: too little petrol for the air) on one cylinder, and a weak cylinder seizes or runs away (revs by itself).',
    how: [
      'Stopper inlet and exhaust, plug in, piston at the bottom. Cylinders that share one crank chamber, such as those of a boxer that fires both together, are shut and tested as one: write what it loses for each of them. Those of a vee on one crank pin are never at the bottom together: test once with each piston there, and write each.',
      'Pump to a small pressure (common practice: 40 kPa, about 6 psi), shut the pump off, and read what is lost in five minutes. Soapy water shows where.',
    ],
    tool: 'Hand pump with a gauge, stoppers, soapy water',
    caution:
      'Never more than 50 kPa (7 psi) and never from a compressor’s line: seals are blown out of their seats, and a stopper flies.',
    reading: {
      ...tested,
      label: 'Lost in five minutes',
      tooHigh:
        'Find the leak, first at the stoppers and the pump’s own hose, then with soapy water: it lost',
      moves:
        'A new gasket moves squish and ports; a seal behind the plate takes the plate off, and the disc: gap, timing and true top after it. Then the test under suction.',
    },
    after: joints,
    beforeFire: 'A crankcase that draws air runs weak (lean), seizes, and can run away.',
    movedBy: { suction: bothWays },
    calculators: [],
    articles: ['proving-a-mixed-engine'],
  },
  suction: {
    stage: 'geometry',
    title: 'Test crankcase and cylinder under suction',
    why: 'Pressure holds the lip of a seal shut that suction opens, and in the running engine it is the suction that draws air in.',
    how: [
      'Stoppers as before, no soapy water: it would be drawn in.',
      'Draw as much below the air outside as was pumped in before (common practice: 40 kPa, about 12 inHg), shut the pump off, and read what is lost in five minutes.',
      'It held under pressure and not now: the lips of the crank seals first.',
    ],
    tool: 'Hand vacuum pump with a gauge, stoppers',
    caution: 'Stand to one side of the stoppers, and let the air in slowly afterwards.',
    reading: {
      ...tested,
      label: 'Lost in five minutes under suction',
      tooHigh:
        'Find the leak, first at the stoppers and the pump’s own hose, then at the lips of the seals: it lost',
      moves:
        'A new gasket moves squish and ports; a seal behind the plate takes the plate off, and the disc: gap, timing and true top after it. Then the test under pressure.',
    },
    after: { ...joints, leak: bothWays },
    beforeFire: 'A seal that holds under pressure may still draw air, and the engine can run away.',
    calculators: [],
    articles: ['proving-a-mixed-engine'],
  },
} as const satisfies Record<string, Step>;
