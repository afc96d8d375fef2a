import { demoCover } from '../../demo/cover.ts';
import { choice } from '../../frame/define.ts';
import { memoize } from '../../frame/memoize.ts';
import type { AnyValues, Inputs } from '../../frame/types.ts';
import { MOST_DISTANCES, MOST_HOLES, type Span } from '../../maths/plate/hole-distances.ts';
import { onStep } from '../../maths/numeric/steps.ts';

const holes = 'The holes';
const distances = 'The distances';
const otherwise = 'Distances taken another way';
const centre = 'Angles and radii from a centre';
const outline = 'Outline and bore of a gasket';

/** Every pair of so many holes: every hole to the first three, which holds it, then all the others. */
const pairsOf = memoize((count: number) => {
  const pairs = Array.from({ length: count }, (_, b) =>
    Array.from({ length: b }, (__, a): readonly [number, number] => [a + 1, b + 1]),
  ).flat();
  return [...pairs.filter(([a]) => a <= 3), ...pairs.filter(([a]) => a > 3)];
});

/** A pair for each distance of so many holes, and from the start again. */
function pairOf(index: number, of: number): readonly [number, number] {
  const order = pairsOf(Math.max(2, Math.min(MOST_HOLES, Math.floor(of) || 2)));
  return order[(index - 1) % order.length]!;
}

/** What a caliper reads on the demo's cover between two of its holes. */
function demoReading(index: number, v: AnyValues): number {
  const { places, errors, readTo } = demoCover;
  const [a, b] = [v.a, v.b].map((list) => (list as readonly number[])[index - 1]! - 1);
  const [from, to] = [places[a!], places[b!]];
  if (!from || !to) return 50;
  const radii = [a, b].reduce((sum: number, i) => sum + (v.hole as readonly number[])[i!]! / 2, 0);
  const apart = Math.hypot(to[0] - from[0], to[1] - from[1]) + errors[index % errors.length]!;
  const read = apart + { centres: 0, inside: -radii, outside: radii }[v.span as Span];
  return onStep(Math.max(1, read), readTo);
}

const oneOf = (v: AnyValues): number => v.holes as number;
const number = {
  kind: 'series',
  unit: 'count',
  min: 1,
  max: MOST_HOLES,
  why: 'holes are counted from 1',
  whole: true,
  step: 1,
  row: 'Distance',
  group: distances,
  count: (v: AnyValues) => v.distances as number,
  most: MOST_DISTANCES,
} as const;

const exceptions = (way: Span, words: string) =>
  ({
    kind: 'list',
    group: otherwise,
    label: `Those ${words}`,
    help: `Numbers of the distances that were taken ${words} all the same, with spaces between.`,
    unit: 'count',
    min: 1,
    max: MOST_DISTANCES,
    why: 'distances are counted from 1',
    whole: true,
    most: MOST_DISTANCES,
    default: [],
    step: 1,
    when: (v: AnyValues) => v.span !== way,
  }) as const;

/** Some of the holes, by their numbers. */
const holeNumbers = {
  assumed: true,
  kind: 'list',
  unit: 'count',
  min: 1,
  max: MOST_HOLES,
  why: 'holes are counted from 1',
  whole: true,
  most: MOST_HOLES,
  default: [],
  step: 1,
} as const;

export const inputs = {
  holes: {
    assumed: true,
    kind: 'number',
    group: holes,
    label: 'Holes',
    help: 'Give each a number: mark it on the part. Let hole 3 lie well off the line of 1 and 2.',
    unit: 'count',
    min: 2,
    max: MOST_HOLES,
    why: 'one hole is no pattern, and no more are reckoned at once',
    default: demoCover.holes,
    whole: true,
    step: 1,
  },
  hole: {
    kind: 'series',
    group: holes,
    row: 'Hole',
    label: 'Diameter',
    member: (index) => `Diameter of hole ${String(index)}`,
    help: 'Across the hole, with the inside jaws or a drill that just goes in.',
    measure:
      'Twice, square to each other, and the mean of both: an old hole is drawn. Inside jaws read a small hole too small, since their edges are flat; a drill shank that just goes in is nearer below 5 mm.',
    unit: 'mm',
    min: 0.3,
    max: 300,
    why: 'a hole is wider than a needle and narrower than the plate',
    count: oneOf,
    most: MOST_HOLES,
    default: (index) => demoCover.diameters[index - 1]!,
    step: 0.1,
    error: 0.05,
  },
  span: choice({
    group: distances,
    label: 'How it was measured',
    help: 'How the caliper was set from hole to hole. Not all alike? Name the others further down.',
    options: {
      inside: 'Between the nearest edges',
      outside: 'Over the furthest edges',
      centres: 'Between the centres',
    },
    default: 'inside',
  }),
  distances: {
    assumed: true,
    kind: 'number',
    group: distances,
    label: 'How many distances',
    help: 'Two for each hole less three place them; a few more find the one that is misread. The same one may be measured twice.',
    unit: 'count',
    min: 1,
    max: MOST_DISTANCES,
    why: 'without one there is nothing to go by, and no more than forty are reckoned at once',
    default: demoCover.distances,
    whole: true,
    step: 1,
  },
  a: {
    ...number,
    assumed: true,
    label: 'From hole',
    member: (index) => `Distance ${String(index)}, from hole`,
    help: 'Number of the one hole, as you marked it.',
    default: (index, v) => pairOf(index, oneOf(v))[0],
  },
  b: {
    ...number,
    assumed: true,
    label: 'To hole',
    member: (index) => `Distance ${String(index)}, to hole`,
    help: 'Number of the other; which comes first is all the same.',
    default: (index, v) => pairOf(index, oneOf(v))[1],
  },
  distance: {
    kind: 'series',
    group: distances,
    row: 'Distance',
    label: 'Distance',
    member: (index, v) => {
      const [a, b] = [v.a, v.b].map((list) => (list as readonly number[])[index - 1]!);
      return `Distance ${String(index)}, hole ${String(a)} to ${String(b)}`;
    },
    help: 'As the caliper shows it.',
    unit: 'mm',
    usual: 0,
    min: 0.1,
    max: 1000,
    why: 'holes nearer than that run into each other, and no engine has a larger cover',
    count: (v) => v.distances as number,
    most: MOST_DISTANCES,
    default: demoReading,
    step: 0.05,
    error: 0.05,
  },
  'at-inside': exceptions('inside', 'between the nearest edges'),
  'at-outside': exceptions('outside', 'over the furthest edges'),
  'at-centres': exceptions('centres', 'between the centres'),
  about: choice({
    assumed: true,
    group: centre,
    label: 'Centre',
    help: 'From where radius and angle of each hole are counted, and what bore and round outline stand about.',
    options: {
      middle: 'Middle of the holes',
      circle: 'Of the circle that fits them best',
      hole: 'One of the holes',
    },
    default: 'middle',
  }),
  'circle-holes': {
    ...holeNumbers,
    group: centre,
    label: 'Holes that lie round it',
    help: 'Their numbers, with spaces between: those on the pitch circle. Empty for all.',
  },
  'centre-hole': {
    assumed: true,
    kind: 'number',
    group: centre,
    label: 'Centre hole',
    help: 'The number of the hole in the middle.',
    unit: 'count',
    min: 1,
    max: MOST_HOLES,
    why: 'holes are counted from 1',
    whole: true,
    default: demoCover.holes,
    step: 1,
    when: (v) => v.about === 'hole',
  },
  sets: {
    assumed: true,
    kind: 'number',
    group: centre,
    label: 'Like sets about it',
    help: 'Sets of points on a breaker plate, each with the same holes. 1 if it has none.',
    unit: 'count',
    min: 1,
    max: 8,
    why: 'a plate carries no more sets than that',
    whole: true,
    default: 1,
    step: 1,
  },
  outline: choice({
    group: outline,
    label: 'Outline',
    help: 'Round the lands: straight or round edges from land to land, as covers have.',
    options: { lands: 'Round the lands', round: 'A circle', none: 'None' },
    default: 'lands',
  }),
  band: {
    assumed: true,
    kind: 'optional',
    group: outline,
    label: 'Width of the band',
    help: 'For a gasket that is open inside: from its outer edge to its inner one. The lands of the holes stand into the opening. Left empty, the part is whole.',
    measure:
      'Across the face that the gasket seals, where it is narrowest, with the inside edge of the casting as one end.',
    unit: 'mm',
    min: 1,
    max: 200,
    why: 'a narrower band tears before it is laid, and no face is wider',
    step: 0.5,
    when: (v) => v.outline !== 'none',
  },
  land: {
    kind: 'series',
    group: outline,
    row: 'On from hole',
    label: 'Land',
    member: (index) => `Land of hole ${String(index)}`,
    help: 'From the edge of the hole to the edge of the part, at its nearest; as much is left towards the opening.',
    unit: 'mm',
    min: 0.5,
    max: 100,
    why: 'less tears, and more is no land',
    count: oneOf,
    most: MOST_HOLES,
    default: () => demoCover.land,
    step: 0.5,
    when: (v) => v.outline === 'lands' || (v.outline === 'round' && v.band !== undefined),
  },
  bulge: {
    assumed: true,
    kind: 'series',
    group: outline,
    row: 'On from hole',
    label: 'Bulge',
    member: (index) => `Bulge of the edge on from hole ${String(index)}`,
    help: 'How far the edge from this land to the next, anticlockwise, stands out beyond a straightedge laid on both. 0 is straight; hollow is negative.',
    unit: 'mm',
    min: -100,
    max: 100,
    why: 'no edge is rounder',
    count: oneOf,
    most: MOST_HOLES,
    default: () => 0,
    step: 0.5,
    when: (v) => v.outline === 'lands',
  },
  outside: {
    kind: 'number',
    group: outline,
    label: 'Outside diameter',
    help: 'About the chosen centre.',
    unit: 'mm',
    min: 5,
    max: 1000,
    why: 'smaller has no room for holes, and no engine has a larger cover',
    default: 108,
    step: 1,
    when: (v) => v.outline === 'round',
  },
  bore: {
    assumed: true,
    kind: 'number',
    group: outline,
    label: 'Bore',
    help: 'A hole about the same centre that is not among those numbered. 0 for none.',
    unit: 'mm',
    min: 0,
    max: 990,
    why: 'it must leave a part round it',
    default: 0,
    step: 0.5,
    when: (v) => v.outline !== 'none' && v.band === undefined,
  },
  'in-opening': {
    ...holeNumbers,
    group: outline,
    label: 'Holes that lie in the opening',
    help: 'Their numbers, with spaces between: those that need no land, as a bore in the middle that only helped to measure.',
    when: (v) => v.outline !== 'none' && v.band !== undefined,
  },
  paper: choice({
    assumed: true,
    group: outline,
    label: 'Paper for the template',
    help: 'For the PDF. What is larger than a sheet goes on several, to be joined.',
    options: { a4: 'A4', letter: 'Letter' },
    default: 'a4',
  }),
} as const satisfies Inputs;

/** Groups that stay shut until asked for. */
export const folded = [otherwise, centre, outline];
