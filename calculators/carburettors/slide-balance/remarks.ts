import { listed } from '../../maths/numeric/listed.ts';
import { fixed, showFixed } from '../../frame/text/format.ts';
import type { Known, Remark } from '../../frame/types.ts';
import { orAssumed } from '../../frame/whose-limit.ts';
import { targetOf, type Computed, type Values } from './compute.ts';

function ofTheSlides(v: Values, computed: Computed, { lengths }: Known): string {
  const turns = computed.turn as readonly number[];
  const still = turns.flatMap((turn, i) => (Math.abs(turn) < 1e-9 ? [String(i + 1)] : []));
  const target =
    v.method === 'drill'
      ? showFixed(targetOf(v), 'mm', 2, lengths)
      : `${fixed(targetOf(v), 1)} kPa`;
  if (still.length === turns.length) {
    return turns.length === 1
      ? 'One slide has no other to agree with. Only the play of its cable is left to look at.'
      : 'All slides agree. Leave the adjusters alone.';
  }
  return still.length === 0
    ? `Bring all to ${target}.`
    : still.length === 1
      ? `Bring the others to ${target}, which slide ${still[0]!} has already: leave that one alone.`
      : `Bring the others to ${target}, which slides ${listed(still)} have already: leave those alone.`;
}

function ofGivingBack(v: Values, computed: Computed, known: Known): string | undefined {
  const giveBack = computed['give-back'] as number;
  if (giveBack <= 0) return undefined;
  const { lengths } = known;
  const keeps = ` That keeps ${showFixed(v['least-play'], 'mm', 1, lengths)} of play${orAssumed(known, 'least-play')}.`;
  return v.adjuster === 'cable'
    ? `Turn all cable adjusters in by ${fixed(giveBack / v.thread, 2)} turns (${showFixed(giveBack, 'mm', 2, lengths)}) alike, or give the same at a common adjuster.${keeps} Check idle with the bars at full lock to both sides.`
    : `Give ${showFixed(giveBack, 'mm', 2, lengths)} back at all cables alike.${keeps} Check idle with the bars at full lock to both sides.`;
}

export const remarks = (v: Values, computed: Computed, known: Known): readonly Remark[] => [
  { about: 'where to bring the slides', say: () => ofTheSlides(v, computed, known) },
  {
    about: 'whether a cable holds its slide open',
    say: () => {
      const tightest = computed.tightest as number;
      return tightest < 0
        ? `The tightest cable would hold its slide ${showFixed(-tightest, 'mm', 2, known.lengths)} off its stop, and the engine would race at idle. Give play back before it is started.`
        : undefined;
    },
  },
  { about: 'how much play to give back', say: () => ofGivingBack(v, computed, known) },
  {
    about: 'the order of work',
    say: () =>
      v.adjuster === 'cable'
        ? 'Set idle at the stop screws first, all alike, then the cables, and try the idle again after.'
        : 'After the stop screws, see that the cables lift all slides off their stops at the same moment.',
  },
];
