import { MathsError } from '../numeric/errors.ts';
import { leastSquares } from '../numeric/linear.ts';
import type { Place } from './place.ts';

export interface PitchCircle extends Place {
  /** mm. */
  readonly radius: number;
  /** How far each place lies outside the circle, mm; inside is negative. */
  readonly off: readonly number[];
  /** Root mean square of these, mm. */
  readonly rms: number;
}

/** Places flatter than this share of their reach lie in one line. */
const FLAT = 1e-3;

/** How far places reach across the line that runs best through them, as a share of that along it. */
function flatness(places: readonly Place[], middle: Place): number {
  let [xx, xy, yy] = [0, 0, 0];
  for (const { x, y } of places) {
    xx += (x - middle.x) ** 2;
    xy += (x - middle.x) * (y - middle.y);
    yy += (y - middle.y) ** 2;
  }
  const [half, root] = [(xx + yy) / 2, Math.hypot((xx - yy) / 2, xy)];
  return Math.sqrt(Math.max(0, half - root) / (half + root));
}

/**
 * The circle that runs best through three or more places: least squares of how far they lie off it.
 *
 * Source: W. Gander, G. H. Golub and R. Strebel, Least-squares fitting of circles and ellipses, BIT
 * Numerical Mathematics 34 (1994), 558–578, section 3 (geometric fit).
 *
 * @throws MathsError `too-few-places`, or `places-in-line`.
 */
export function pitchCircle(places: readonly Place[]): PitchCircle {
  if (places.length < 3) {
    throw new MathsError(
      'too-few-places',
      ['places'],
      'A circle needs three holes or more. Name more of those that lie on it, or choose one hole as the centre.',
    );
  }
  const middle = {
    x: places.reduce((sum, { x }) => sum + x, 0) / places.length,
    y: places.reduce((sum, { y }) => sum + y, 0) / places.length,
  };
  if (!(flatness(places, middle) > FLAT)) {
    throw new MathsError(
      'places-in-line',
      ['places'],
      'These holes lie in one line, and no circle runs through them. Name others, or choose one hole as the centre.',
    );
  }
  const start = places.reduce((sum, p) => sum + Math.hypot(p.x - middle.x, p.y - middle.y), 0);
  const [x, y, radius] = leastSquares(
    ([u, v, r]) => {
      const ways = places.map((place) => [place.x - u!, place.y - v!] as const);
      return {
        residuals: ways.map(([a, b]) => Math.hypot(a, b) - r!),
        slopes: ways.map(([a, b]) => {
          const length = Math.hypot(a, b) || 1e-12;
          return [a / length, b / length, 1];
        }),
      };
    },
    [middle.x, middle.y, start / places.length],
  ) as [number, number, number];
  const off = places.map((place) => Math.hypot(place.x - x, place.y - y) - radius);
  return {
    x,
    y,
    radius,
    off,
    rms: Math.sqrt(off.reduce((sum, one) => sum + one * one, 0) / off.length),
  };
}
