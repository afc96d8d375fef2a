import { decimalsApart, fixed, showFixed } from '../../frame/text/format.ts';
import { noSurer } from '../../frame/text/no-surer.ts';
import type { Known, Remark } from '../../frame/types.ts';
import { boreWear } from '../../maths/cylinder/bore-wear.ts';
import { RING_IS_USUAL, ringGapDoubt } from '../fits.ts';
import type { Computed, Values } from './compute.ts';

/** Over the standard bore, mm: beyond it a barrel’s metal and ports are to be asked about. */
const LARGE_OVERSIZE = 1;

/** What the clearance is held against, and whose that is. */
function spanWords(v: Values, { isAssumed }: Known): string {
  const span = `${fixed(v.least, 1)} to ${fixed(v.most, 1)}‰`;
  const [least, most] = [isAssumed('least'), isAssumed('most')];
  if (least && most) return `the ${span} of common practice`;
  if (!least && !most) return span;
  return `${span}, of which common practice gives the ${least ? 'least' : 'most'}`;
}

function ofTheFit(v: Values, computed: Computed, known: Known): string {
  const { lengths, spreads } = known;
  const share = computed['per-mille'] as number;
  const cold = computed.cold as number;
  const span = spanWords(v, known);
  const near = Math.min(Math.abs(share - v.least), Math.abs(share - v.most));
  const unsure = noSurer(near, spreads['per-mille']);
  if (cold <= 0)
    return 'The piston is larger than the bore: it does not go in. Measure both again.';
  if (share < v.least) {
    const hone = (v.least / 1000) * v.bore - cold;
    return `Fail: tight against ${span}. Hone the bore ${showFixed(hone, 'mm', 3, lengths)} larger, or fit a smaller piston; tight is the side that seizes.${unsure}`;
  }
  if (share > v.most) {
    return `Fail: wide against ${span}. Wide rattles, tilts the rings and blows by, and wears on. Measure whether piston or bore has worn before you buy either.${unsure}`;
  }
  return `Pass: within ${span}. If you must err, err to the wide side: tight seizes within a minute, wide wears within a season.${unsure}`;
}

/** Where the bore above passes, but the widest of its readings would not. */
function ofTheWidest(v: Values, computed: Computed, known: Known): string | undefined {
  const { widest } = boreWear({ along: v.along, across: v.across });
  const there = (computed.cold as number) + widest - v.bore;
  const share = (1000 * there) / v.bore;
  return (computed['per-mille'] as number) <= v.most && share > v.most
    ? `At the widest of its readings the clearance is ${showFixed(there, 'mm', 3, known.lengths)}, ${fixed(share, decimalsApart(share, v.most, 1))}‰: wide against ${spanWords(v, known)}. The pass holds only where the bore is as small as above; see what is said of taper and ovality.`
    : undefined;
}

function ofTheHeat(computed: Computed, known: Known): string {
  const { lengths, spreads } = known;
  const heats = ['bore-temperature', 'piston-temperature'].filter(known.isAssumed);
  const at =
    heats.length === 0
      ? ''
      : ` ${heats.length === 2 ? 'The temperatures of bore and piston are' : `The temperature of the ${heats[0] === 'bore-temperature' ? 'bore' : 'piston'} is`} assumed here.`;
  const hot = computed.hot as number;
  return hot <= 0
    ? `Fail: nothing is left hot; they would jam by ${showFixed(-hot, 'mm', 3, lengths)}.${at}${noSurer(hot, spreads.hot)} Check expansions and temperatures, then give it more room.`
    : `${showFixed(hot, 'mm', 3, lengths)} is left hot.${at}${noSurer(hot, spreads.hot)} A weak mixture, too much advance or a lack of oil heats the piston and takes it away.`;
}

function ofTheRing(computed: Computed, { spreads, isAssumed }: Known): string {
  const at = isAssumed('ring-temperature') ? ' The temperature of the ring is assumed here.' : '';
  const share = computed['ring-percent'] as number;
  const hot = computed['ring-gap-hot'] as number;
  if (hot <= 0) {
    return `Fail: the ring’s ends would meet hot, jam it and score the bore.${at}${noSurer(hot, spreads['ring-gap-hot'])} File them square, or fit another ring.`;
  }
  return ringGapDoubt(share) ?? RING_IS_USUAL;
}

function ofTheWear(v: Values, computed: Computed, known: Known): string {
  const { lengths, spreads } = known;
  const taper = computed.taper as number;
  const ovality = computed.ovality as number;
  const limit = `${known.isAssumed('wear-limit') ? 'the ' : ''}${showFixed(v['wear-limit'], 'mm', 2, lengths)}${known.isAssumed('wear-limit') ? ' of common practice' : ''}`;
  const worst = Math.max(taper, ovality);
  const which = taper >= ovality ? 'taper' : 'ovality';
  const unsure = noSurer(worst - v['wear-limit'], spreads[which]);
  if (worst <= v['wear-limit']) return `Pass: taper and ovality are within ${limit}.${unsure}`;
  return `Fail: the ${which} is over ${limit}; no ring seals in it for long.${unsure}`;
}

/** Which oversize takes away taper and ovality that are too large. */
function ofTheOversize(v: Values, computed: Computed, { lengths }: Known): string | undefined {
  const worst = Math.max(computed.taper as number, computed.ovality as number);
  const over = worst > v['wear-limit'] ? computed.oversize : undefined;
  if (typeof over !== 'number') return undefined;
  return over === 0
    ? 'Honing within the standard size takes taper and ovality away, if that leaves the clearance.'
    : `The next oversize that takes taper and ovality away is ${showFixed(over, 'mm', 2, lengths)} over.${over > LARGE_OVERSIZE ? ' That is much: ask the maker or the borer whether the wall holds it, and whether the ports stay whole.' : ''}`;
}

export const remarks = (v: Values, computed: Computed, known: Known): readonly Remark[] => [
  { about: 'pass or fail of the clearance', say: () => ofTheFit(v, computed, known) },
  {
    about: 'whether the bore is worn wide of the clearance',
    quiet: true,
    say: () => ofTheWidest(v, computed, known),
  },
  { about: 'what is left hot', say: () => ofTheHeat(computed, known) },
  { about: 'pass or fail of the ring gap', say: () => ofTheRing(computed, known) },
  {
    about: 'pass or fail of taper and ovality',
    quiet: true,
    say: () => ofTheWear(v, computed, known),
  },
  {
    about: 'which oversize takes the wear away',
    quiet: true,
    say: () => ofTheOversize(v, computed, known),
  },
  {
    about: 'whether the bore is the least of its readings',
    quiet: true,
    say: () => {
      const { least } = boreWear({ along: v.along, across: v.across });
      const off = v.bore - least;
      return off > (known.spreads.cold ?? 0)
        ? `One reading is ${showFixed(off, 'mm', 3, known.lengths)} smaller than the bore above: the piston has that much less room there.`
        : undefined;
    },
  },
];
