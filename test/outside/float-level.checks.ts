import {
  displacedMass,
  fuelLevel,
  levelAtJet,
  needlePush,
  springRise,
  submergedDepth,
  tangRatio,
  type FloatLever,
  type FuelFeed,
} from '../../calculators/maths/carburettor/float-level.ts';
import { levelByHalving, type FloatInSi } from './references/float-moments.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'float-level';

const cases: readonly (readonly [
  words: string,
  lever: FloatLever,
  feed: FuelFeed,
  height: number,
])[] = [
  [
    'float of 9 g and 1000 mm², arms 8 and 32 mm, seat 2 mm, head 300 mm, 740 kg/m³, gauge 24 mm',
    { pivotToNeedle: 8, pivotToFloat: 32, floatMass: 9, floatArea: 1000, floatDepth: 20 },
    { seat: 2, head: 300, density: 740 },
    24,
  ],
  [
    'heavy float of 16 g and 1400 mm², arms 12 and 30 mm, seat 3.3 mm, head 900 mm, 760 kg/m³, gauge 31 mm',
    { pivotToNeedle: 12, pivotToFloat: 30, floatMass: 16, floatArea: 1400, floatDepth: 22 },
    { seat: 3.3, head: 900, density: 760 },
    31,
  ],
  [
    'float without weight, 800 mm², arms 10 and 25 mm, seat 2.5 mm, head 500 mm, 720 kg/m³, gauge 20 mm',
    { pivotToNeedle: 10, pivotToFloat: 25, floatMass: 0, floatArea: 800, floatDepth: 18 },
    { seat: 2.5, head: 500, density: 720 },
    20,
  ],
];

const inSi = (lever: FloatLever, feed: FuelFeed, height: number): FloatInSi => ({
  needleArm: lever.pivotToNeedle / 1000,
  floatArm: lever.pivotToFloat / 1000,
  mass: lever.floatMass / 1000,
  area: lever.floatArea / 1e6,
  depth: lever.floatDepth / 1000,
  seat: feed.seat / 1000,
  head: feed.head / 1000,
  density: feed.density,
  lowerFace: height / 1000,
});

export const checks: readonly OutsideCheck[] = [
  ...cases.map(([words, lever, feed, height]): OutsideCheck => ({
    topic,
    what: `Fuel level below the gasket face: ${words}`,
    source:
      'Worked step by step in newtons and metres, the float in 20 000 layers, the level by bisection (test/outside/references/float-moments.ts)',
    kind: 'hand-worked',
    unit: 'mm',
    expected: () => 1000 * levelByHalving(inSi(lever, feed, height)),
    ours: () => fuelLevel(lever, feed, { height, edge: 'far', springDrop: 0 }),
    tolerance: 1e-8,
  })),
  {
    topic,
    what: 'Fuel displaced by a float of 12 g at 27 mm that holds a needle at 9 mm, seat 3 mm, under 800 mm of fuel of 750 kg/m³',
    source:
      'By hand: the push is 0.750 g/cm³ × 80 cm × π/4 × (0.3 cm)² = 4.24115 g; moments about the pivot: 12 g + 4.24115 g × 9/27',
    kind: 'hand-worked',
    unit: 'g',
    expected: 13.413717,
    ours: () =>
      displacedMass(
        { pivotToNeedle: 9, pivotToFloat: 27, floatMass: 12, floatArea: 1000, floatDepth: 25 },
        { seat: 3, head: 800, density: 750 },
      ),
    tolerance: 1e-6,
  },
  {
    topic,
    what: 'Fuel displaced by a float of 15 g on an arm of 50 mm that hangs at 60°, needle at 10 mm, seat 2 mm, under 1 m of fuel of 750 kg/m³',
    source:
      'By hand: the arm reaches 50·cos 60° = 25 mm across; push 2.35619 g as below; moments about the pivot: 15 g + 2.35619 g × 10/25',
    kind: 'hand-worked',
    unit: 'g',
    expected: 15.942478,
    ours: () =>
      displacedMass(
        { pivotToNeedle: 10, pivotToFloat: 25, floatMass: 15, floatArea: 1000, floatDepth: 25 },
        { seat: 2, head: 1000, density: 750 },
      ),
    tolerance: 1e-6,
  },
  {
    topic,
    what: 'Push on a needle of 2 mm seat under 1 m of fuel of 750 kg/m³',
    source: 'By hand: 0.750 g/cm³ × 100 cm × π/4 × (0.2 cm)² = 2.3562 g',
    kind: 'hand-worked',
    unit: 'gf',
    expected: 2.35619449,
    ours: () => needlePush({ seat: 2, head: 1000, density: 750 }),
    tolerance: 1e-8,
  },
  {
    topic,
    what: 'Draught of a float of 15 g and 1000 mm² in fuel of 750 kg/m³, no head',
    source: 'Archimedes, by hand: 15 g / (0.750 g/cm³ × 10 cm²) = 2 cm',
    kind: 'hand-worked',
    unit: 'mm',
    expected: 20,
    ours: () =>
      submergedDepth(
        { pivotToNeedle: 10, pivotToFloat: 30, floatMass: 15, floatArea: 1000, floatDepth: 25 },
        { seat: 2, head: 0, density: 750 },
      ),
    tolerance: 1e-12,
  },
  {
    topic,
    what: 'Bend of the tang for 1 mm at the float, arms 9 and 36 mm',
    source: 'By hand: similar triangles, 9/36',
    kind: 'hand-worked',
    unit: 'mm',
    expected: 0.25,
    ours: () =>
      tangRatio({
        pivotToNeedle: 9,
        pivotToFloat: 36,
        floatMass: 9,
        floatArea: 1000,
        floatDepth: 20,
      }),
    tolerance: 0,
  },
  {
    topic,
    what: 'Rise of the float on its needle’s spring: weight 12 g at 30 mm let it drop 0.6 mm, push 9 g at 10 mm',
    source:
      'By hand: spring rate 12·30/10 g over 0.6·10/30 mm = 180 g/mm; 9 g press it in by 0.05 mm, three times that at the float',
    kind: 'hand-worked',
    unit: 'mm',
    expected: 0.15,
    ours: () =>
      springRise(
        { pivotToNeedle: 10, pivotToFloat: 30, floatMass: 12, floatArea: 1000, floatDepth: 25 },
        { seat: Math.sqrt(48 / Math.PI), head: 1000, density: 750 },
        0.6,
      ),
    tolerance: 1e-12,
  },
  {
    topic,
    what: 'Level at a jet 12 mm towards the pivot, level 10 mm, the float’s side 5° low',
    source: 'By hand: 10 + 12·tan 5° = 10 + 12 × 0.0874887',
    kind: 'hand-worked',
    unit: 'mm',
    expected: 11.0498644,
    ours: () => levelAtJet(10, 12, { tilt: 5 }),
    tolerance: 1e-6,
  },
];
