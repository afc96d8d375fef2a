import { capital } from '../numeric/capital.ts';
import { listed } from '../numeric/listed.ts';
import type { Held, Pair } from './hole-network.ts';

/** “hole 2”, “holes 1, 3 and 4”. */
export const numbers = (holes: readonly number[]): string => {
  const words = listed(holes.map((hole) => hole + 1));
  return holes.length === 1 ? `hole ${words}` : `holes ${words}`;
};

/** “from hole 2 to 4 and from 3 to 4”. */
export const fromTo = (pairs: readonly Pair[]): string =>
  listed(pairs.map(([a, b], i) => `from ${i === 0 ? 'hole ' : ''}${a + 1} to ${b + 1}`));

/** What is wrong with a network, and which distances mend it. */
export function heldWords({ kind, holes, line, measure }: Held, pairs: readonly Pair[]): string {
  const more = measure.length === 0 ? '' : ` Measure also ${fromTo(measure)}.`;
  switch (kind) {
    case 'held':
      return '';
    case 'hanging': {
      const only = pairs.find((pair) => pair.includes(holes[0]!))?.find((one) => one !== holes[0]);
      return `${capital(numbers(holes))} ${only === undefined ? 'has no distance to any other' : `hangs on one distance only, that to ${numbers([only])}: it may lie anywhere on a circle about it`}.${more}`;
    }
    case 'loose':
      return `The distances do not hold the holes to each other: ${numbers(holes)} can still move apart or together.${more}`;
    case 'mirrored':
      return `${capital(numbers(holes))} may lie on either side of the line through ${numbers(line!)}: every distance is the same for both.${more}`;
    case 'twofold':
      return `The distances fit the holes together in more ways than one, since nothing checks the one ${fromTo([holes as Pair])}.${more}`;
  }
}
