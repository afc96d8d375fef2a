import { expect } from 'vitest';
import type { Edge } from '../../calculators/maths/plate/land-outline.ts';

type Point = readonly [x: number, y: number];

/** Where an edge begins and ends as the outline runs, by the angles written in it. */
function ends(edge: Edge): readonly [Point, Point] {
  if (edge.kind === 'line') {
    return [
      [edge.x1, edge.y1],
      [edge.x2, edge.y2],
    ];
  }
  const at = (angle: number): Point => [
    edge.x + edge.radius * Math.cos((angle * Math.PI) / 180),
    edge.y + edge.radius * Math.sin((angle * Math.PI) / 180),
  ];
  return edge.hollow ? [at(edge.to), at(edge.from)] : [at(edge.from), at(edge.to)];
}

/** Each edge begins where the one before it ends, and the first where the last does. */
export function expectClosed(edges: readonly Edge[], within = 1e-6): void {
  edges.forEach((edge, i) => {
    const [, [x, y]] = ends(edge);
    const [[nextX, nextY]] = ends(edges[(i + 1) % edges.length]!);
    expect(Math.hypot(x - nextX, y - nextY)).toBeLessThan(within);
  });
}
