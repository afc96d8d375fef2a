/**
 * What a change of air asks of a jet.
 *
 * An engine at the same speed and throttle draws the same volume of air. The air's speed in the
 * venturi is the same, so that its mass goes with the density ρ, and so does the drop of pressure,
 * ρ·v²/2, that draws the fuel. Fuel through a sharp jet goes with the jet's area and the square root
 * of that drop. The mixture, fuel over air, then goes as
 *
 *   area · √ρ / ρ = area / √ρ
 *
 * and stays what it was if the area goes with √ρ.
 *
 * Source: Bernoulli's equation for air and for fuel under the same drop, as above. J. B. Heywood,
 * Internal Combustion Engine Fundamentals, McGraw-Hill 1988, section 7.2, says the same of the plain
 * carburettor (recalled from memory).
 */
import { MathsError } from '../numeric/errors.ts';
import { assertWithin } from '../numeric/within.ts';

function assertRelative(relativeDensity: number): void {
  assertWithin(
    {
      quantity: 'relativeDensity',
      words: 'The relative density of the air',
      unit: '',
      min: 0,
      above: true,
      why: 'Without air no petrol burns. Check both sets of weather figures.',
    },
    relativeDensity,
  );
}

/**
 * Jet area wanted, as a multiple of the area that was right.
 *
 * @param relativeDensity Density of the air now over that when the jet was right, 0.3 to 3.
 * @throws MathsError `out-of-range`.
 */
export function jetAreaRatio(relativeDensity: number): number {
  assertRelative(relativeDensity);
  return Math.sqrt(relativeDensity);
}

/**
 * Fuel over air with the jet left as it is, as a multiple of what it was: above 1 is richer.
 *
 * @param relativeDensity As for `jetAreaRatio`.
 * @param areaRatio Area of the jet fitted over that which was right; 1 for the same jet.
 */
export function mixtureRatio(relativeDensity: number, areaRatio = 1): number {
  return areaRatio / jetAreaRatio(relativeDensity);
}

/** Diameter of a jet with `areaRatio` times the area; any unit of length. */
export function jetOfArea(diameter: number, areaRatio: number): number {
  return diameter * Math.sqrt(areaRatio);
}

export interface Sizes {
  /** The smallest size that is not smaller than wanted: the richer choice, the safe one. */
  readonly richer: number | undefined;
  /** The largest size that is not larger than wanted: the weaker choice. */
  readonly weaker: number | undefined;
}

/**
 * The sizes to either side of a wanted one, from those at hand; the same one twice where it is
 * among them. Sizes that differ by less than 10⁻⁹ of themselves count as the same.
 *
 * @param sizes More than 0, in any order.
 * @throws MathsError `no-sizes`; `size-not-positive`.
 */
export function sizesAbout(wanted: number, sizes: readonly number[]): Sizes {
  if (sizes.length === 0) {
    throw new MathsError(
      'no-sizes',
      ['sizes'],
      'There are no sizes to choose from. Type those you have, separated by spaces.',
    );
  }
  const faulty = sizes.find((size) => !(size > 0));
  if (faulty !== undefined) {
    throw new MathsError(
      'size-not-positive',
      ['sizes'],
      'A jet has a hole, so that its size is more than 0. Take the faulty one out of the list.',
    );
  }
  const slack = 1e-9 * wanted;
  const upward = [...sizes].sort((a, b) => a - b);
  return {
    richer: upward.find((size) => size >= wanted - slack),
    weaker: upward.findLast((size) => size <= wanted + slack),
  };
}
