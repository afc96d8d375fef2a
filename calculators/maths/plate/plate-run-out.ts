/**
 * What a plate that does not sit true does to the points. A plate whose centre lies beside the cam's
 * carries every set with it: a set on the side to which it lies stands further from the cam, and its
 * gap narrows; one across from that would widen, and one at the side meets the lobe early or late.
 */
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';

const RADIANS_PER_DEGREE = Math.PI / 180;

export interface OffCentre {
  /** How far the plate's centre may lie beside the cam's, mm. */
  readonly offCentre: number;
  /** By how much the lift at the heel of one set may change either way, mm. */
  readonly heelShift: number;
  /** By how much one set may open early or late, degrees of cam. */
  readonly angleShift: number;
}

/**
 * The worst case over all directions in which the plate may lie off centre.
 *
 * An indicator shows twice the distance between the centres, and a plate loose in its recess can go
 * by half the clearance to either side. The heel rubs `heelRadius` from the centre; moved sideways
 * by e it meets the cam as if turned by asin(e / heelRadius).
 *
 * @param runOut Full movement of the indicator in one turn, mm, 0 or more.
 * @param clearance Recess less plate, or bore less boss, on the diameter, mm, 0 or more.
 * @param heelRadius From the centre of the cam to where the heel rubs, mm, more than 0.
 * @throws MathsError `negative`, `heel-radius-not-positive`, `off-centre-too-far`.
 */
export function offCentre(runOut: number, clearance: number, heelRadius: number): OffCentre {
  for (const [name, words, value] of [
    ['runOut', 'run-out', runOut],
    ['clearance', 'clearance', clearance],
  ] as const) {
    if (!(value >= 0) || !Number.isFinite(value)) {
      throw new MathsError(
        'negative',
        [name],
        `The ${words} must be 0 mm or more, not ${sayNumber(value)}. A plate that is tight in its recess has none.`,
      );
    }
  }
  if (!(heelRadius > 0) || !Number.isFinite(heelRadius)) {
    throw new MathsError(
      'heel-radius-not-positive',
      ['heelRadius'],
      `The heel must rub more than 0 mm from the centre of the cam, not ${sayNumber(heelRadius)}. Measure half the diameter of the cam.`,
    );
  }
  const distance = (runOut + clearance) / 2;
  if (distance >= heelRadius) {
    throw new MathsError(
      'off-centre-too-far',
      ['runOut', 'clearance', 'heelRadius'],
      `The plate would lie ${sayNumber(distance)} mm off centre, as far as the heel of ${sayNumber(heelRadius)} mm or further. Check the run-out and the clearance: a plate that can be set is out by some hundredths of a millimetre.`,
    );
  }
  return {
    offCentre: distance,
    heelShift: distance,
    angleShift: Math.asin(distance / heelRadius) / RADIANS_PER_DEGREE,
  };
}
