import { defineCalculator } from '../../frame/define.ts';
import { compute, decide, type Computed, type Values } from './compute.ts';
import { folded, inputs } from './inputs.ts';
import { onwards } from './onwards.ts';
import { Picture } from './Picture.tsx';
import { coilWords, remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'firing-order',
  title: 'Firing order of any crank',
  purpose:
    'From the angles of crank pins and cylinders to when each comes to the top, in what order they fire, where their sets go on the plate, and what shakes.',
  inHand: ['pin', 'turned'],
  alsoCalled: [
    'crank phasing',
    'one-off crank',
    'crankshaft balance',
    'balance factor',
    'wasted spark',
    'twin',
    '180 degree twin',
    '360 degree twin',
    '120 degree triple',
    'triple',
    'vee',
    'boxer',
    'flat twin',
  ],
  inputs,
  folded,
  results,
  restsOn,
  tables: {
    cylinders: {
      caption: 'Each cylinder, its set on the plate and its coil',
      rowHeading: 'Cylinder',
      row: (_, index) => `Cylinder ${String(index)}`,
      verdict: {
        heading: 'Coil with two leads',
        say: (values, computed, index) =>
          coilWords(values as unknown as Values, computed as unknown as Computed, index),
      },
    },
    firings: {
      caption: 'One turn of the crank, firing by firing',
      rowHeading: 'Firing',
      row: (_, index) => `Firing ${String(index)}`,
    },
  },
  fieldOf: {
    cylinders: 'cylinders',
    stroke: 'stroke',
    rodLength: 'rod',
    reciprocatingMass: 'reciprocating',
    rotatingMass: 'rotating',
    balanceFactor: 'factor',
    speed: 'rpm',
  },
  decide,
  compute,
  remarks,
  onwards,
  picture: Picture,
  ready: {
    caption: 'Primary and secondary force of a single cylinder of the demo engine, by speed',
    vary: 'rpm',
    over: [2000, 3000, 4000, 5000, 6000, 7000, 8000],
    show: ['primary', 'primary-left', 'secondary'],
    set: { cylinders: '1' },
  },
  care: 'Plugs out; fingers off the webs.',
  cautions: [
    'Turn the crank by hand with ignition and fuel off and the plugs out. Keep fingers away from webs, rods, gears and chains: a crank that comes round past its balance takes a finger off.',
    'A pressed crank that was put together at another angle, or drilled for balance, can part at speed. Have it pressed, trued and crack-tested by somebody with the tools for it, and stand out of the plane of the flywheel when it first runs.',
  ],
  limits: [
    'The angles are exact for cylinders without pin offset. With one, every top of that cylinder shifts by the same fraction of a degree to two: measure its top with the disc.',
    'Forces are of first and second order; what comes more than twice a turn is left out, less than a fiftieth of them with usual rods. The rotating masses are taken to be balanced by themselves, each piston to weigh the same, and crank and case to be stiff.',
    'What a shaking engine does to its frame hangs on its mounting. Compare one layout or factor with another here, and take no single force for a limit.',
    'Method of the direct and reverse cranks, from the theory of machines. It is checked against summed accelerations, a rigid-body solver and published cases.',
  ],
  articles: ['crank-of-your-own', 'making-a-breaker-plate', 'setting-several-cylinders'],
});
