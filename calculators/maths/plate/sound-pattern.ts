import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { betweenCentres, MOST_DISTANCES, MOST_HOLES, type Pattern } from './hole-distances.ts';
import { heldBy, type Pair } from './hole-network.ts';
import { heldWords } from './hole-words.ts';

/** Refuses distances that leave the holes open, with those that would hold them. */
export function assertNetwork(pattern: Pattern): void {
  const holes = pattern.diameters.length;
  const pairs = pattern.distances.map(({ from, to }): Pair => [from - 1, to - 1]);
  const held = heldBy(holes, pairs);
  if (held.kind === 'held') return;
  throw new MathsError(held.kind, ['distances'], heldWords(held, pairs));
}

/** Refuses figures that are none of a pattern, each with its field. */
export function assertSound(pattern: Pattern): void {
  const { diameters, distances } = pattern;
  const holes = diameters.length;
  if (!(holes >= 2 && holes <= MOST_HOLES)) {
    throw new MathsError(
      'out-of-range',
      ['holes'],
      `A pattern has from 2 to ${MOST_HOLES} holes, not ${holes}. Split a larger one into parts that share three holes.`,
    );
  }
  diameters.forEach((diameter, i) => {
    if (diameter >= 0 && Number.isFinite(diameter)) return;
    throw new MathsError(
      'out-of-range',
      [`hole-${i + 1}`],
      `The diameter of hole ${i + 1} must be 0 mm or more. Measure it anew.`,
    );
  });
  if (distances.length > MOST_DISTANCES) {
    throw new MathsError(
      'out-of-range',
      ['distances'],
      `No more than ${MOST_DISTANCES} distances are reckoned with. Leave out the shortest.`,
    );
  }
  distances.forEach((distance, k) => {
    const { from, to } = distance;
    for (const [name, hole] of [
      ['from', from],
      ['to', to],
    ] as const) {
      if (Number.isInteger(hole) && hole >= 1 && hole <= holes) continue;
      throw new MathsError(
        'no-such-hole',
        [`${name}-${k + 1}`],
        `Distance ${k + 1} goes to hole ${sayNumber(hole)}, and there are ${holes} holes. Type a number from 1 to ${holes}.`,
      );
    }
    if (from === to) {
      throw new MathsError(
        'same-hole',
        [`to-${k + 1}`],
        `Distance ${k + 1} goes from hole ${from} to itself. Type the number of the other hole.`,
      );
    }
    const centres = betweenCentres(pattern, distance);
    if (!(centres > 0) || !Number.isFinite(centres)) {
      throw new MathsError(
        'no-distance',
        [`read-${k + 1}`],
        `Distance ${k + 1} of ${sayNumber(distance.read)} mm ${distance.span === 'outside' ? 'over the furthest edges is no more than both holes’ radii together' : 'leaves nothing between the centres'}. Check it, the holes’ diameters and from where it was measured.`,
      );
    }
  });
}
