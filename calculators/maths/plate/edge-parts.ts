import type { Place } from './place.ts';
import { fromEdge } from './from-edge.ts';
import type { Edge } from './land-outline.ts';

const RADIANS = Math.PI / 180;

/** How long an edge is, mm. */
export const lengthOf = (edge: Edge): number =>
  edge.kind === 'line'
    ? Math.hypot(edge.x2 - edge.x1, edge.y2 - edge.y1)
    : edge.radius * (edge.to - edge.from) * RADIANS;

/** The place on an edge after a share of its length, as an outline runs: a hollow edge clockwise. */
export function placeAlong(edge: Edge, share: number): Place {
  if (edge.kind === 'line') {
    const { x1, y1, x2, y2 } = edge;
    return { x: x1 + (x2 - x1) * share, y: y1 + (y2 - y1) * share };
  }
  const turned = (edge.to - edge.from) * (edge.hollow ? 1 - share : share);
  const angle = (edge.from + turned) * RADIANS;
  return { x: edge.x + edge.radius * Math.cos(angle), y: edge.y + edge.radius * Math.sin(angle) };
}

/** The part of an edge from one share of its length to another, as an outline runs. */
export function partOfEdge(edge: Edge, from: number, to: number): Edge {
  if (edge.kind === 'line') {
    const [a, b] = [placeAlong(edge, from), placeAlong(edge, to)];
    return { kind: 'line', x1: a.x, y1: a.y, x2: b.x, y2: b.y };
  }
  const sweep = edge.to - edge.from;
  const [first, last] = edge.hollow ? [1 - to, 1 - from] : [from, to];
  return { ...edge, from: edge.from + sweep * first, to: edge.from + sweep * last };
}

/** After which share of its length an edge comes by a place that lies on the line or circle it is part of. */
export function shareAt(edge: Edge, { x, y }: Place): number {
  if (edge.kind === 'line') {
    const [ux, uy] = [edge.x2 - edge.x1, edge.y2 - edge.y1];
    return ((x - edge.x1) * ux + (y - edge.y1) * uy) / (ux * ux + uy * uy);
  }
  const way = Math.atan2(y - edge.y, x - edge.x) / RADIANS;
  const turned = (((way - edge.from) % 360) + 360) % 360;
  const share = turned / (edge.to - edge.from);
  return edge.hollow ? 1 - share : share;
}

/** Area inside a closed run of edges, mm²; negative where it runs clockwise. */
export function areaWithin(edges: readonly Edge[]): number {
  return edges.reduce((sum, edge) => {
    if (edge.kind === 'line') return sum + (edge.x1 * edge.y2 - edge.x2 * edge.y1) / 2;
    const { x, y, radius } = edge;
    const [from, to] = [edge.from * RADIANS, edge.to * RADIANS];
    const swept =
      (radius / 2) *
      (radius * (to - from) +
        x * (Math.sin(to) - Math.sin(from)) -
        y * (Math.cos(to) - Math.cos(from)));
    return sum + (edge.hollow ? -swept : swept);
  }, 0);
}

/**
 * How far a place lies inside a closed run of edges that meet without a corner, mm; negative
 * outside. Anticlockwise edges hold what is on their left.
 */
export function depthWithin(edges: readonly Edge[], x: number, y: number): number {
  const near = edges.map((edge) => fromEdge(edge, x, y));
  const least = Math.min(...near);
  const edge = edges[near.indexOf(least)]!;
  const left =
    edge.kind === 'line'
      ? (edge.x2 - edge.x1) * (y - edge.y1) - (edge.y2 - edge.y1) * (x - edge.x1) >= 0
      : Math.hypot(x - edge.x, y - edge.y) <= edge.radius !== edge.hollow;
  return left ? least : -least;
}
