import { MathsError } from './errors.ts';

/**
 * Finds where a continuous function crosses zero between two points at which its signs differ.
 *
 * Chandrupatla's method: inverse quadratic interpolation where the last three points show that it
 * will do good, bisection otherwise. The bracket shrinks at every step, down to neighbouring numbers.
 *
 * Source: T. R. Chandrupatla, "A new hybrid quadratic/bisection algorithm for finding the zero of
 * a nonlinear function without using derivatives", Advances in Engineering Software 28 (1997),
 * pages 145-149.
 *
 * @param f The function; any unit.
 * @param low One end of the bracket. Either end may be the larger.
 * @param high The other end.
 * @param tolerance Half-width, in the unit of `low`, at which the search may stop. The default of 0
 *   runs down to neighbouring numbers.
 * @returns The end of the last bracket at which `f` is nearer to zero.
 * @throws MathsError `no-crossing` when `f` has the same sign at both ends or is not a number there,
 *   and when an end is not a finite number.
 */
export function findRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance = 0,
): number {
  let newest = { x: low, y: f(low) };
  let other = { x: high, y: f(high) };
  if (newest.y === 0) return newest.x;
  if (other.y === 0) return other.x;
  // An end without number would never come nearer.
  const endless = !Number.isFinite(low) || !Number.isFinite(high);
  if (endless || Math.sign(newest.y) !== -Math.sign(other.y)) {
    const where = endless ? 'within reach' : `between ${low} and ${high}`;
    throw new MathsError(
      'no-crossing',
      [],
      `No answer lies ${where} for these figures. Check them for a slip of the pen or of the unit.`,
    );
  }
  let dropped = other;
  let share = 0.5;

  for (;;) {
    const x = newest.x + share * (other.x - newest.x);
    const y = f(x);
    if (Math.sign(y) === Math.sign(newest.y)) {
      dropped = newest;
    } else {
      dropped = other;
      other = newest;
    }
    newest = { x, y };

    const best = Math.abs(newest.y) < Math.abs(other.y) ? newest : other;
    const width = Math.abs(other.x - newest.x);
    const closest = 2 * Number.EPSILON * Math.abs(best.x) + tolerance;
    if (best.y === 0 || width <= 2 * closest || width < Number.MIN_VALUE * 4) return best.x;

    const smallest = closest / width;
    share = Math.min(1 - smallest, Math.max(smallest, interpolate(newest, other, dropped)));
  }
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The share of the way from `a` to `b` at which to look next; `c` is the point dropped last. */
function interpolate(a: Point, b: Point, c: Point): number {
  const xi = (a.x - b.x) / (c.x - b.x);
  const phi = (a.y - b.y) / (c.y - b.y);
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5;
  return (
    (a.y / (b.y - a.y)) * (c.y / (b.y - c.y)) +
    (((c.x - a.x) / (b.x - a.x)) * (a.y / (c.y - a.y)) * b.y) / (c.y - b.y)
  );
}
