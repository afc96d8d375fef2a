import { randomLcg, randomNormal } from 'd3-random';
import type { Distance, Pattern } from '../../calculators/maths/plate/hole-distances.ts';
import type { Place } from '../../calculators/maths/plate/place.ts';
import { bandOpenings } from '../../calculators/maths/plate/band-openings.ts';
import { areaWithin } from '../../calculators/maths/plate/edge-parts.ts';
import { fitHoles } from '../../calculators/maths/plate/hole-pattern.ts';
import { fromEdge } from '../../calculators/maths/plate/from-edge.ts';
import { landOutline } from '../../calculators/maths/plate/land-outline.ts';
import { pitchCircle } from '../../calculators/maths/plate/pitch-circle.ts';
import { areaLessDiscs, FLATTEN } from './references/cut-polygon.ts';
import { solvedPattern, solvedTangent, SOLVER } from './constraint-solver.ts';
import type { OutsideCheck } from './types.ts';

type Leg = readonly [from: number, to: number, length: number];

/** A pattern by hand: triangle 1-2-3, then each hole by two distances and the side it lies on. */
const legs: readonly Leg[] = [
  [1, 2, 66],
  [1, 3, 87.06],
  [2, 3, 48.91],
  [1, 4, 52.76],
  [3, 4, 76.5],
  [2, 5, 43.95],
  [4, 5, 44.1],
  [3, 6, 31.3],
  [5, 6, 36.2],
];
const rough: readonly (readonly [number, number])[] = [
  [0, 0],
  [66, 0],
  [72, 48],
  [-4, 52],
  [33, 29],
  [60, 76],
];
const solved = (): readonly Place[] => solvedPattern(rough, legs);

const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);
const inSpan = (
  places: readonly Place[],
  diameters: readonly number[],
  span: Distance['span'],
): Pattern => ({
  diameters,
  distances: places.flatMap((to, b) =>
    places.slice(0, b).map((from, a): Distance => {
      const radii = (diameters[a]! + diameters[b]!) / 2;
      const read = apart(from, to) + { centres: 0, inside: -radii, outside: radii }[span];
      return { from: a + 1, to: b + 1, read, span };
    }),
  ),
});

const diameters = [6.5, 6.5, 8.2, 6.5, 30, 4.2];
const bySolver = (['centres', 'inside', 'outside'] as const).flatMap((span) =>
  [2, 3, 4, 5].flatMap((hole) =>
    (['x', 'y'] as const).map((axis): OutsideCheck => ({
      topic: 'hole-pattern',
      what: `${axis.toUpperCase()} of hole ${hole + 1} of six from all fifteen distances, ${{ centres: 'between centres', inside: 'between nearest edges', outside: 'over furthest edges' }[span]}`,
      source: `${SOLVER}: nine of the distances as constraints of a sketch; the others are measured in what it solves`,
      kind: 'library',
      unit: 'mm',
      expected: () => solved()[hole]![axis],
      ours: () => fitHoles(inSpan(solved(), diameters, span)).places[hole]![axis],
      tolerance: 1e-8,
      why: 'both stop at about a billionth of a millimetre',
    })),
  ),
);

/** A square of four holes, all six distances, one diagonal read too long. */
const SIDE = 60;
const TOO_LONG = 0.001;
const square = (): Pattern => {
  const corners = [
    { x: 0, y: 0 },
    { x: SIDE, y: 0 },
    { x: SIDE, y: SIDE },
    { x: 0, y: SIDE },
  ];
  const pattern = inSpan(corners, [5, 5, 5, 5], 'centres');
  return {
    ...pattern,
    distances: pattern.distances.map((one) =>
      one.from === 1 && one.to === 3 ? { ...one, read: one.read + TOO_LONG } : one,
    ),
  };
};
const misfitOf = (from: number, to: number): number => {
  const pattern = square();
  const index = pattern.distances.findIndex((one) => one.from === from && one.to === to);
  return fitHoles(pattern).misfits[index]!;
};
const bySymmetry: readonly OutsideCheck[] = (
  [
    ['the diagonal that was misread', 1, 3, 0.25],
    ['the other diagonal', 2, 4, 0.25],
    ['a side', 1, 2, -Math.SQRT2 / 8],
  ] as const
).map(([words, from, to, share]) => ({
  topic: 'hole-pattern',
  what: `What is left over on ${words} of a square of holes, one diagonal read 1 µm too long`,
  source:
    'By hand: six distances for five coordinates leave one condition, the balance of forces in a square frame with both diagonals, 1 in each side and −√2 in each diagonal; a single error is shared out by its squares, 4 × 1 + 2 × 2 = 8',
  kind: 'hand-worked',
  unit: 'mm',
  expected: share * TOO_LONG,
  ours: () => misfitOf(from, to),
  tolerance: 1e-8,
  why: 'the shares are those of an error without end small',
}));

const TRIALS = 800;
const ERROR = 0.04;

interface Trials {
  /** Mean of the sum of squares of the misfits over the square of the error. */
  readonly chiSquare: number;
  /** Variance of the same. */
  readonly variance: number;
}

let known: Trials | undefined;
/** Known places, each distance read with a normal error, over and over. */
function trials(): Trials {
  if (known) return known;
  const places = solved();
  const exact = inSpan(places, diameters, 'centres');
  const normal = randomNormal.source(randomLcg(0.37))(0, ERROR);
  const sums = Array.from({ length: TRIALS }, () => {
    const distances = exact.distances.map((one) => ({ ...one, read: one.read + normal() }));
    const { misfits } = fitHoles({ ...exact, distances });
    return misfits.reduce((sum, misfit) => sum + (misfit / ERROR) ** 2, 0);
  });
  const chiSquare = sums.reduce((a, b) => a + b, 0) / TRIALS;
  const variance = sums.reduce((sum, one) => sum + (one - chiSquare) ** 2, 0) / (TRIALS - 1);
  known = { chiSquare, variance };
  return known;
}

const CHI =
  'NIST/SEMATECH, e-Handbook of Statistical Methods, 2012, section 1.3.6.6.6: chi-square with ν degrees of freedom has the mean ν and the variance 2ν; here ν = 15 distances − 9 coordinates';

const byTrials: readonly OutsideCheck[] = [
  {
    topic: 'hole-pattern',
    what: 'Mean of the squared misfits over the squared error, six holes and fifteen distances, 800 trials',
    source: CHI,
    kind: 'published',
    unit: '1',
    expected: 6,
    ours: () => trials().chiSquare,
    tolerance: 0.55,
    why: 'four and a half times √(12/800), the scatter of the mean of so many trials',
  },
  {
    topic: 'hole-pattern',
    what: 'Variance of the same',
    source: CHI,
    kind: 'published',
    unit: '1',
    expected: 12,
    ours: () => trials().variance,
    tolerance: 3.9,
    why: 'four and a half times the scatter of a variance from so many trials: its square is 8ν(ν + 6)/800 for chi-square',
  },
];

const lands = [
  { x: 0, y: 0, radius: 9 },
  { x: 66, y: 0, radius: 12 },
  { x: 40, y: 50, radius: 7 },
];
const bent: readonly OutsideCheck[] = [0, 3, -2].map((bulge): OutsideCheck => ({
  topic: 'hole-pattern',
  what: `Least metal from a place 33 mm along and 5 mm above to an edge ${bulge === 0 ? 'that is straight' : bulge > 0 ? 'that bulges by 3 mm' : 'hollow by 2 mm'} between lands of 9 and 12 mm radius, 66 mm apart`,
  source: `${SOLVER}: ${bulge === 0 ? 'a line' : 'a circle'} tangent to both lands${bulge === 0 ? '' : ', its highest point so far from the line that is'}`,
  kind: 'library',
  unit: 'mm',
  expected: () => solvedTangent(lands[0]!, lands[1]!, bulge, { x: 33, y: 5 }),
  ours: () => Math.min(...landOutline(lands, [bulge, 0, 0]).map((edge) => fromEdge(edge, 33, 5))),
  tolerance: 1e-7,
}));

const cover = [
  [0, 0],
  [66, 0],
  [72, 48],
  [-4, 52],
] as const;
/** Lands of 9 mm about the corners of a cover, and one more on its lower side. */
const covered = [...cover, [30, 4] as const].map(([x, y]) => ({ x, y, radius: 9 }));
const banded = [5, 9, 14].map((band): OutsideCheck => ({
  topic: 'hole-pattern',
  what: `Area inside a band of ${band} mm round a cover of four corners, five lands of 9 mm standing into it`,
  source: `${FLATTEN}: the polygon through the corner holes, its sides moved ${band === 9 ? 'by nothing' : band > 9 ? `inwards by ${band - 9} mm` : `outwards by ${9 - band} mm`}, less five discs`,
  kind: 'library',
  unit: 'mm²',
  expected: () => areaLessDiscs(cover, band - 9, covered),
  ours: () =>
    bandOpenings(landOutline(covered.slice(0, 4), []), band, covered).reduce(
      (sum, border) => sum + areaWithin(border.map(({ edge }) => edge)),
      0,
    ),
  tolerance: 1e-6,
}));

/** Four places off a circle of 40 mm by 0.1 mm, outwards and inwards by turns. */
const wavy = [0, 90, 180, 270].map((degrees, i) => {
  const [angle, radius] = [(degrees * Math.PI) / 180, 40 + (i % 2 === 0 ? 0.1 : -0.1)];
  return { x: 12 + radius * Math.cos(angle), y: -7 + radius * Math.sin(angle) };
});
const circles: readonly OutsideCheck[] = (
  [
    ['radius', 40, () => pitchCircle(wavy).radius],
    ['X of the centre', 12, () => pitchCircle(wavy).x],
    ['distance off it, root mean square', 0.1, () => pitchCircle(wavy).rms],
  ] as const
).map(([words, expected, ours]) => ({
  topic: 'hole-pattern',
  what: `Pitch circle through four holes at right angles, 40.1 and 39.9 mm out by turns: ${words}`,
  source: 'By hand: by symmetry the best circle is the mean one about the middle',
  kind: 'hand-worked',
  unit: 'mm',
  expected,
  ours,
  tolerance: 1e-9,
}));

export const checks: readonly OutsideCheck[] = [
  ...bySolver,
  ...bySymmetry,
  ...byTrials,
  ...bent,
  ...banded,
  ...circles,
];
