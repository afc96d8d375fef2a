import { integrate } from '../../calculators/maths/numeric/integrate.ts';
import { uncoveredArea, type PortWindow } from '../../calculators/maths/cylinder/port-area.ts';
import {
  blowdownAngleArea,
  crownAngleArea,
  discAngleArea,
  discOpenArea,
  skirtAngleArea,
} from '../../calculators/maths/cylinder/time-area.ts';
import { solvedAngle } from './constraint-solver.ts';
import { RUNNING_SUM, runningSum } from './running-sum.ts';
import type { OutsideCheck } from './types.ts';
import { POLYGONS, polygonArea } from './window-polygon.ts';

const topic = 'time-area';

const barrel = { stroke: 51, rodLength: 104, pinOffset: 1.5, deckClearance: 0.4 };
const rounded: PortWindow = { width: 34, height: 16, cornerRadius: 4, count: 1 };
const exhaust = { ...rounded, topEdge: 31 };
const transferEdge = 37.5;

/** Piston travel in mm at an angle after true top, straight from Pythagoras. */
function travel(degrees: number): number {
  const r = barrel.stroke / 2;
  const l = barrel.rodLength;
  const e = barrel.pinOffset;
  const phi = (degrees * Math.PI) / 180 + Math.asin(e / (l + r));
  const top = Math.sqrt((l + r) ** 2 - e ** 2);
  return top - r * Math.cos(phi) - Math.sqrt(l ** 2 - (r * Math.sin(phi) - e) ** 2);
}

/**
 * Each thin layer of the window has its own area and is open from its own angle to its own angle.
 * The layers are summed from the top edge down to `end`; the angles come from a constraint solver.
 * Within the corners the layers go by the angle round the corner's circle, which is even where the
 * depth is not.
 */
function byLayers(openFor: (depth: number) => number, end: number): number {
  const { width, height, cornerRadius: r } = rounded;
  const round = (fromEnd: number): number => Math.acos(1 - Math.min(fromEnd, r) / r);
  const corner = (angle: number, depthOf: (fromEnd: number) => number): number => {
    const open = width - 2 * r * (1 - Math.sin(angle));
    return open * openFor(depthOf(r * (1 - Math.cos(angle)))) * r * Math.sin(angle);
  };
  const top = runningSum((angle) => corner(angle, (d) => d), 0, round(end));
  const straight = runningSum((d) => width * openFor(d), r, Math.min(end, height - r));
  if (end <= height - r) return top + straight;
  const bottom = runningSum(
    (angle) => corner(angle, (d) => height - d),
    round(height - end),
    Math.PI / 2,
  );
  return top + straight + bottom;
}

const LAYERS = `${RUNNING_SUM}, summing layers of the window, each times the angle for which @salusoft89/planegcs 1.3.0 finds it open`;

export const checks: readonly OutsideCheck[] = [
  {
    topic,
    what: 'blowdown angle-area of a port 40 mm wide that opens 1 mm a degree, over 30°',
    source:
      'By hand: steps of 40 mm², each taken from the middle of its degree to the end: 40 × (29.5 + 28.5 + … + 0.5)',
    kind: 'hand-worked',
    unit: 'mm²·°',
    expected: 18_000,
    ours: () =>
      integrate(
        (degrees) => uncoveredArea({ width: 40, height: 30, cornerRadius: 0, count: 1 }, degrees),
        0,
        30,
      ),
    tolerance: 1e-6,
  },
  ...[1.5, 4, 9, 13.5].map((depth): OutsideCheck => ({
    topic,
    what: `area uncovered ${String(depth)} mm down a window of 34 × 16 mm with corners of 4 mm radius`,
    source: POLYGONS,
    kind: 'library',
    unit: 'mm²',
    expected: () => polygonArea(rounded, depth),
    ours: () => uncoveredArea(rounded, depth),
    tolerance: 1e-6,
  })),
  {
    topic,
    what: 'angle-area of a rounded exhaust window of 34 × 16 mm, 31 mm below the deck (stroke 51, rod 104, pin offset 1.5, deck 0.4 mm)',
    source: LAYERS,
    kind: 'library',
    unit: 'mm²·°',
    expected: () =>
      byLayers(
        (depth) => solvedAngle(barrel, 31 + depth, 'up') - solvedAngle(barrel, 31 + depth, 'down'),
        16,
      ),
    ours: () => crownAngleArea(barrel, exhaust),
    tolerance: 1e-5,
    why: 'of some 50 000',
  },
  {
    topic,
    what: 'blowdown angle-area of the same window until a transfer opens 37.5 mm below the deck',
    source: LAYERS,
    kind: 'library',
    unit: 'mm²·°',
    expected: () => {
      const until = solvedAngle(barrel, transferEdge, 'down');
      return byLayers(
        (depth) => until - solvedAngle(barrel, 31 + depth, 'down'),
        transferEdge - 31,
      );
    },
    ours: () => blowdownAngleArea(barrel, exhaust, transferEdge),
    tolerance: 1e-5,
  },
  {
    topic,
    what: 'angle-area of a square-cornered inlet of 30 × 18 mm, bottom edge 78 mm below the deck, skirt 62 mm (same engine)',
    source: `${RUNNING_SUM} over the crank angle, travel from Pythagoras`,
    kind: 'library',
    unit: 'mm²·°',
    expected: () => {
      const shutAt = 78 - 62 - barrel.deckClearance;
      const opens = solvedAngle(barrel, 78 - 62, 'up') - 360;
      const closes = solvedAngle(barrel, 78 - 62, 'down');
      return runningSum((degrees) => 30 * (shutAt - travel(degrees)), opens, closes);
    },
    ours: () =>
      skirtAngleArea(barrel, {
        width: 30,
        height: 18,
        cornerRadius: 0,
        count: 1,
        bottomEdge: 78,
        skirtLength: 62,
      }),
    tolerance: 1e-5,
  },
  {
    topic,
    what: 'angle-area of a disc valve’s window of 450 mm², open for 185°, its edge passing in 40°: two triangles and what is between',
    source: 'Worked by hand: 2 × ½ × 40 × 450 + 105 × 450',
    kind: 'hand-worked',
    unit: 'mm²·°',
    expected: 65_250,
    ours: () => discAngleArea(450, 185, 40),
    tolerance: 1e-9,
  },
  {
    topic,
    what: 'the same, the open area that the picture draws summed over the angle',
    source: `Worked by hand as above; ours summed by ${RUNNING_SUM}`,
    kind: 'hand-worked',
    unit: 'mm²·°',
    expected: 65_250,
    ours: () =>
      [
        [0, 40],
        [40, 145],
        [145, 185],
      ].reduce(
        (sum, [from, to]) => sum + runningSum((at) => discOpenArea(450, 185, 40, at), from!, to!),
        0,
      ),
    tolerance: 1e-6,
  },
];
