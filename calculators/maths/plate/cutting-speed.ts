/** How fast a lathe's spindle may turn for the metal and the diameter it cuts. */
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';

/**
 * Turns of the spindle in a minute at which the outermost metal passes the tool at a given speed:
 * n = v / (π d).
 *
 * @param cuttingSpeed Metres of surface in a minute, more than 0.
 * @param diameter Across the outermost metal that the tool meets, mm, more than 0. For a blank with
 *   corners that is across the corners.
 * @throws MathsError `cutting-speed-not-positive`, `diameter-not-positive`.
 */
export function spindleSpeed(cuttingSpeed: number, diameter: number): number {
  if (!(cuttingSpeed > 0) || !Number.isFinite(cuttingSpeed)) {
    throw new MathsError(
      'cutting-speed-not-positive',
      ['cuttingSpeed'],
      `The cutting speed must be more than 0 metres a minute, not ${sayNumber(cuttingSpeed)}. Take it from a table for your metal and tool.`,
    );
  }
  if (!(diameter > 0) || !Number.isFinite(diameter)) {
    throw new MathsError(
      'diameter-not-positive',
      ['diameter'],
      `The work must measure more than 0 mm across, not ${sayNumber(diameter)}. Measure it across its corners.`,
    );
  }
  return (1000 * cuttingSpeed) / (Math.PI * diameter);
}
