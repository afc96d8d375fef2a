import { fixed, showFixed } from '../frame/format.ts';
import { Absent, type ComputedOf, type Known } from '../frame/types.ts';
import { trialLine, type Values } from './compute.ts';
import type { results } from './results.ts';

/** What follows from the figures, in words. */
export function remarks(
  v: Values,
  computed: ComputedOf<typeof results>,
  { lengths }: Known,
): readonly string[] {
  const said: string[] = [
    'A wider gap opens the points earlier and shortens the dwell; a narrower one does the opposite. So set the gap first and the timing after it, never the other way round.',
  ];
  const run = computed['run-to-limit'];
  if (typeof run === 'number') {
    const unit = v['wear-per'] === 'hours' ? 'hours' : 'km';
    said.push(
      `At that wear the timing falls ${fixed(v['retard-limit'], 1)}° late after about ${fixed(Number(run.toPrecision(2)), 0)} ${unit}: look at the gap before then.`,
    );
  }
  const line = trialLine(v);
  const gap = computed['gap-set'] as number;
  if (!(line instanceof Absent) && (gap < line.from || gap > line.to)) {
    said.push(
      `Your trials cover gaps from ${showFixed(line.from, 'mm', 2, lengths)} to ${showFixed(line.to, 'mm', 2, lengths)}. The gap above lies outside them, where the line through them is a guess.`,
    );
  }
  return said;
}
