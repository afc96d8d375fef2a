import type { Edge } from './land-outline.ts';

const DEGREES = 180 / Math.PI;

/** How far a place lies from an edge, mm. */
export function fromEdge(edge: Edge, x: number, y: number): number {
  if (edge.kind === 'line') {
    const [wx, wy] = [edge.x2 - edge.x1, edge.y2 - edge.y1];
    const square = wx * wx + wy * wy;
    const part =
      square > 0 ? Math.max(0, Math.min(1, ((x - edge.x1) * wx + (y - edge.y1) * wy) / square)) : 0;
    return Math.hypot(x - edge.x1 - part * wx, y - edge.y1 - part * wy);
  }
  const way = Math.atan2(y - edge.y, x - edge.x);
  const turn = (way - edge.from / DEGREES) % (2 * Math.PI);
  const reach = (edge.to - edge.from) / DEGREES;
  if ((turn < 0 ? turn + 2 * Math.PI : turn) <= reach + 1e-12) {
    return Math.abs(Math.hypot(x - edge.x, y - edge.y) - edge.radius);
  }
  const ends = [edge.from, edge.to].map((angle) =>
    Math.hypot(
      x - edge.x - edge.radius * Math.cos(angle / DEGREES),
      y - edge.y - edge.radius * Math.sin(angle / DEGREES),
    ),
  );
  return Math.min(...ends);
}
