import { leastSquares } from '../numeric/linear.ts';
import { misfitsOf, sumOfSquares, type Net } from './hole-distances.ts';
import type { Place } from './place.ts';
import { settled } from './settled-places.ts';

/** The distances of one hole, and where they go. */
const spokesOf = ({ pairs, lengths }: Net, hole: number, places: readonly Place[]) =>
  pairs.flatMap((pair, k) =>
    pair.includes(hole)
      ? [{ to: places[pair[0] === hole ? pair[1] : pair[0]]!, length: lengths[k]! }]
      : [],
  );

/** Steps that bring one hole near enough to its best place to judge it by. */
const STEPS_OF_ONE = 6;

interface Turned {
  readonly place: Place;
  /** Sum of squares of this hole's misfits, there and where it lies now. */
  readonly there: number;
  readonly here: number;
  readonly count: number;
}

/** A hole on the other side of the line that runs best through those it is measured to. */
function turnedOver(net: Net, places: readonly Place[], hole: number): Turned {
  const spokes = spokesOf(net, hole, places);
  const count = spokes.length;
  const [mx, my] = (['x', 'y'] as const).map(
    (axis) => spokes.reduce((sum, { to }) => sum + to[axis], 0) / count,
  ) as [number, number];
  let [xx, xy, yy] = [0, 0, 0];
  for (const { to } of spokes) {
    xx += (to.x - mx) ** 2;
    xy += (to.x - mx) * (to.y - my);
    yy += (to.y - my) ** 2;
  }
  const direction = Math.atan2(2 * xy, xx - yy) / 2;
  const [cos, sin] = [Math.cos(direction), Math.sin(direction)];
  const at = places[hole]!;
  const up = -(at.x - mx) * sin + (at.y - my) * cos;
  const squares = (x: number, y: number): number =>
    sumOfSquares(spokes.map(({ to, length }) => length - Math.hypot(x - to.x, y - to.y)));
  const [x, y] = leastSquares(
    ([u, v]) => ({
      residuals: spokes.map(({ to, length }) => length - Math.hypot(u! - to.x, v! - to.y)),
      slopes: spokes.map(({ to }) => {
        const length = Math.hypot(u! - to.x, v! - to.y) || 1e-12;
        return [(u! - to.x) / length, (v! - to.y) / length];
      }),
    }),
    [at.x + 2 * up * sin, at.y - 2 * up * cos],
    STEPS_OF_ONE,
  ) as [number, number];
  return { place: { x, y }, there: squares(x, y), here: squares(at.x, at.y), count };
}

/** Places, and what the holes would be on their other sides. */
export interface Laid {
  readonly places: readonly Place[];
  /** Each hole turned over, as the others lie. */
  readonly turned: readonly Turned[];
}

const laid = (net: Net, places: readonly Place[]): Laid => ({
  places,
  turned: places.map((_, hole) => turnedOver(net, places, hole)),
});

/** Unfolds what a start has put on the wrong side: each hole that fits better turned over is. */
export function unfolded(net: Net, start: readonly Place[]): Laid {
  let now = laid(net, settled(net, start));
  for (const _ of start) {
    const sum = sumOfSquares(misfitsOf(net, now.places));
    const better = now.turned
      .map((one, hole) => ({ ...one, hole }))
      .filter(({ there, here }) => there < here * (1 - 1e-6) - 1e-9)
      .sort((a, b) => a.there - a.here - (b.there - b.here))[0];
    if (!better) break;
    const next = settled(net, now.places.with(better.hole, better.place));
    if (!(sumOfSquares(misfitsOf(net, next)) < sum * (1 - 1e-9))) break;
    now = laid(net, next);
  }
  return now;
}
