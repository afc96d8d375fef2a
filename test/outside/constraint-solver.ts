import { GcsWrapper, init_planegcs_module, type SketchPrimitive } from '@salusoft89/planegcs';
import type { PistonInBarrel } from '../../calculators/maths/cylinder/port-timing.ts';

/**
 * The slider-crank drawn as a sketch and solved by a constraint solver, which knows distances and
 * coordinates and none of our formulas. It gives the crank angle from true top dead centre at which
 * the crown stands at a height.
 */
const solver = await init_planegcs_module();

export const SOLVER = '@salusoft89/planegcs 1.3.0, the sketch constraint solver of FreeCAD';

interface Place {
  readonly x: number;
  readonly y: number;
}

function solve(primitives: SketchPrimitive[], wanted: string): Place {
  const wrapper = new GcsWrapper(new solver.GcsSystem());
  try {
    wrapper.set_convergence_threshold(1e-15);
    wrapper.push_primitives_and_params(primitives);
    if (wrapper.solve() > 1) throw new Error('The sketch could not be solved.');
    wrapper.apply_solution();
    const point = wrapper.sketch_index.get_sketch_point(wanted);
    return { x: point.x, y: point.y };
  } finally {
    wrapper.destroy_gcs_module();
  }
}

const tops = new Map<PistonInBarrel, Place>();

/** Pin at true top dead centre, sought once for each engine. */
function topOfPin(barrel: PistonInBarrel): Place {
  const known = tops.get(barrel) ?? solvedTop(barrel);
  tops.set(barrel, known);
  return known;
}

/** Crank and rod in line with each other, the pin on its line. */
function solvedTop({ stroke, rodLength, pinOffset }: PistonInBarrel): Place {
  return solve(
    [
      { id: 'main', type: 'point', x: 0, y: 0, fixed: true },
      { id: 'pin', type: 'point', x: pinOffset, y: rodLength + stroke / 2, fixed: false },
      { id: 'line', type: 'coordinate_x', p_id: 'pin', x: pinOffset },
      {
        id: 'reach',
        type: 'p2p_distance',
        p1_id: 'main',
        p2_id: 'pin',
        distance: rodLength + stroke / 2,
      },
    ],
    'pin',
  );
}

/**
 * Degrees after true top dead centre, 0 to 360, at which the crown stands `edge` mm below the deck.
 */
export function solvedAngle(barrel: PistonInBarrel, edge: number, side: 'down' | 'up'): number {
  const { stroke, rodLength, pinOffset, deckClearance } = barrel;
  const top = topOfPin(barrel);
  const pinHeight = top.y - (edge - deckClearance);
  const big = solve(
    [
      { id: 'main', type: 'point', x: 0, y: 0, fixed: true },
      { id: 'pin', type: 'point', x: pinOffset, y: pinHeight, fixed: true },
      { id: 'big', type: 'point', x: (side === 'down' ? 0.5 : -0.5) * stroke, y: 0, fixed: false },
      { id: 'throw', type: 'p2p_distance', p1_id: 'main', p2_id: 'big', distance: stroke / 2 },
      { id: 'rod', type: 'p2p_distance', p1_id: 'big', p2_id: 'pin', distance: rodLength },
    ],
    'big',
  );
  const angle = degreesFromUp(big) - degreesFromUp(top);
  return angle < 0 ? angle + 360 : angle;
}

function degreesFromUp({ x, y }: Place): number {
  return (Math.atan2(x, y) * 180) / Math.PI;
}

const hole = (index: number): string => `hole-${index}`;

/**
 * Holes held by distances between their centres, near the places given: hole 1 at 0 0 and hole 2 on
 * +X. Holes are counted from 1.
 */
export function solvedPattern(
  near: readonly (readonly [number, number])[],
  legs: readonly (readonly [from: number, to: number, length: number])[],
): readonly Place[] {
  const primitives: SketchPrimitive[] = [
    ...near.map(([x, y], i): SketchPrimitive => ({
      id: hole(i + 1),
      type: 'point',
      x,
      y,
      fixed: i === 0,
    })),
    { id: 'level', type: 'coordinate_y', p_id: hole(2), y: 0 },
    ...legs.map(([from, to, distance], i): SketchPrimitive => ({
      id: `leg-${i}`,
      type: 'p2p_distance',
      p1_id: hole(from),
      p2_id: hole(to),
      distance,
    })),
  ];
  return near.map((_, i) => solve(primitives, hole(i + 1)));
}

interface Round extends Place {
  readonly radius: number;
}

/**
 * How far a place lies from an edge that touches two lands below them: straight, or round and standing
 * out by `bulge` beyond the straight one. The middle of a round edge is sought by its distances from
 * the lands' middles and from the straight edge, which is sought as two points square to it.
 */
export function solvedTangent(a: Round, b: Round, bulge: number, from: Place): number {
  const touch = (at: 'touch-a' | 'touch-b'): Place =>
    solve(
      [
        { id: 'a', type: 'point', x: a.x, y: a.y, fixed: true },
        { id: 'b', type: 'point', x: b.x, y: b.y, fixed: true },
        { id: 'touch-a', type: 'point', x: a.x, y: a.y - a.radius, fixed: false },
        { id: 'touch-b', type: 'point', x: b.x, y: b.y - b.radius, fixed: false },
        { id: 'edge', type: 'line', p1_id: 'touch-a', p2_id: 'touch-b' },
        { id: 'spoke-a', type: 'line', p1_id: 'a', p2_id: 'touch-a' },
        { id: 'spoke-b', type: 'line', p1_id: 'b', p2_id: 'touch-b' },
        { id: 'ra', type: 'p2p_distance', p1_id: 'a', p2_id: 'touch-a', distance: a.radius },
        { id: 'rb', type: 'p2p_distance', p1_id: 'b', p2_id: 'touch-b', distance: b.radius },
        { id: 'square-a', type: 'perpendicular_ll', l1_id: 'edge', l2_id: 'spoke-a' },
        { id: 'square-b', type: 'perpendicular_ll', l1_id: 'edge', l2_id: 'spoke-b' },
      ],
      at,
    );
  const [ta, tb] = [touch('touch-a'), touch('touch-b')];
  const length = Math.hypot(tb.x - ta.x, tb.y - ta.y);
  const normal = { x: (tb.y - ta.y) / length, y: -(tb.x - ta.x) / length };
  const above = (place: Place): number =>
    -((place.x - ta.x) * normal.x + (place.y - ta.y) * normal.y);
  if (bulge === 0) return above(from);
  // For each radius the solver places the middle; the one is sought whose edge stands out enough.
  const middle = (radius: number): Place => {
    const side = bulge > 0 ? -1 : 1;
    return solve(
      [
        { id: 'a', type: 'point', x: a.x, y: a.y, fixed: true },
        { id: 'b', type: 'point', x: b.x, y: b.y, fixed: true },
        {
          id: 'middle',
          type: 'point',
          x: (a.x + b.x) / 2 + normal.x * (bulge + side * radius),
          y: (a.y + b.y) / 2 + normal.y * (bulge + side * radius),
          fixed: false,
        },
        {
          id: 'to-a',
          type: 'p2p_distance',
          p1_id: 'middle',
          p2_id: 'a',
          distance: radius + side * a.radius,
        },
        {
          id: 'to-b',
          type: 'p2p_distance',
          p1_id: 'middle',
          p2_id: 'b',
          distance: radius + side * b.radius,
        },
      ],
      'middle',
    );
  };
  const standsOut = (radius: number): number =>
    bulge > 0 ? radius - above(middle(radius)) : -above(middle(radius)) - radius;
  let [low, high] = [40, 2000];
  for (let i = 0; i < 60; i += 1) {
    const half = (low + high) / 2;
    if (Math.abs(standsOut(half)) > Math.abs(bulge)) low = half;
    else high = half;
  }
  const centre = middle(high);
  return Math.abs(Math.hypot(from.x - centre.x, from.y - centre.y) - high);
}
