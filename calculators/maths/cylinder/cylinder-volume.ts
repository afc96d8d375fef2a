import { circleArea } from '../numeric/circle-area.ts';
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';

/** Cubic millimetres in one cubic centimetre. */
const MM3_PER_CC = 1000;

/** Volume in cc of a round space of `diameter` mm and `height` mm; negative for a negative height. */
export function cylinderVolume(diameter: number, height: number): number {
  return (circleArea(diameter) * height) / MM3_PER_CC;
}

/** Throws unless a diameter is more than 0. */
export function assertDiameter(name: string, words: string, value: number): void {
  if (value > 0 && value < Infinity) return;
  throw new MathsError(
    'diameter',
    [name],
    `The ${words} must be more than 0 mm across, not ${sayNumber(value)} mm. Measure it across the middle with a bore gauge or the inside jaws of a caliper.`,
  );
}
