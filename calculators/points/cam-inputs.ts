import { dwellShare } from './dwell-otherwise.ts';
import { demoCam } from '../demo/cam.ts';
import type { AnyValues, NumberInput } from '../frame/types.ts';

const group = 'The cam';

/** The demo's dwell is that of one lobe, and more lobes leave less for each. */
const dwellGivesWay = (own: number, values: AnyValues): number | undefined => {
  const lobes = values['lobes'] as number;
  return own < 360 / lobes ? undefined : demoCam.dwell / lobes;
};

/** The dwell in cam degrees, under a heading of the calculator's own. */
export const dwellInput = {
  kind: 'number',
  label: 'Dwell',
  help: 'Cam degrees for which the points are shut, per lobe.',
  unit: 'deg',
  min: 0.1,
  max: 359.9,
  why: 'the points must shut and open again within one turn of the cam',
  default: demoCam.dwell,
  otherwise: dwellShare,
  givesWay: dwellGivesWay,
  step: 1,
} as const satisfies Omit<NumberInput, 'group'>;

/** Lobes and speed of the breaker cam: asked for alike wherever its turning counts. */
export const camInputs = {
  lobes: {
    kind: 'number',
    group,
    label: 'Lobes',
    help: 'Humps in one turn of the cam. A cam with one set of points for each cylinder has one.',
    unit: 'count',
    min: 1,
    max: 12,
    why: 'a breaker cam has at least one lobe, and no set of points serves more',
    default: demoCam.lobes,
    whole: true,
    step: 1,
  },
  'speed-ratio': {
    kind: 'number',
    group,
    label: 'Cam turns for one of the crank',
    help: '1 on the crankshaft, 0.5 on a half-speed shaft.',
    measure: 'Mark the cam, turn the crank ten times and count the turns of the mark.',
    unit: 'none',
    min: 0.1,
    max: 4,
    why: 'a cam that turns slower or faster than that drives no points',
    default: demoCam.speedRatio,
    step: 0.5,
  },
} as const satisfies Record<string, NumberInput>;
