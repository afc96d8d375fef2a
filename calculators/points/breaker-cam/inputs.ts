import { demoCam } from '../../demo/cam.ts';
import { camInputs, dwellInput } from '../cam-inputs.ts';
import { choice } from '../../frame/define.ts';
import type { Inputs } from '../../frame/types.ts';

const cam = 'The cam';
const points = 'The points';
const wear = 'Wear of the heel';
const trials = 'Trials at several gaps';

/** Demo figures of the trials, invented. */

export const inputs = {
  from: choice({
    assumed: true,
    group: points,
    label: 'You have',
    help: 'The figure you were given for the points.',
    options: { gap: 'Points gap', dwell: 'Dwell angle' },
    default: 'gap',
  }),
  gap: {
    kind: 'number',
    group: points,
    label: 'Points gap',
    help: 'How far the contacts stand apart with the heel on the top of the lobe.',
    measure:
      'Turn the crank until the points open no further, then a feeler gauge between the contacts, square to them, dragging lightly. Pitted contacts fool a gauge: dress or change them first.',
    unit: 'mm',
    min: 0.001,
    max: 5,
    why: 'with no gap the points never open, and no set of points opens further',
    default: demoCam.gap,
    alike: true,
    givesWay: (own, values) => {
      const lift = values['lift'] as number;
      return own < lift ? undefined : (demoCam.gap / demoCam.lift) * lift;
    },
    step: 0.05,
    error: 0.02,
    when: (v) => v.from === 'gap',
  },
  dwell: {
    ...dwellInput,
    group: points,
    label: 'Dwell angle wanted',
    error: 1,
    when: (v) => v.from === 'dwell',
  },
  lever: {
    kind: 'number',
    group: points,
    label: 'Lever ratio',
    help: 'Pivot to contacts divided by pivot to heel. 1 if not measured: only the lift at the heel and the wear depend on it.',
    unit: 'none',
    min: 0.2,
    max: 5,
    why: 'no moving contact is levered more than that',
    default: 1.25,
    step: 0.05,
  },
  ...camInputs,
  lift: {
    kind: 'number',
    group: cam,
    label: 'Full lift at the contacts',
    help: 'How far the lobe moves the moving contact, from its low part to its top.',
    measure:
      'Open the points wide so that they never touch, set an indicator on the back of the moving contact, and turn the cam once. It is the difference between the lowest and the highest reading.',
    unit: 'mm',
    min: 0.01,
    max: 10,
    why: 'a lobe without lift moves nothing, and no points travel further',
    default: demoCam.lift,
    step: 0.05,
    error: 0.02,
  },
  rise: {
    kind: 'number',
    group: cam,
    label: 'Rise',
    help: 'Cam degrees from where the heel begins to lift to full lift. The fall is taken to be the same.',
    measure:
      'With the indicator as for the lift and a degree disc on the crank: the angle at which the reading begins to climb, and the angle at which it stops climbing.',
    unit: 'deg',
    min: 0.1,
    max: 180,
    why: 'rise and fall together must fit into one turn',
    default: demoCam.rise,
    givesWay: (own, values) => {
      const { lobes, top } = values as { lobes: number; top: number };
      if (2 * own + top <= 360 / lobes) return undefined;
      const room = (360 / lobes - top) / 2;
      return room > 0 ? Math.min(demoCam.rise / lobes, room) : demoCam.rise / lobes;
    },
    step: 1,
    error: 1,
  },
  top: {
    kind: 'number',
    group: cam,
    label: 'Top',
    help: 'Cam degrees for which the lobe holds full lift. 0 if it comes to a point.',
    unit: 'deg',
    min: 0,
    max: 359,
    why: 'the top must leave room for rise and fall within one turn',
    default: demoCam.top,
    givesWay: (own, values) => {
      const { lobes, rise } = values as { lobes: number; rise: number };
      const room = 360 / lobes - 2 * rise;
      if (own <= room) return undefined;
      return room > 0 ? Math.min(demoCam.top / lobes, room) : demoCam.top / lobes;
    },
    step: 1,
    error: 1,
  },
  profile: choice({
    group: cam,
    label: 'Flank',
    help: 'How the lobe lifts. Harmonic comes near most ground cams (common practice). A filed or worn one follows none of the three: use the trials.',
    options: { harmonic: 'Harmonic', cycloidal: 'Cycloidal', uniform: 'Uniform velocity' },
    default: 'harmonic',
  }),
  base: {
    assumed: true,
    kind: 'number',
    group: 'For the picture',
    label: 'Diameter of the low part',
    help: 'For the drawing only; no figure depends on it.',
    unit: 'mm',
    min: 3,
    max: 100,
    why: 'smaller or larger than that is no breaker cam',
    default: demoCam.base,
    step: 1,
  },
  at: {
    assumed: true,
    kind: 'number',
    group: 'For the picture',
    label: 'Cam turned to',
    help: 'Cam degrees that the heel still has to go to the middle of the lobe; negative after it.',
    unit: 'deg',
    min: -360,
    max: 360,
    why: 'that is a whole turn either way',
    default: 70,
    step: 1,
  },
  'wear-per': choice({
    group: wear,
    label: 'Wear is counted by',
    help: 'What your record of the gap goes by.',
    options: { hours: 'Hours', km: 'Kilometres' },
    default: 'km',
  }),
  'wear-rate': {
    kind: 'number',
    group: wear,
    label: 'Wear of the heel',
    help: 'What comes off the heel in 100 hours, or in 1000 km.',
    measure:
      'Set the gap, run a known time, and measure the gap again without touching the set. The loss divided by the lever ratio is the wear at the heel. A dry felt on the cam multiplies it.',
    unit: 'mm',
    min: 0,
    max: 2,
    why: 'a heel does not grow, and one that wears faster than that is not being lubricated',
    default: 0.02,
    step: 0.005,
  },
  running: {
    kind: 'number',
    group: wear,
    label: 'Hours or km since the gap was set',
    help: 'Whichever was chosen above.',
    unit: 'none',
    min: 0,
    max: 1_000_000,
    why: 'running cannot be less than nothing, and no heel lasts longer',
    default: 3000,
    step: 100,
  },
  'retard-limit': {
    assumed: true,
    judgesBy: true,
    kind: 'number',
    group: wear,
    label: 'Retard you will put up with',
    help: 'Crank degrees by which the timing may fall late before you reset the gap.',
    unit: 'deg',
    min: 0.01,
    max: 60,
    why: 'no heel can wear without any retard, and beyond that the engine hardly runs',
    default: 2,
    step: 0.5,
  },
  trials: {
    assumed: true,
    kind: 'number',
    group: trials,
    label: 'Number of trials',
    help: 'Different gaps at which you found where the points open. Two at least; four or more can be judged.',
    unit: 'count',
    min: 2,
    max: 6,
    why: 'one trial says nothing about the change, and more tell nothing new',
    default: 4,
    whole: true,
    step: 1,
  },
  'trial-gap': {
    kind: 'series',
    group: trials,
    label: 'Gap tried',
    member: (index) => `Gap in trial ${String(index)}`,
    help: 'By feeler gauge at full lift.',
    unit: 'mm',
    min: 0.001,
    max: 5,
    why: 'with no gap the points never open',
    count: (v) => v.trials as number,
    most: 6,
    default: (index) => demoCam.trialGaps[index - 1]!,
    step: 0.05,
    error: 0.01,
  },
  'trial-angle': {
    kind: 'series',
    group: trials,
    label: 'Opened at',
    member: (index) => `Opened at in trial ${String(index)}`,
    help: 'Crank degrees before top dead centre, found with a lamp or meter, the plate left alone.',
    unit: 'deg',
    min: -90,
    max: 180,
    why: 'points that fire a cylinder open somewhere near its top dead centre',
    count: (v) => v.trials as number,
    most: 6,
    default: (index) => demoCam.trialAngles[index - 1]!,
    step: 0.5,
    error: 0.5,
  },
} as const satisfies Inputs;
