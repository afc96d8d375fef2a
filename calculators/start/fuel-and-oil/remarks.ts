import { fixed } from '../../frame/format.ts';
import type { Remark } from '../../frame/types.ts';
import { ratioOf, type Computed, type Values } from './compute.ts';

/** What a topped-up tank comes to against the ratio wanted. */
function ofTheTank(v: Values, computed: Computed): string | undefined {
  if (v.already === 0) return undefined;
  const ratio = ratioOf(v);
  const mixed = computed['mixed-ratio'] as number;
  if (mixed > ratio * 1.02) {
    return `With oil for the new petrol only, the tank comes to ${fixed(mixed, 1)} to 1: less oil than wanted, since what was there had less. Use the oil that brings all to the ratio.`;
  }
  return mixed < ratio / 1.02
    ? `With oil for the new petrol only, the tank comes to ${fixed(mixed, 1)} to 1: a little more oil than wanted, which smokes but does no harm.`
    : 'What was there and what is put in agree, near enough.';
}

export const remarks = (v: Values, computed: Computed): readonly Remark[] => [
  {
    about: 'how to mix it',
    say: () =>
      v.already === 0
        ? `Half of the petrol into a clean can, then all of the oil, and shake; then the rest of the petrol, and shake again. ${fixed(1000 / ratioOf(v), 0)} ml goes to every litre.`
        : undefined,
  },
  { about: 'what the tank comes to', say: () => ofTheTank(v, computed) },
  {
    about: 'where to mix it',
    say: () =>
      v.already === 0
        ? undefined
        : 'Mix in a can, not in the tank: oil that sinks to the tap blocks the first jet it meets, and the engine then runs on petrol alone.',
  },
];
