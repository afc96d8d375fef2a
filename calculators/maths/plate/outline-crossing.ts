import { crossings } from './edge-crossings.ts';
import { lengthOf, shareAt } from './edge-parts.ts';
import type { Place } from './place.ts';
import type { Edge } from './land-outline.ts';

/** Nearer to its own end, an edge only runs into its neighbour there, mm. */
const END = 1e-5;

export interface Crossing {
  /** Which two edges, from 0, in the order of the outline. */
  readonly edges: readonly [number, number];
  readonly at: Place;
}

/** Whether a place on the line or circle of an edge lies on the edge itself, and not at its ends. */
function within(edge: Edge, place: Place): boolean {
  const share = shareAt(edge, place);
  const end = END / lengthOf(edge);
  return share > end && share < 1 - end;
}

/**
 * The first two edges of an outline that cross or touch, and where; nothing where it crosses itself
 * nowhere.
 *
 * @param edges Closed, anticlockwise, and meeting without a corner, as `landOutline` makes them: two
 *   neighbours only touch where they meet.
 */
export function crossingOf(edges: readonly Edge[]): Crossing | undefined {
  for (const [j, b] of edges.entries()) {
    for (const [i, a] of edges.slice(0, Math.max(0, j - 1)).entries()) {
      if (i === 0 && j === edges.length - 1) continue;
      const at = crossings(a, b).find((place) => within(a, place) && within(b, place));
      if (at) return { edges: [i, j], at };
    }
  }
  return undefined;
}
