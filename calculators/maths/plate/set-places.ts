/**
 * Where the sets of a breaker plate stand against where they belong, from the angles measured set to
 * set all round the plate.
 */
import { MathsError } from '../numeric/errors.ts';

export interface SetPlaces {
  /** By how much the angles add up to more than whole turns, degrees: an error of the measuring. */
  readonly closing: number;
  /**
   * How far each set stands on from its place, degrees, counted from set 1, which is therefore 0. A
   * set that is out shows in two of the angles, its own and the next one's, and once here.
   */
  readonly places: readonly number[];
}

const TURN = 360;

/** An angle brought within half of `round` either way of nothing. */
const nearest = (angle: number, round: number): number => angle - Math.round(angle / round) * round;

/** Directions of `count` sets evenly round the plate, degrees from set 1. */
export const evenly = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => (TURN * i) / count);

/**
 * The angle from the set before to each set, degrees, more than 0 and at most 360; the first is from
 * the last set to set 1.
 *
 * @param directions Degrees from set 1 to each set, set 1 itself first.
 */
export const spacingsOf = (directions: readonly number[]): readonly number[] =>
  directions.map((direction, i) => {
    const on = (direction - directions.at(i - 1)!) % TURN;
    return on > 0 ? on : on + TURN;
  });

/**
 * The closing error is shared out evenly among the angles, as a surveyor does with a round of angles
 * equally well measured.
 *
 * @param spacings Degrees from the set before to each set; the first is from the last set to set 1.
 * @param directions Degrees from set 1 to where each set belongs, counted the same way; set 1 first.
 *   Evenly round the plate unless given.
 * @param lobes Lobes of the cam: a set may as well stand a lobe further on.
 * @throws MathsError `spacings` for none, or for one that is not a number, or for another number of
 *   directions.
 */
export function setPlaces(
  spacings: readonly number[],
  directions: readonly number[] = evenly(spacings.length),
  lobes = 1,
): SetPlaces {
  if (
    spacings.length === 0 ||
    directions.length !== spacings.length ||
    [...spacings, ...directions].some((angle) => !Number.isFinite(angle))
  ) {
    throw new MathsError(
      'spacings',
      ['spacings'],
      'Each set needs its angle from the set before and its direction, in degrees, and there must be at least one.',
    );
  }
  const sum = spacings.reduce((all, angle) => all + angle, 0);
  const closing = sum - TURN * Math.max(1, Math.round(sum / TURN));
  const share = closing / spacings.length;
  let stands = 0;
  const places = spacings.map((angle, i) => {
    if (i > 0) stands += angle - share;
    return nearest(stands - (directions[i]! - directions[0]!), TURN / lobes);
  });
  return { closing, places };
}
