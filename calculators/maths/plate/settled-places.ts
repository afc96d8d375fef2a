import { cholesky, leastSquares, normal, solveBy } from '../numeric/linear.ts';
import { misfitsOf, type Net } from './hole-distances.ts';
import { inFrame, slopesOf, toPlaces, toUnknowns } from './hole-frame.ts';
import type { Place } from './place.ts';

/** The nearest least squares to some places. */
export function settled(net: Net, start: readonly Place[]): Place[] {
  const found = leastSquares(
    (unknowns) => {
      const places = toPlaces(unknowns);
      return { residuals: misfitsOf(net, places), slopes: slopesOf(places, net.pairs) };
    },
    toUnknowns(inFrame(start)),
  );
  return inFrame(toPlaces(found));
}

/** A step below this share of the pattern's size changes nothing. */
const SETTLED = 1e-13;

/**
 * The same from places of nearly the same readings, from where the slopes of the start serve all the
 * way: each step costs a tenth of a whole one. Where the steps do not grow shorter by half and more,
 * the whole way is gone.
 */
export function settledBeside({ pairs, lengths }: Net, start: readonly Place[]): Place[] {
  const from = inFrame(start);
  const lower = cholesky(normal(slopesOf(from, pairs), lengths)[0]);
  // A coordinate of every hole, so that none asks which of them are held.
  const at = from.flatMap(({ x, y }) => [x, y]);
  const size = Math.max(...at.map(Math.abs));
  for (let last = Infinity; lower;) {
    const pull = at.map(() => 0);
    pairs.forEach(([a, b], k) => {
      const [dx, dy] = [at[2 * a]! - at[2 * b]!, at[2 * a + 1]! - at[2 * b + 1]!];
      const share = lengths[k]! / Math.sqrt(dx * dx + dy * dy) - 1;
      pull[2 * a]! += share * dx;
      pull[2 * a + 1]! += share * dy;
      pull[2 * b]! -= share * dx;
      pull[2 * b + 1]! -= share * dy;
    });
    const by = solveBy(lower, [pull[2]!, ...pull.slice(4)]);
    const moved = Math.max(...by.map(Math.abs));
    if (!(moved < last)) break;
    by.forEach((step, i) => {
      at[i === 0 ? 2 : i + 3]! += step;
    });
    if (moved < SETTLED * size) {
      return inFrame(from.map((_, i) => ({ x: at[2 * i]!, y: at[2 * i + 1]! })));
    }
    last = moved / 2;
  }
  return settled({ pairs, lengths }, start);
}
