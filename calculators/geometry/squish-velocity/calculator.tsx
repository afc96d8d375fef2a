import { DEMO_SPEED, demoEngine } from '../../demo/engine.ts';
import { demoBarrel } from '../../demo/barrel.ts';
import { demoHead } from '../../demo/head.ts';
import { barrelInputs, speedInput } from '../barrel-inputs.ts';
import { engineFields, engineInputs, sliderCrank } from '../../position/engine-inputs.ts';
import { defineCalculator } from '../../frame/define.ts';
import type { Inputs, Results } from '../../frame/types.ts';
import { cylinderVolume } from '../../maths/cylinder/cylinder-volume.ts';
import {
  meanSquish,
  peakSquish,
  squishAreaShare,
  squishVelocityAt,
} from '../../maths/cylinder/squish-velocity.ts';
import { headOf } from './head.ts';
import { Picture } from './Picture.tsx';

const head = 'Head';

/** What the demo's bowl holds below its squish band, cc. */
const demoBowl = demoHead.clearance - cylinderVolume(demoBarrel.bore, demoHead.squish);

const squirt = ['rpm', 'stroke', 'rod', 'offset', 'bore', 'squish', 'bowl', 'clearance'] as const;

export const inputs = {
  rpm: { ...speedInput, group: 'Speed' },
  ...engineInputs,
  bore: barrelInputs.bore,
  squish: {
    kind: 'number',
    group: head,
    label: 'Squish clearance',
    help: 'Between crown and band at top dead centre.',
    measure: 'Soft solder over the gudgeon pin on both sides; see Squish and compression.',
    unit: 'mm',
    min: 0,
    max: 20,
    why: 'it is a distance, and wider than that there is no squish',
    default: demoHead.squish,
    alike: true,
    step: 0.05,
    error: 0.05,
  },
  bowl: {
    kind: 'number',
    group: head,
    label: 'Bowl diameter',
    help: 'At the inner edge of the squish band. Less than the bore.',
    measure: 'Caliper across the bowl where the band ends; along the plane of the band.',
    unit: 'mm',
    min: 5,
    max: 199,
    why: 'a bowl is wider than the plug and narrower than the bore',
    default: demoHead.bowl,
    givesWay: (own, values) => {
      const bore = values['bore'] as number;
      return own < bore ? undefined : (demoHead.bowl / demoBarrel.bore) * bore;
    },
    step: 0.5,
    error: 0.3,
  },
  clearance: {
    kind: 'number',
    group: head,
    label: 'Clearance volume',
    help: 'All that is above the piston at top dead centre; from Squish and compression.',
    unit: 'cc',
    min: 0.5,
    max: 500,
    why: 'something is left above every piston, and half a litre is more than any engine here leaves',
    default: demoHead.clearance,
    givesWay: (own, values) => {
      const bore = values['bore'] as number;
      const band = cylinderVolume(bore, values['squish'] as number);
      return own > band ? undefined : band + demoBowl * (bore / demoBarrel.bore) ** 2;
    },
    step: 0.1,
    error: 0.2,
  },
  'exhaust-closes': {
    kind: 'number',
    group: head,
    label: 'Exhaust closes',
    help: 'Degrees before top dead centre. The mean is taken from there to the top.',
    unit: 'deg',
    min: 30,
    max: 180,
    why: 'no exhaust port is cut so that it closes outside that',
    default: demoBarrel.exhaustOpens,
    step: 1,
    error: 0.5,
  },
  at: {
    assumed: true,
    kind: 'number',
    group: 'The picture',
    label: 'At crank angle',
    help: 'Degrees before top dead centre at which one velocity is read off.',
    unit: 'deg',
    min: 0,
    max: 90,
    why: 'further from the top there is next to no squish',
    default: 20,
    step: 0.5,
  },
} as const satisfies Inputs;

export const results = {
  peak: {
    label: 'Largest squish velocity',
    unit: 'm/s',
    help: 'At the inner edge of the band.',
    lead: true,
    decimals: 1,
  },
  'peak-angle': {
    label: 'It comes at',
    unit: 'deg',
    help: 'Degrees before top dead centre.',
    lead: true,
    decimals: 1,
    word: () => 'BTDC',
  },
  share: {
    label: 'Band’s share of the bore',
    unit: '%',
    help: 'Area of the squish band over that of the bore.',
    lead: true,
    decimals: 1,
  },
  mean: {
    label: 'Mean squish velocity',
    unit: 'm/s',
    help: 'Over the time from the exhaust’s closing to the top.',
    decimals: 1,
  },
  velocity: {
    label: 'Squish velocity at the angle',
    unit: 'm/s',
    help: 'At the crank angle of the picture.',
    decimals: 1,
  },
} as const satisfies Results;

export default defineCalculator({
  slug: 'squish-velocity',
  title: 'Squish velocity',
  purpose:
    'How fast the charge leaves the squish band as the piston comes up: to compare like heads, not to predict what they do.',
  inHand: ['squish', 'at'],
  alsoCalled: ['squish band', 'maximum squish velocity', 'squish area'],
  inputs,
  folded: ['The picture'],
  results,
  restsOn: {
    peak: squirt,
    'peak-angle': squirt,
    share: ['bore', 'bowl'],
    mean: [...squirt, 'exhaust-closes'],
    velocity: [...squirt, 'at'],
  },
  fieldOf: {
    ...engineFields,
    bore: 'bore',
    squish: 'squish',
    bowlDiameter: 'bowl',
    clearanceVolume: 'clearance',
    exhaustCloses: 'exhaust-closes',
    rpm: 'rpm',
    crankAngle: 'at',
  },
  compute: (v) => {
    const engine = sliderCrank(v);
    const shape = headOf(v);
    const peak = peakSquish(engine, shape, v.rpm);
    return {
      peak: peak.velocity,
      'peak-angle': peak.angle,
      share: 100 * squishAreaShare(shape),
      mean: meanSquish(engine, shape, v.rpm, v['exhaust-closes']),
      velocity: squishVelocityAt(engine, shape, v.rpm, v.at),
    };
  },
  remarks: () => [
    'A comparison between like heads and not a prediction. Leakage past the ring and the gas’s own inertia make the real velocity smaller.',
  ],
  picture: Picture,
  ready: {
    caption: `Largest squish velocity for the clearance, invented demo engine: bore ${demoBarrel.bore} mm, stroke ${demoEngine.stroke} mm, ${DEMO_SPEED} rpm`,
    vary: 'squish',
    over: [0.6, 0.8, 1, 1.2, 1.4, 1.6, 1.8, 2, 2.5, 3],
    show: ['peak', 'peak-angle', 'mean'],
  },
  care: 'Too little clearance lets crown and head meet.',
  cautions: [
    'A smaller clearance for the sake of this figure lets crown and head meet at speed, when the rod stretches and the bearings’ play is taken up. Keep to the maker’s least clearance.',
  ],
  limits: [
    'It is the balance of mass between band and bowl at one density throughout the cylinder (J. B. Heywood, Internal Combustion Engine Fundamentals, McGraw-Hill, 1988, section 8.4; recalled from memory). The clearance volume is held while the squish clearance changes.',
    'The band is taken as parallel to the crown and all round the bowl. A band on one side only, or one that opens inwards, squirts differently.',
  ],
  articles: ['squish-and-compression'],
});
