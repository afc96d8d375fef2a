import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertNumber } from '../numeric/within.ts';

/**
 * Length of rim that goes past a fixed mark, measured round the curve with a tape or a strip of
 * paper. A rule laid straight across measures the chord, which is a little shorter.
 *
 * @param diameter Of the rotor or flywheel where the marks are, mm, more than 0.
 * @param angle Degrees of crank, any real number.
 * @returns mm of arc, with the sign of the angle.
 * @throws MathsError `diameter-not-positive` or `not-a-number`.
 */
export function arcOf(diameter: number, angle: number): number {
  assertDiameter(diameter);
  assertNumber('crankAngle', 'crank angle', angle, 'Enter it in degrees.');
  return (Math.PI * diameter * angle) / 360;
}

/**
 * Degrees of crank for a length of rim: the inverse of `arcOf`, with the same errors.
 *
 * @param diameter mm, more than 0.
 * @param arc mm round the curve, any real number.
 */
export function angleOf(diameter: number, arc: number): number {
  assertDiameter(diameter);
  assertNumber('arc', 'arc', arc, 'Enter it in millimetres round the curve.');
  return (360 * arc) / (Math.PI * diameter);
}

function assertDiameter(diameter: number): void {
  assertNumber('diameter', 'diameter', diameter, 'Enter it in millimetres.');
  if (!(diameter > 0)) {
    throw new MathsError(
      'diameter-not-positive',
      ['diameter'],
      `A rotor of ${sayNumber(diameter)} mm diameter has no rim. Enter more than 0 mm, measured where the marks are.`,
    );
  }
}
