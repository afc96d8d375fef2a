import { fixed, showFixed } from '../../frame/text/format.ts';
import type { Known, Remark } from '../../frame/types.ts';
import { inOrder, nextTo, type Computed, type Values } from './compute.ts';

/** What a jet at hand is against the one wanted. */
export function verdict(v: Values, computed: Computed, index: number): string {
  const size = inOrder(v.sizes)[index - 1]!;
  const { richer, weaker } = nextTo(v, computed.jet as number);
  const old = size === v.jet ? ' The jet that was right.' : '';
  if (size === richer) return `Next up, the safe side.${old}`;
  if (size === weaker) return `Next down.${old}`;
  return old.trim();
}

function ofTheJets(v: Values, computed: Computed, { lengths }: Known): string {
  const say = (jet: number): string => showFixed(jet, 'mm', 2, lengths);
  if (v.sizes.length === 0) return 'Type the sizes you have at hand, to see which come next.';
  const { richer, weaker } = nextTo(v, computed.jet as number);
  if (richer === undefined) {
    return 'None of the jets at hand is large enough; with the largest the engine would run weak. Get a larger one before it works hard.';
  }
  if (weaker === undefined) {
    return `All the jets at hand are larger than wanted; the finest, ${say(richer)}, is on the rich side.`;
  }
  return richer === weaker
    ? `Of the jets at hand ${say(richer)} is the one.`
    : `Of the jets at hand ${say(richer)} is next up, a little rich, and ${say(weaker)} next down, a little weak. Begin with the larger.`;
}

function ofTheAir(computed: Computed): string {
  const mixture = computed.mixture as number;
  if (Math.abs(mixture) < 1) {
    return 'The air is nearly the same as when it was right: leave the jet alone.';
  }
  return mixture > 0
    ? `The air is thinner: left alone the engine runs ${fixed(mixture, 1)} per cent richer, and has less air to burn in any case.`
    : `The air is denser: left alone the engine runs ${fixed(-mixture, 1)} per cent weaker, which is the dangerous side. Change up before it works hard.`;
}

export const remarks = (v: Values, computed: Computed, known: Known): readonly Remark[] => [
  { about: 'what the air does to the mixture', say: () => ofTheAir(computed) },
  { about: 'which jet comes next', say: () => ofTheJets(v, computed, known) },
  {
    about: 'how far to trust it',
    say: () =>
      'This only carries a setting that was right to other air. Plug reading after a hard run, and the maker’s limits, decide; when in doubt stay on the larger jet.',
  },
  {
    about: 'whether the step is too large',
    quiet: true,
    say: () => {
      const ratio = computed['jet-area-ratio'] as number;
      return ratio < 0.8 || ratio > 1.25
        ? 'That is a large step. Check the weather figures, and go there by single sizes, reading the plug at each.'
        : undefined;
    },
  },
  {
    about: 'how well the pressure is known',
    say: () =>
      v.pressure === undefined || v['right-pressure'] === undefined
        ? 'Where no pressure is given the standard one for the height is taken. Fair and foul weather put it out by 2 or 3 per cent, for which the ± of the height stands.'
        : undefined,
  },
];
