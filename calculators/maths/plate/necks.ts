import { crossings } from './edge-crossings.ts';
import { placeAlong } from './edge-parts.ts';
import { fromEdge } from './from-edge.ts';
import { apart, type Place } from './place.ts';
import type { Edge, RoundEdge, StraightEdge } from './land-outline.ts';

/** What lies nearer to an edge lies on it, mm. */
const ON = 1e-7;

type Pair = readonly [Place, Place];

/** Both ways from a place along a direction. */
const bothWays = ({ x, y }: Place, far: number, u: Place): Place[] => [
  { x: x + far * u.x, y: y + far * u.y },
  { x: x - far * u.x, y: y - far * u.y },
];

/** Where a line meets a circle and a straight line at right angles. */
function squareToLine(round: RoundEdge, line: StraightEdge): Pair[] {
  const long = Math.hypot(line.x2 - line.x1, line.y2 - line.y1);
  const along = { x: (line.x2 - line.x1) / long, y: (line.y2 - line.y1) / long };
  const far = (round.x - line.x1) * along.x + (round.y - line.y1) * along.y;
  const foot = { x: line.x1 + far * along.x, y: line.y1 + far * along.y };
  const across = { x: -along.y, y: along.x };
  return bothWays(round, round.radius, across).map((place): Pair => [place, foot]);
}

/** The same of two circles; none where they share a centre. */
function squareToRound(a: RoundEdge, b: RoundEdge): Pair[] {
  const far = apart(a, b);
  if (far < ON) return [];
  const u = { x: (b.x - a.x) / far, y: (b.y - a.y) / far };
  return bothWays(a, a.radius, u).flatMap((from) =>
    bothWays(b, b.radius, u).map((to): Pair => [from, to]),
  );
}

/** The places on two edges, one of them round, between which a line stands square to both. */
function squareToBoth(a: Edge, b: Edge): Pair[] {
  const found =
    a.kind === 'line'
      ? b.kind === 'line'
        ? []
        : squareToLine(b, a).map(([from, to]): Pair => [to, from])
      : b.kind === 'line'
        ? squareToLine(a, b)
        : squareToRound(a, b);
  return found.filter(
    ([from, to]) => fromEdge(a, from.x, from.y) < ON && fromEdge(b, to.x, to.y) < ON,
  );
}

/** How far two edges that do not cross lie apart, mm. */
export function betweenEdges(a: Edge, b: Edge): number {
  const ends = (edge: Edge): Place[] => [placeAlong(edge, 0), placeAlong(edge, 1)];
  return Math.min(
    ...ends(a).map(({ x, y }) => fromEdge(b, x, y)),
    ...ends(b).map(({ x, y }) => fromEdge(a, x, y)),
    ...squareToBoth(a, b).map(([from, to]) => apart(from, to)),
  );
}

/** Whether the metal lies on the way from a place on an edge to another place. */
function intoMetal(edge: Edge, from: Place, to: Place): boolean {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  if (edge.kind === 'line') return (edge.x2 - edge.x1) * dy - (edge.y2 - edge.y1) * dx > 0;
  const outwards = (from.x - edge.x) * dx + (from.y - edge.y) * dy;
  return edge.hollow ? outwards > 0 : outwards < 0;
}

export interface Neck {
  /** mm across. */
  readonly wall: number;
  /** Which two edges face each other there, from 0, in the order of the outline. */
  readonly edges: readonly [number, number];
}

/**
 * The narrowest place between a hollow edge and another that is no neighbour of it, straight across
 * the metal and square to both; nothing where no hollow edge faces another. Two edges that are not
 * hollow lie at least as far apart as the land between them is wide.
 *
 * @param edges Anticlockwise, meeting without a corner and crossing nowhere, as `landOutline` gives
 *   them: where two come nearest, the line between them is square to both.
 */
export function narrowestNeck(edges: readonly Edge[]): Neck | undefined {
  const hollow = (edge: Edge): boolean => edge.kind === 'arc' && edge.hollow;
  let least: Neck | undefined;
  for (const [j, b] of edges.entries()) {
    for (const [i, a] of edges.slice(0, Math.max(0, j - 1)).entries()) {
      if ((i === 0 && j === edges.length - 1) || !(hollow(a) || hollow(b))) continue;
      for (const [from, to] of squareToBoth(a, b)) {
        const wall = apart(from, to);
        if (least !== undefined && wall >= least.wall) continue;
        if (!intoMetal(a, from, to) || !intoMetal(b, to, from)) continue;
        const across: Edge = { kind: 'line', x1: from.x, y1: from.y, x2: to.x, y2: to.y };
        const inTheWay = edges.some((edge) =>
          crossings(across, edge).some(
            ({ x, y }) =>
              fromEdge(edge, x, y) < ON &&
              fromEdge(across, x, y) < ON &&
              Math.min(apart(from, { x, y }), apart({ x, y }, to)) > ON,
          ),
        );
        if (!inTheWay) least = { wall, edges: [i, j] };
      }
    }
  }
  return least;
}
