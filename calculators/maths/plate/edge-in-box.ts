import { crossings } from './edge-crossings.ts';
import { placeAlong } from './edge-parts.ts';
import { fromEdge } from './from-edge.ts';
import { reachOf, type Edge, type Reach, type StraightEdge } from './land-outline.ts';

/** What lies nearer to an edge lies on it, mm. */
const ON = 1e-7;

/** Whether two upright rectangles have room in common. */
export const overlap = (a: Reach, b: Reach): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

/** Whether one upright rectangle lies wholly within another. */
export const holds = (outer: Reach, inner: Reach): boolean =>
  inner.left >= outer.left &&
  inner.right <= outer.right &&
  inner.bottom >= outer.bottom &&
  inner.top <= outer.top;

const sidesOf = ({ left, right, bottom, top }: Reach): StraightEdge[] => [
  { kind: 'line', x1: left, y1: bottom, x2: right, y2: bottom },
  { kind: 'line', x1: right, y1: bottom, x2: right, y2: top },
  { kind: 'line', x1: right, y1: top, x2: left, y2: top },
  { kind: 'line', x1: left, y1: top, x2: left, y2: bottom },
];

/** Whether any part of an edge lies in an upright rectangle, or on its sides. */
export function comesInto(edge: Edge, box: Reach): boolean {
  const { left, right, bottom, top } = reachOf([edge]);
  // An upright line reaches over nothing, and would overlap nothing.
  const reach = { left: left - ON, right: right + ON, bottom: bottom - ON, top: top + ON };
  if (!overlap(reach, box)) return false;
  const { x, y } = placeAlong(edge, 0);
  if (x >= box.left && x <= box.right && y >= box.bottom && y <= box.top) return true;
  return sidesOf(box).some((side) =>
    crossings(edge, side).some(
      (place) => fromEdge(edge, place.x, place.y) < ON && fromEdge(side, place.x, place.y) < ON,
    ),
  );
}
