import { placeAlong } from '../maths/plate/edge-parts.ts';
import { at, type Arc, type Circle, type Line, type Path, type Slot } from './shapes.ts';

/** A figure with at most six decimals, a millionth of a millimetre, and no exponent. */
export function figure(value: number): string {
  return String(Number(value.toFixed(6)) + 0);
}

/** A point in SVG terms: Y down. */
const point = (x: number, y: number): string => `${figure(x)} ${figure(-y)}`;

function arcTo(radius: number, from: number, to: number, x: number, y: number): string {
  const sweep = to - from;
  const large = Math.abs(sweep) > 180 ? 1 : 0;
  const end = at(x, y, radius, to);
  return `A${figure(radius)} ${figure(radius)} 0 ${large} ${sweep > 0 ? 0 : 1} ${point(end.x, end.y)}`;
}

/** A shape as the `d` of an SVG path, in mm with Y down. */
export function pathOf(shape: Circle | Line | Arc | Slot | Path): string {
  switch (shape.kind) {
    case 'line':
      return `M${point(shape.x1, shape.y1)}L${point(shape.x2, shape.y2)}`;
    case 'circle': {
      const { x, y, radius } = shape;
      return `M${point(x + radius, y)}${arcTo(radius, 0, 180, x, y)}${arcTo(radius, 180, 360, x, y)}Z`;
    }
    case 'arc': {
      const { x, y, radius, from, to } = shape;
      const start = at(x, y, radius, from);
      return `M${point(start.x, start.y)}${arcTo(radius, from, to, x, y)}`;
    }
    case 'path': {
      const start = placeAlong(shape.edges[0]!, 0);
      const run = shape.edges.map((edge) => {
        if (edge.kind === 'line') return `L${point(edge.x2, edge.y2)}`;
        const { x, y, radius, from, to } = edge;
        return edge.hollow ? arcTo(radius, to, from, x, y) : arcTo(radius, from, to, x, y);
      });
      return `M${point(start.x, start.y)}${run.join('')}Z`;
    }
    case 'slot': {
      const { x, y, radius, width, from, to } = shape;
      const half = width / 2;
      const first = at(x, y, radius, from);
      const last = at(x, y, radius, to);
      const start = at(x, y, radius + half, from);
      return [
        `M${point(start.x, start.y)}`,
        arcTo(radius + half, from, to, x, y),
        arcTo(half, to, to + 180, last.x, last.y),
        arcTo(radius - half, to, from, x, y),
        arcTo(half, from + 180, from + 360, first.x, first.y),
        'Z',
      ].join('');
    }
  }
}
