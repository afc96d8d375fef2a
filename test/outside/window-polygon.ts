import { Arc, BooleanOperations, Point, Polygon, Segment } from '@flatten-js/core';
import type { PortWindow } from '../../calculators/maths/cylinder/port-area.ts';

export const POLYGONS = '@flatten-js/core 1.6.15: the window as a polygon with arcs, cut by a box';

/** Area in mm² of the part of a window within `depth` mm of its top, by cutting polygons. */
export function polygonArea({ width, height, cornerRadius: r }: PortWindow, depth: number): number {
  const quarter = Math.PI / 2;
  const corner = (x: number, y: number, start: number) =>
    new Arc(new Point(x, y), r, start, start + quarter, true);
  const line = (x1: number, y1: number, x2: number, y2: number) =>
    new Segment(new Point(x1, y1), new Point(x2, y2));
  const window = new Polygon();
  window.addFace([
    line(r, 0, width - r, 0),
    corner(width - r, r, 3 * quarter),
    line(width, r, width, height - r),
    corner(width - r, height - r, 0),
    line(width - r, height, r, height),
    corner(r, height - r, quarter),
    line(0, height - r, 0, r),
    corner(r, r, 2 * quarter),
  ]);
  const cut = new Polygon([
    [-1, -1],
    [width + 1, -1],
    [width + 1, depth],
    [-1, depth],
  ]);
  return BooleanOperations.intersect(window, cut).area();
}
