import { fixed, showFixed } from '../../frame/text/format.ts';
import { Absent, type ComputedOf, type Known, type Remark } from '../../frame/types.ts';
import { orAssumed } from '../../frame/whose-limit.ts';
import { trialLine, type Values } from './compute.ts';
import type { results } from './results.ts';

/** When the heel will have worn so far that the gap wants looking at. */
function ofWear(v: Values, computed: ComputedOf<typeof results>, known: Known): string | undefined {
  const run = computed['run-to-limit'];
  if (typeof run !== 'number') return undefined;
  const unit = v['wear-per'] === 'hours' ? 'hours' : 'km';
  return `At that wear the timing falls ${fixed(v['retard-limit'], 1)}°${orAssumed(known, 'retard-limit')} late after about ${fixed(Number(run.toPrecision(2)), 0)} ${unit}: look at the gap before then.`;
}

/** Whether the gap lies outside those that were tried. */
function ofTrials(
  v: Values,
  computed: ComputedOf<typeof results>,
  { lengths }: Known,
): string | undefined {
  const line = trialLine(v);
  const gap = computed['gap-set'] as number;
  if (line instanceof Absent || (gap >= line.from && gap <= line.to)) return undefined;
  return `Your trials cover gaps from ${showFixed(line.from, 'mm', 2, lengths)} to ${showFixed(line.to, 'mm', 2, lengths)}. The gap above lies outside them, where the line through them is a guess.`;
}

/** What follows from the figures, in words. */
export const remarks = (
  v: Values,
  computed: ComputedOf<typeof results>,
  known: Known,
): readonly Remark[] => [
  {
    about: 'the order of work',
    say: () =>
      'A wider gap opens the points earlier and shortens the dwell; a narrower one does the opposite. So set the gap first and the timing after it, never the other way round.',
  },
  { about: 'when to look at the gap again', say: () => ofWear(v, computed, known) },
  {
    about: 'whether your trials reach this gap',
    quiet: true,
    say: () => ofTrials(v, computed, known),
  },
];
