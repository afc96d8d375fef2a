import { MathsError } from '../numeric/errors.ts';
import { capital } from '../numeric/capital.ts';
import { rank } from '../numeric/linear.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { misfitsOf, type Net } from './hole-distances.ts';
import { slopesOf } from './hole-frame.ts';
import type { Pair } from './hole-network.ts';
import { fromTo, numbers } from './hole-words.ts';
import { apart } from './place.ts';
import type { Laid } from './turned-over.ts';

/** Below this misfit nobody with a caliper tells one place of a hole from the other, mm. */
export const SAME_TO_A_CALIPER = 0.15;

/** A hole turned over by less has not moved, mm. */
const UNMOVED = 0.5;

/** Refuses holes in one line, which may lie on either side of it. */
export function assertSides(net: Net, { places, turned }: Laid): void {
  if (places.length >= 3) {
    const reach = Math.max(
      ...places.slice(0, 3).flatMap((a, i) => places.slice(0, i).map((b) => apart(a, b))),
    );
    if (places[2]!.y < 1e-3 * reach) {
      const misfit = Math.max(...misfitsOf(net, places).map(Math.abs));
      const [ab, ac, bc] = [
        apart(places[0]!, places[1]!),
        apart(places[0]!, places[2]!),
        apart(places[1]!, places[2]!),
      ];
      throw places.length === 3 && misfit > SAME_TO_A_CALIPER
        ? new MathsError(
            'no-triangle',
            ['read'],
            `The three distances make no triangle: fitted as near as may be, with ${sayNumber(Number(ab.toFixed(2)))}, ${sayNumber(Number(ac.toFixed(2)))} and ${sayNumber(Number(bc.toFixed(2)))} mm, they lie in one line and a reading is still ${sayNumber(Number(misfit.toFixed(2)))} mm out. One of them is misread: measure all three again.`,
          )
        : new MathsError(
            'in-line',
            ['distances'],
            'Holes 1, 2 and 3 lie in one line, so nothing says which side is up. Number the holes so that the third lies well off the line of the first two.',
          );
    }
  }
  if (places.length < 4) return;
  places.forEach((at, hole) => {
    const { place, there, here, count } = turned[hole]!;
    if (apart(place, at) < UNMOVED) return;
    const [rms, now] = [Math.sqrt(there / count), Math.sqrt(here / count)];
    if (rms > 1.2 * now + SAME_TO_A_CALIPER) return;
    const measured = net.pairs.flatMap((pair) =>
      pair.includes(hole) ? [pair[0] === hole ? pair[1] : pair[0]] : [],
    );
    const tells = (other: number): number =>
      Math.abs(apart(places[other]!, at) - apart(places[other]!, place));
    const next = places
      .map((_, other) => other)
      .filter((other) => other !== hole && !measured.includes(other))
      .sort((a, b) => tells(b) - tells(a))[0];
    // Where no distance would tell them apart, the two are one part, seen from its two sides.
    if (next === undefined || tells(next) < UNMOVED) return;
    const holes = [...new Set(measured)].sort((a, b) => a - b);
    throw new MathsError(
      'either-side',
      ['distances'],
      `${capital(numbers([hole]))} may lie on either side of the line through ${numbers(holes)}, which lie all but in line as seen from it: the distances say nearly the same for both. Measure also ${fromTo([[hole, next].sort((a, b) => a - b) as unknown as Pair])}.`,
    );
  });
  if (rank(slopesOf(places, net.pairs), 1e-6) < 2 * places.length - 3) {
    throw new MathsError(
      'in-line',
      ['distances'],
      'The holes lie so that the distances say nothing of one direction: measure one across, to a hole well off the line of the others.',
    );
  }
}
