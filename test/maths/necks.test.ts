import { Arc, point, segment } from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
import { bandOpenings } from '../../calculators/maths/plate/band-openings.ts';
import { depthWithin } from '../../calculators/maths/plate/edge-parts.ts';
import { landOutline, type Edge, type Land } from '../../calculators/maths/plate/land-outline.ts';
import { betweenEdges, narrowestNeck } from '../../calculators/maths/plate/necks.ts';
import { spreader } from '../calculators/states.ts';
import { bar, land } from './lands.ts';

const RADIANS = Math.PI / 180;

/** An edge as @flatten-js/core 1.6.15 has it. */
const shape = (edge: Edge) =>
  edge.kind === 'line'
    ? segment(edge.x1, edge.y1, edge.x2, edge.y2)
    : new Arc(point(edge.x, edge.y), edge.radius, edge.from * RADIANS, edge.to * RADIANS, true);

type Shape = ReturnType<typeof shape>;

/** By that library: how far two edges lie apart, and from where to where. */
const nearest = (a: Shape, b: Shape) => {
  const [distance, way] = a.distanceTo(b as never);
  return { distance, from: way.start, to: way.end };
};

describe('a neck between two edges', () => {
  it.each([
    ['hollow from both sides', [-10, 0, -12, 0], 30 - 10 - 12],
    ['hollow from one side, against a straight edge', [-26, 0, 0, 0], 4],
    ['hollow from one side, against one that stands out', [-26, 0, 3, 0], 7],
  ])('%s is as wide as what the hollows leave of 30 mm', (_, bulges, wide) => {
    expect(narrowestNeck(landOutline(bar, bulges))!.wall).toBeCloseTo(wide, 6);
  });

  it('is found from whichever hole the outline begins, and names the edges that face each other', () => {
    const edges = landOutline(bar, [-10, 0, -12, 0]);
    const { edges: pair } = narrowestNeck(edges)!;
    expect(pair).toHaveLength(2);
    for (const i of pair) expect(edges[i]).toMatchObject({ kind: 'arc', hollow: true });
    for (let turn = 1; turn < edges.length; turn += 1) {
      const turned = [...edges.slice(turn), ...edges.slice(0, turn)];
      expect(narrowestNeck(turned)!.wall).toBeCloseTo(8, 6);
    }
  });

  it('stands behind a land that two hollow edges run round', () => {
    // Both edges curl in behind the land at the top, by a mirror about X 30.
    const three = [land(0, 0, 6), land(60, 0, 6), land(30, 60, 8)];
    const edges = landOutline(three, [0, -18, -18]);
    const [first, second] = edges.filter((edge) => edge.kind === 'arc' && edge.hollow);
    const across = nearest(shape(first!), shape(second!));
    expect(narrowestNeck(edges)!.wall).toBeCloseTo(across.distance, 6);
    expect(across.distance).toBeLessThan(16);
  });

  it('is none where no edge is hollow, or where a hollow one faces nothing', () => {
    expect(narrowestNeck(landOutline(bar, [0, 0, 0, 0]))).toBeUndefined();
    expect(narrowestNeck(landOutline(bar, [3, 2, 3, 2]))).toBeUndefined();
    expect(narrowestNeck(landOutline([land(0, 0, 9)], []))).toBeUndefined();
  });
});

describe('two hollow edges back to back', () => {
  const arc = (x: number, from: number, to: number): Edge => ({
    kind: 'arc',
    x,
    y: 0,
    radius: 5,
    from,
    to,
    hollow: true,
  });
  const line = (x1: number, y1: number, x2: number, y2: number): Edge => ({
    kind: 'line',
    x1,
    y1,
    x2,
    y2,
  });
  const far = [line(-50, 50, -50, 40), line(-50, 30, -50, 20)];
  const between = (b: Edge, ...more: Edge[]) =>
    narrowestNeck([arc(0, -60, 60), far[0]!, b, far[1]!, ...more])?.wall;

  it('leave the metal between their circles, 12 mm apart', () => {
    expect(between(arc(12, 120, 240))).toBeCloseTo(2, 9);
  });

  it('leave none across the air that the further one bends round', () => {
    expect(between(arc(12, -60, 60))).toBeUndefined();
  });

  it('face a straight or a round edge only where the metal lies between', () => {
    // Metal is on the left of a straight edge, and within a round one.
    expect(between(line(8, -9, 8, 9))).toBeCloseTo(3, 9);
    expect(between(line(8, 9, 8, -9))).toBeUndefined();
    const bowed = (from: number): Edge => ({
      kind: 'arc',
      x: 12,
      y: 0,
      radius: 3,
      from,
      to: from + 120,
      hollow: false,
    });
    expect(between(bowed(-60))).toBeCloseTo(10, 9);
    expect(between(bowed(120))).toBeUndefined();
  });

  it('make no neck about one centre, where they are as far apart everywhere', () => {
    expect(between({ ...(arc(0, -60, 60) as object), radius: 9, hollow: false } as Edge)).toBe(
      undefined,
    );
  });

  it('face nothing but what lies between them', () => {
    expect(between(arc(12, 120, 240), line(6, 9, 6, 1))).toBeCloseTo(2, 9);
    expect(between(arc(12, 120, 240), line(6.1, 9, 6.1, -1))).toBeCloseTo(0.9, 9);
    expect(between(arc(12, 120, 240), line(5.5, -0.3, 6.5, 0.3))).toBeUndefined();
  });
});

/** Random parts with hollow edges that are parts. */
function* parts(seed: number, count: number): Generator<readonly [Edge[], Land[]]> {
  const next = spreader(seed);
  for (let made = 0; made < count;) {
    const lands = Array.from({ length: 3 + Math.floor(next() * 4) }, () =>
      land(100 * next(), 60 * next(), 3 + 5 * next()),
    );
    const bulges = lands.map(() => (next() < 0.3 ? 0 : 5 - 30 * next()));
    try {
      const edges = [...landOutline(lands, bulges)];
      made += 1;
      yield [edges, lands];
    } catch (problem) {
      if (!(problem instanceof MathsError)) throw problem;
    }
  }
}

/** Whether a line leaves an edge square to it: nothing nearby on the edge is nearer to its far end. */
const squareTo = (edge: Edge, from: { x: number; y: number }, to: { x: number; y: number }) => {
  if (edge.kind === 'line') {
    const [dx, dy] = [edge.x2 - edge.x1, edge.y2 - edge.y1];
    const dot = dx * (to.x - from.x) + dy * (to.y - from.y);
    return Math.abs(dot) < 1e-5 * Math.hypot(dx, dy) * Math.hypot(to.x - from.x, to.y - from.y);
  }
  const [ux, uy] = [from.x - edge.x, from.y - edge.y];
  const cross = ux * (to.y - from.y) - uy * (to.x - from.x);
  return Math.abs(cross) < 1e-5 * edge.radius * Math.hypot(to.x - from.x, to.y - from.y);
};

it('of random parts the narrowest neck is what @flatten-js/core measures', () => {
  let necks = 0;
  for (const [edges] of parts(77, 250)) {
    const shapes = edges.map(shape);
    const across = edges.flatMap((a, i) =>
      edges.flatMap((b, j) => {
        if (j < i + 2 || (i === 0 && j === edges.length - 1)) return [];
        if (![a, b].some((edge) => edge.kind === 'arc' && edge.hollow)) return [];
        const { distance, from, to } = nearest(shapes[i]!, shapes[j]!);
        if (!squareTo(a, from, to) || !squareTo(b, to, from)) return [];
        // Places along the line between them all lie in the metal.
        const inside = [0.02, 0.2, 0.4, 0.6, 0.8, 0.98].every(
          (share) =>
            depthWithin(edges, from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share) >
            0,
        );
        return inside ? [distance] : [];
      }),
    );
    const ours = narrowestNeck(edges)?.wall ?? Infinity;
    if (across.length === 0) continue;
    necks += 1;
    expect(ours).toBeLessThan(Math.min(...across) + 1e-6);
    // Nothing is narrower than the two edges nearest to each other that are no neighbours.
    expect(ours).toBeGreaterThan(Math.min(...across) - 1e-6);
  }
  expect(necks).toBeGreaterThan(60);
});

it('how far edges lie apart is what @flatten-js/core measures, of all pairs that do not meet', () => {
  let pairs = 0;
  for (const [edges, lands] of parts(78, 60)) {
    let all = edges;
    try {
      all = [...edges, ...bandOpenings(edges, 2.5, lands).flatMap((one) => one.map((e) => e.edge))];
    } catch (problem) {
      if (!(problem instanceof MathsError)) throw problem;
    }
    const shapes = all.map(shape);
    all.forEach((a, i) => {
      all.slice(0, i).forEach((b, j) => {
        const { distance } = nearest(shapes[i]!, shapes[j]!);
        if (distance < 1e-3) return;
        pairs += 1;
        expect(betweenEdges(a, b)).toBeCloseTo(distance, 5);
        expect(betweenEdges(b, a)).toBeCloseTo(distance, 5);
      });
    });
  }
  expect(pairs).toBeGreaterThan(2000);
});
