/** The piece of flat stock from which a round plate is turned. */
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';

export interface PlateBlank {
  /** Side of the square, mm. */
  readonly square: number;
  /** Length to mark from each corner along both edges; what is sawn off leaves a regular octagon, mm. */
  readonly corner: number;
  /** Length of the saw cut at each corner, and of each side of the octagon, mm. */
  readonly cut: number;
  /** Across the corners of the square, mm: what must swing clear of the bed if none is sawn off. */
  readonly squareSwing: number;
  /** Across the corners of the octagon, mm: what must swing clear of the bed. */
  readonly octagonSwing: number;
  /** Depth to turn off at the middle of a flat, mm. */
  readonly leastDepth: number;
  /** Depth to turn off at a corner of the octagon, mm. */
  readonly mostDepth: number;
}

/**
 * A square of stock, and its corners off before it is turned.
 *
 * Of a square of side s a corner with legs c is cut off at each end of each edge. The octagon is
 * regular when what is left of the edge, s − 2c, is as long as the cut, c√2: c = s / (2 + √2) =
 * s (1 − 1/√2). Source: Pythagoras.
 *
 * @param outsideDiameter Of the finished plate, mm, more than 0.
 * @param allowance Metal left for turning, on the diameter, mm, 0 or more.
 * @throws MathsError `outside-not-positive`, `allowance-negative`.
 */
export function plateBlank(outsideDiameter: number, allowance: number): PlateBlank {
  if (!(outsideDiameter > 0) || !Number.isFinite(outsideDiameter)) {
    throw new MathsError(
      'outside-not-positive',
      ['outsideDiameter'],
      `A plate of ${sayNumber(outsideDiameter)} mm across is none. Its outside diameter must be more than 0 mm: measure the recess it sits in.`,
    );
  }
  if (!(allowance >= 0) || !Number.isFinite(allowance)) {
    throw new MathsError(
      'allowance-negative',
      ['allowance'],
      `The allowance must be 0 mm or more, not ${sayNumber(allowance)}: less would leave the plate too small. 2 to 4 mm on the diameter takes out a sawn edge and a centre that is a little out.`,
    );
  }
  const square = outsideDiameter + allowance;
  const octagonSwing = square / Math.cos(Math.PI / 8);
  return {
    square,
    corner: square / (2 + Math.SQRT2),
    cut: square * (Math.SQRT2 - 1),
    squareSwing: square * Math.SQRT2,
    octagonSwing,
    leastDepth: allowance / 2,
    mostDepth: (octagonSwing - outsideDiameter) / 2,
  };
}
