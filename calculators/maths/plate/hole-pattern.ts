import { inverseNormal, leverage } from '../numeric/linear.ts';
import { builtUp } from './built-up.ts';
import {
  fewestDistances,
  misfitsOf,
  netOf,
  sumOfSquares,
  type Net,
  type Pattern,
} from './hole-distances.ts';
import { slopesOf } from './hole-frame.ts';
import { assertSides, SAME_TO_A_CALIPER } from './hole-sides.ts';
import type { Place } from './place.ts';
import { roughPlaces } from './rough-places.ts';
import { settledBeside } from './settled-places.ts';
import { assertNetwork, assertSound } from './sound-pattern.ts';
import { unfolded, type Laid } from './turned-over.ts';

export interface Fitted {
  /** Hole 1 at 0 0, hole 2 on +X, hole 3 on the side of +Y; mm. */
  readonly places: readonly Place[];
  /** Measured less fitted, between centres, of each distance, mm. */
  readonly misfits: readonly number[];
  /**
   * How much of an error in each distance is left in its own misfit, 0 to 1: nothing where no other
   * distance checks it, near 1 where many do.
   */
  readonly checked: readonly number[];
  /** Root mean square of the misfits, mm. */
  readonly rms: number;
  /** Distances beyond the fewest that place the holes. */
  readonly spare: number;
}

/** The places that fit best; refused where others fit as well. */
function soundPlaces(holes: number, net: Net): readonly Place[] {
  const best = bestPlaces(holes, net);
  assertSides(net, best);
  return best.places;
}

/** The places that fit best of all that both starts lead to. */
function bestPlaces(holes: number, net: Net): Laid {
  const off = ({ places }: Laid): number => sumOfSquares(misfitsOf(net, places));
  const rough = unfolded(net, roughPlaces(holes, net));
  if (Math.sqrt(off(rough) / net.pairs.length) <= SAME_TO_A_CALIPER) return rough;
  const built = builtUp(holes, net);
  const other = built && unfolded(net, built);
  return other && off(other) < off(rough) * (1 - 1e-9) ? other : rough;
}

/**
 * Places of holes from distances between them, by least squares of the distances between centres,
 * all with the same weight.
 *
 * Source: C. D. Ghilani, Adjustment Computations: Spatial Data Analysis, 5th ed., Wiley, 2010,
 * chapter 14 (adjustment of horizontal surveys: trilateration); the share of a reading's own error
 * that is left in its misfit is its redundancy number, as in chapter 21 (blunder detection).
 * Chapters named from memory.
 *
 * @param beside Places of nearly the same readings: each hole stays on the side on which it lies there.
 * @throws MathsError `out-of-range`, `no-such-hole`, `same-hole`, `no-distance` for figures that are
 *   none; `hanging`, `loose`, `mirrored`, `twofold` where the distances leave places open, with the
 *   distances to measure next; `in-line`, `no-triangle`, `either-side` where the places themselves do.
 */
export function fitHoles(pattern: Pattern, beside?: readonly Place[]): Fitted {
  assertSound(pattern);
  const holes = pattern.diameters.length;
  const net = netOf(pattern);
  if (!beside) assertNetwork(pattern);
  const places = beside ? settledBeside(net, beside) : soundPlaces(holes, net);
  const misfits = misfitsOf(net, places);
  return {
    places,
    misfits,
    // Not asked for while a ± moves the readings.
    get checked() {
      const slopes = slopesOf(places, net.pairs);
      const spread = inverseNormal(slopes)!;
      return slopes.map((row) => Math.max(0, 1 - leverage(row, spread)));
    },
    rms: Math.sqrt(sumOfSquares(misfits) / misfits.length),
    spare: misfits.length - fewestDistances(holes),
  };
}
