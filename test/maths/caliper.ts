import type { Pattern } from '../../calculators/maths/plate/hole-distances.ts';

type Point = readonly [x: number, y: number];

export const apart = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** What a caliper without error would read between the centres of some holes, numbered from 0. */
export const exactly = (
  places: readonly Point[],
  pairs: readonly (readonly [number, number])[],
): Pattern => ({
  diameters: places.map(() => 6),
  distances: pairs.map(([a, b]) => ({
    from: a + 1,
    to: b + 1,
    read: apart(places[a]!, places[b]!),
    span: 'centres',
  })),
});
