import { fixed, showFixed } from '../frame/format.ts';
import type { Known } from '../frame/types.ts';
import { targetOf, type Computed, type Values } from './compute.ts';

const listed = (words: readonly string[]): string =>
  words.length === 1 ? words[0]! : `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`;

export function remarks(v: Values, computed: Computed, { lengths }: Known): readonly string[] {
  const say = (mm: number): string => showFixed(mm, 'mm', 2, lengths);
  const turns = computed.turn as readonly number[];
  const still = turns.flatMap((turn, i) => (Math.abs(turn) < 1e-9 ? [String(i + 1)] : []));
  const target = v.method === 'drill' ? say(targetOf(v)) : `${fixed(targetOf(v), 1)} kPa`;
  const said = [
    still.length === turns.length
      ? 'All slides agree. Leave the adjusters alone.'
      : still.length === 0
        ? `Bring all to ${target}.`
        : `Bring the others to ${target}, which slide ${listed(still)} has already: leave that one alone.`,
  ];
  const tightest = computed.tightest as number;
  if (tightest < 0) {
    said.push(
      `The tightest cable would hold its slide ${say(-tightest)} off its stop, and the engine would race at idle. Give play back before it is started.`,
    );
  }
  const giveBack = computed['give-back'] as number;
  if (giveBack > 0) {
    said.push(
      v.adjuster === 'cable'
        ? `Turn all cable adjusters in by ${fixed(giveBack / v.thread, 2)} turns (${say(giveBack)}) alike, or give the same at a common adjuster. Check idle with the bars at full lock to both sides.`
        : `Give ${say(giveBack)} back at all cables alike. Check idle with the bars at full lock to both sides.`,
    );
  }
  said.push(
    v.adjuster === 'cable'
      ? 'Set idle at the stop screws first, all alike, then the cables, and try the idle again after.'
      : 'After the stop screws, see that the cables lift all slides off their stops at the same moment.',
  );
  return said;
}
