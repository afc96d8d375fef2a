import { Circle, Line, point } from '@flatten-js/core';
import {
  angleAfter,
  angleBefore,
  bdcAfter,
  totalTravel,
  travelAt,
  travelBefore,
  velocityAt,
  type SliderCrank,
} from '../../calculators/maths/crank/slider-crank.ts';
import { turnBodies } from './references/slider-crank-bodies.ts';
import {
  exactAngle,
  exactBottom,
  exactTravel,
  exactWhole,
  symbolicVelocity,
} from './references/slider-crank-exact.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'piston-position';

const engines: readonly (readonly [words: string, geometry: SliderCrank])[] = [
  ['stroke 51 mm, rod 104 mm', { stroke: 51, rodLength: 104, pinOffset: 0 }],
  ['stroke 51 mm, rod 104 mm, pin offset 1.5 mm', { stroke: 51, rodLength: 104, pinOffset: 1.5 }],
  ['stroke 72 mm, rod 115 mm, pin offset −12 mm', { stroke: 72, rodLength: 115, pinOffset: -12 }],
  [
    'stroke 51 mm, rod barely longer than the throw, 25.6 mm',
    { stroke: 51, rodLength: 25.6, pinOffset: 0.05 },
  ],
];

/** Degrees after true TDC at which crank and bore are in line, and the pin's height at true TDC. */
function frameOf({ stroke, rodLength, pinOffset }: SliderCrank) {
  const reach = rodLength + stroke / 2;
  return {
    inLine: (-Math.asin(pinOffset / reach) * 180) / Math.PI,
    top: Math.sqrt(reach ** 2 - pinOffset ** 2),
  };
}

/** A figure of another engine, with the cosine rule there and Pythagoras here: no code of the site. */
const carried: OutsideCheck = {
  topic,
  what: 'Carried across: 2.7 mm of stroke 56, rod 110 on stroke 51, rod 104',
  source:
    'By hand. There the pin stands d = 28 + 110 − 2.7 = 135.3 over the crank: cos θ = (135.3² + 28² − 110²) / (2 · 135.3 · 28) = 0.92256, θ = 22.690°. Here sin θ = 0.38584: 25.5 cos θ + √(104² − (25.5 sin θ)²) = 23.525 + 103.534 = 127.059, and 129.5 − 127.059 = 2.441',
  kind: 'hand-worked',
  unit: 'mm',
  expected: () => 2.441,
  ours: () => {
    const there = { stroke: 56, rodLength: 110, pinOffset: 0 };
    return travelBefore({ stroke: 51, rodLength: 104, pinOffset: 0 }, angleBefore(there, 2.7));
  },
  tolerance: 0.001,
};

const mathjs = 'mathjs 15.2, big numbers of 64 digits';

const againstClosedForm = engines.flatMap(([words, g]): OutsideCheck[] => [
  ...[0.01, 21.5, 90, 179, 250].map((angle): OutsideCheck => ({
    topic,
    what: `Piston travel at ${angle}° after TDC; ${words}`,
    source: `${mathjs}: the closed form of crank, rod and piston`,
    kind: 'library',
    unit: 'mm',
    expected: () => exactTravel(g, angle),
    ours: () => travelAt(g, angle),
    tolerance: 1e-12,
  })),
  {
    topic,
    what: `Piston travel at 0.000001° after TDC as a share of the exact one; ${words}`,
    source: `${mathjs}: the closed form of crank, rod and piston`,
    kind: 'library',
    unit: '1',
    expected: 1,
    ours: () => travelAt(g, 1e-6) / exactTravel(g, 1e-6),
    tolerance: 1e-12,
    why: 'a travel of a millionth of a millionth of a millimetre must keep its digits too',
  },
  {
    topic,
    what: `Travel from the highest to the lowest place; ${words}`,
    source: `${mathjs}: difference of the two heights at which crank and rod are in line`,
    kind: 'library',
    unit: 'mm',
    expected: () => exactWhole(g),
    ours: () => totalTravel(g),
    tolerance: 1e-12,
  },
  {
    topic,
    what: `Crank angle from true TDC to true BDC on the way down; ${words}`,
    source: `${mathjs}: the two angles at which crank and rod are in line`,
    kind: 'library',
    unit: '°',
    expected: () => exactBottom(g),
    ours: () => bdcAfter(g),
    tolerance: 1e-12,
  },
]);

const againstDerivatives = engines.slice(0, 3).flatMap(([words, g]) =>
  [-160, -21.5, 76].flatMap((angle): OutsideCheck[] => [
    {
      topic,
      what: `Piston velocity at ${angle}° after TDC; ${words}`,
      source: `${mathjs}: symbolic derivative of the closed form`,
      kind: 'library',
      unit: 'mm per degree',
      expected: () => symbolicVelocity(g, angle),
      ours: () => velocityAt(g, angle),
      tolerance: 1e-14,
    },
  ]),
);

const againstCosineRule = engines.slice(0, 3).flatMap(([words, g]) =>
  [0.1, 2.2, 49].flatMap((travel): OutsideCheck[] => [
    {
      topic,
      what: `Crank angle before TDC for ${travel} mm of travel; ${words}`,
      source: `${mathjs}: cosine rule on the triangle of crank centre, big end and gudgeon pin`,
      kind: 'library',
      unit: '° BTDC',
      expected: () => exactAngle(g, travel, -1),
      ours: () => angleBefore(g, travel),
      tolerance: 1e-9,
    },
    {
      topic,
      what: `Crank angle after TDC for ${travel} mm of travel; ${words}`,
      source: `${mathjs}: cosine rule on the triangle of crank centre, big end and gudgeon pin`,
      kind: 'library',
      unit: '° ATDC',
      expected: () => exactAngle(g, travel, 1),
      ours: () => angleAfter(g, travel),
      tolerance: 1e-9,
    },
  ]),
);

const againstBodies = engines.slice(0, 3).flatMap(([words, g]) =>
  [30, 140, 300].flatMap((angle): OutsideCheck[] => {
    const source = 'planck 1.5: rigid crank, rod and piston on pins, turned by a motor';
    const { inLine, top } = frameOf(g);
    return [
      {
        topic,
        what: `Piston travel where a model of rigid bodies stands some ${angle}° past the line of the bore; ${words}`,
        source,
        kind: 'library',
        unit: 'mm',
        expected: () => top - turnBodies(g, angle).pin,
        ours: () => travelAt(g, turnBodies(g, angle).crank + inLine),
        tolerance: 2e-4,
        why: 'the solver closes its pins by iteration and lets them gape by up to 0.0001 mm under load',
      },
      {
        topic,
        what: `Piston velocity where a model of rigid bodies stands some ${angle}° past the line of the bore; ${words}`,
        source,
        kind: 'library',
        unit: 'mm per degree',
        expected: () => turnBodies(g, angle).velocity,
        ours: () => velocityAt(g, turnBodies(g, angle).velocityCrank + inLine),
        tolerance: 1e-4,
        why: 'the solver meets the pins by iteration',
      },
    ];
  }),
);

/** Inches throughout; the maths takes any one unit of length for its millimetre. */
const calculusEngine: SliderCrank = { stroke: 6, rodLength: 7, pinOffset: 0 };

const againstBooks: readonly OutsideCheck[] = [
  {
    topic,
    what: 'Gudgeon pin over crank centre at 60° after TDC; crank throw 3 in, rod 7 in',
    source:
      'R. Larson and B. Edwards, Calculus, chapter 2, example 6 “The velocity of a piston” with figure 2.37, on page 156 of an edition not known',
    kind: 'published',
    unit: 'in',
    expected: 8,
    ours: () => 3 + 7 - travelAt(calculusEngine, 60),
    tolerance: 1e-12,
    why: 'an exact integer in the book',
  },
  {
    topic,
    what: 'Piston speed at 60° after TDC and 200 rpm; crank throw 3 in, rod 7 in',
    source:
      'R. Larson and B. Edwards, Calculus, chapter 2, example 6 “The velocity of a piston” with figure 2.37, on page 156 of an edition not known',
    kind: 'published',
    unit: 'in/min',
    expected: 4018,
    ours: () => velocityAt(calculusEngine, 60) * 360 * 200,
    tolerance: 0.5,
    why: 'printed to the whole inch',
  },
];

/** Where the coupler's circle about the crank pin meets the slider's line, from the crank centre. */
function sliderAt(throwLength: number, coupler: number, offset: number, degrees: number): number {
  const pin = point(throwLength, 0).rotate((degrees * Math.PI) / 180, point(0, 0));
  const line = new Line(point(0, offset), point(1, offset));
  const meets = new Circle(pin, coupler).intersect(line);
  return Math.max(...meets.map(({ x }) => x));
}

const linkages: readonly (readonly [SliderCrank, number])[] = [
  [{ stroke: 80, rodLength: 120, pinOffset: -20 }, 60],
  [{ stroke: 80, rodLength: 120, pinOffset: -20 }, 200],
  [{ stroke: 84, rodLength: 153, pinOffset: 0 }, 75],
  [{ stroke: 51, rodLength: 104, pinOffset: 1.5 }, 97],
];
const constructed = linkages.map(([g, degrees]): OutsideCheck => ({
  topic,
  what: `Gudgeon pin along the bore from the crank centre, crank ${degrees}° past the line of the bore; stroke ${g.stroke} mm, rod ${g.rodLength} mm, pin offset ${g.pinOffset} mm`,
  source:
    '@flatten-js/core 1.6: where a circle as large as the rod about the big end meets the line on which the pin moves',
  kind: 'library',
  unit: 'mm',
  expected: () => sliderAt(g.stroke / 2, g.rodLength, g.pinOffset, degrees),
  ours: () => {
    const { inLine, top } = frameOf(g);
    return top - travelAt(g, degrees + inLine);
  },
  tolerance: 1e-11,
}));

export const checks: readonly OutsideCheck[] = [
  carried,
  ...againstBooks,
  ...constructed,
  ...againstBodies,
  ...againstClosedForm,
  ...againstDerivatives,
  ...againstCosineRule,
];
