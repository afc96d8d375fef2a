/**
 * Where the sets of a breaker plate stand against even spacing, from the angles measured set to set
 * all round the plate.
 */
import { MathsError } from './errors.ts';

export interface SetPlaces {
  /** By how much the angles add up to more than one turn, degrees: an error of the measuring. */
  readonly closing: number;
  /**
   * How far each set stands on from its even place, degrees, counted from set 1, which is therefore
   * 0. A set that is out shows in two of the angles, its own and the next one's, and once here.
   */
  readonly places: readonly number[];
}

/**
 * The closing error is shared out evenly among the angles, as a surveyor does with a round of angles
 * equally well measured.
 *
 * @param spacings Degrees from the set before to each set; the first is from the last set to set 1.
 * @throws MathsError `spacings` for none, or for one that is not a number.
 */
export function setPlaces(spacings: readonly number[]): SetPlaces {
  if (spacings.length === 0 || spacings.some((angle) => !Number.isFinite(angle))) {
    throw new MathsError(
      'spacings',
      ['spacings'],
      'Each set needs its angle from the set before, in degrees, and there must be at least one.',
    );
  }
  const mean = spacings.reduce((sum, angle) => sum + angle, 0) / spacings.length;
  let place = 0;
  const places = spacings.map((angle, index) => (index === 0 ? 0 : (place += angle - mean)));
  return { closing: (mean - 360 / spacings.length) * spacings.length, places };
}
