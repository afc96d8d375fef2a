import type { Place } from './place.ts';
import type { Edge, RoundEdge, StraightEdge } from './land-outline.ts';

/** What misses by less touches, mm. */
const TOUCH = 1e-7;

function lineAndLine(a: StraightEdge, b: StraightEdge): Place[] {
  const [ux, uy] = [a.x2 - a.x1, a.y2 - a.y1];
  const [vx, vy] = [b.x2 - b.x1, b.y2 - b.y1];
  const across = ux * vy - uy * vx;
  if (Math.abs(across) < 1e-12 * Math.hypot(ux, uy) * Math.hypot(vx, vy)) return [];
  const part = ((b.x1 - a.x1) * vy - (b.y1 - a.y1) * vx) / across;
  return [{ x: a.x1 + part * ux, y: a.y1 + part * uy }];
}

function lineAndRound(line: StraightEdge, { x, y, radius }: RoundEdge): Place[] {
  const long = Math.hypot(line.x2 - line.x1, line.y2 - line.y1);
  const [ux, uy] = [(line.x2 - line.x1) / long, (line.y2 - line.y1) / long];
  const along = (x - line.x1) * ux + (y - line.y1) * uy;
  const [fx, fy] = [line.x1 + along * ux, line.y1 + along * uy];
  const apart = Math.hypot(fx - x, fy - y);
  if (apart > radius + TOUCH) return [];
  const half = Math.sqrt(Math.max(0, radius * radius - apart * apart));
  return [half, -half].map((by) => ({ x: fx + by * ux, y: fy + by * uy }));
}

function roundAndRound(a: RoundEdge, b: RoundEdge): Place[] {
  const apart = Math.hypot(b.x - a.x, b.y - a.y);
  if (apart > a.radius + b.radius + TOUCH) return [];
  if (apart < Math.abs(a.radius - b.radius) - TOUCH || apart < TOUCH) return [];
  const [ux, uy] = [(b.x - a.x) / apart, (b.y - a.y) / apart];
  const along = (apart * apart + a.radius * a.radius - b.radius * b.radius) / (2 * apart);
  const half = Math.sqrt(Math.max(0, a.radius * a.radius - along * along));
  return [half, -half].map((by) => ({
    x: a.x + along * ux - by * uy,
    y: a.y + along * uy + by * ux,
  }));
}

/** Where the lines and circles that two edges are parts of meet or touch: none, one or two places. */
export function crossings(a: Edge, b: Edge): Place[] {
  if (a.kind === 'line') return b.kind === 'line' ? lineAndLine(a, b) : lineAndRound(a, b);
  return b.kind === 'line' ? lineAndRound(b, a) : roundAndRound(a, b);
}
