import { BooleanOperations, Circle, line, point, Polygon, vector } from '@flatten-js/core';

export const FLATTEN = '@flatten-js/core 1.6.15 (npm)';

type Point = readonly [x: number, y: number];

/** The corners of a polygon, given anticlockwise, whose sides are moved inwards, mm. */
function movedIn(corners: readonly Point[], by: number): Point[] {
  const sides = corners.map(([x, y], i) => {
    const [u, v] = corners[(i + 1) % corners.length]!;
    const inward = vector(y - v, u - x).normalize();
    return line(point(x + inward.x * by, y + inward.y * by), inward);
  });
  return sides.map((side, i): Point => {
    const [meeting] = sides.at(i - 1)!.intersect(side);
    return [meeting!.x, meeting!.y];
  });
}

/** Area of a polygon with its sides moved inwards, less some discs, by the library's booleans, mm². */
export function areaLessDiscs(
  corners: readonly Point[],
  inwards: number,
  discs: readonly { readonly x: number; readonly y: number; readonly radius: number }[],
): number {
  const whole = new Polygon(movedIn(corners, inwards).map(([x, y]) => point(x, y)));
  return discs
    .reduce(
      (rest, { x, y, radius }) =>
        BooleanOperations.subtract(rest, new Polygon([new Circle(point(x, y), radius).toArc()])),
      whole,
    )
    .area();
}
