import { decimalsApart, fixed, showFixed } from '../../frame/text/format.ts';
import type { ComputedOf, Known, Remark, ResultValue } from '../../frame/types.ts';
import { squishDoubt } from '../fits.ts';
import { squishClearance } from '../../maths/cylinder/compression.ts';
import type { Values } from './compute.ts';
import type { results } from './results.ts';

type Computed = ComputedOf<typeof results>;

/** Whether a change that is asked about would let crown and head meet, which stand clear before it. */
const meets = (r: Computed, name: 'squish-after' | 'squish-for'): boolean => {
  const after = r[name];
  return (r.squish as number) > 0 && typeof after === 'number' && after <= 0;
};

/** Geometric ratios of such engines lie between these (common practice). */
const LEAST_RATIO = 4;
const MOST_RATIO = 18;

function ofTheRatio(ratio: ResultValue): string | undefined {
  if (typeof ratio !== 'number' || ratio <= 1) return undefined;
  if (ratio >= LEAST_RATIO && ratio <= MOST_RATIO) return undefined;
  const [limit, is, digits] =
    ratio < LEAST_RATIO ? [LEAST_RATIO, 'less', 'many'] : [MOST_RATIO, 'more', 'few'];
  return `A geometric ratio of ${fixed(ratio, decimalsApart(ratio, limit, 1))} is ${is} than such engines have, ${LEAST_RATIO} to ${MOST_RATIO} (common practice). Look at the volume first: it may have a digit too ${digits}, or be of another unit.`;
}

export const remarks = (v: Values, r: Computed, { lengths }: Known): readonly Remark[] => [
  {
    about: 'whether crown and head stand clear',
    leads: true,
    say: () =>
      (r.squish as number) <= 0
        ? 'With these heights the crown meets the head before the top. Do not turn this engine over by kick or motor: check the heights, then prove them with solder, turning gently by hand.'
        : undefined,
  },
  {
    about: 'whether the squish is wide enough at speed',
    quiet: true,
    leads: true,
    say: () => squishDoubt((100 * (r.squish as number)) / v.bore),
  },
  {
    about: 'whether an engine has such a ratio',
    quiet: true,
    leads: true,
    say: () => ofTheRatio(r.ratio),
  },
  {
    about: 'which ratio is meant',
    say: () =>
      'Two ratios, two schemes: a geometric figure and a trapped one of the same engine are far apart. Ask which of them a handbook or a friend means before you compare.',
  },
  {
    about: 'what the solder says of the heights',
    say: () => {
      if (v['squish-from'] !== 'solder') return undefined;
      const sum = squishClearance(v.deck, v.gasket, 0);
      return `Deck and gasket add up to ${showFixed(sum, 'mm', 2, lengths)}; the solder says ${showFixed(v.solder, 'mm', 2, lengths)}. The difference is the depth of the squish band in the head, or a reading to be taken again.`;
    },
  },
  {
    about: 'whether the change leaves room',
    quiet: true,
    say: () =>
      meets(r, 'squish-after')
        ? 'After the change asked about, crown and head would meet. Take off less.'
        : undefined,
  },
  {
    about: 'what a base gasket moves',
    quiet: true,
    say: () =>
      v['base-gasket-change'] !== 0
        ? 'A base gasket moves the whole barrel: exhaust, transfers and an inlet that the piston opens move with it. Prove where they open after it.'
        : undefined,
  },
  {
    about: 'whether the skim for the ratio wanted leaves room',
    quiet: true,
    say: () =>
      meets(r, 'squish-for')
        ? 'Skimming for the ratio wanted would let crown and head meet. The volume must come out of the bowl’s shape and not off this face; or ask for a lower ratio.'
        : undefined,
  },
];
