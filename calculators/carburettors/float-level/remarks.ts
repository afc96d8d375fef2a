import { showFixed } from '../../frame/format.ts';
import { Absent, type Known, type Remark } from '../../frame/types.ts';
import type { Computed, Values } from './compute.ts';

const names = (indexes: readonly number[]): string => {
  const words = indexes.map((index) => String(index + 1));
  return words.length === 1
    ? `carburettor ${words[0]!}`
    : `carburettors ${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`;
};

/** What to do with one carburettor: leave it, or bend its tang which way and how far. */
export function verdict(v: Values, computed: Computed, index: number, { lengths }: Known): string {
  const bend = (computed.bend as readonly number[])[index - 1]!;
  const out = Math.abs(v.found[index - 1]! - v.height);
  if (out <= v.tolerance + 1e-9) return 'Leave it.';
  const way = bend > 0 ? 'towards the needle' : 'away from the needle';
  return `Bend it ${showFixed(Math.abs(bend), 'mm', 2, lengths)} ${way}.`;
}

function ofTheTang(v: Values, computed: Computed, { lengths }: Known): string {
  const say = (mm: number, decimals: number): string => showFixed(mm, 'mm', decimals, lengths);
  const bend = computed['tang-for'] as number;
  const height = computed['height-for'] as number;
  if (Math.abs(height - v.height) <= v.tolerance) {
    return 'The gauge reading gives the level wanted, near enough: leave the tang alone.';
  }
  return bend > 0
    ? `For the level wanted the float must shut the valve lower down: bend the tang ${say(bend, 2)} towards the needle and look for ${say(height, 1)} on the gauge.`
    : `For the level wanted the float must shut the valve higher up: bend the tang ${say(-bend, 2)} away from the needle and look for ${say(height, 1)} on the gauge.`;
}

function ofTheOthers(v: Values): string | undefined {
  if (v.found.length < 2) return undefined;
  const out = v.found.flatMap((reading, index) =>
    Math.abs(reading - v.height) > v.tolerance + 1e-9 ? [index] : [],
  );
  return out.length === 0
    ? 'All carburettors agree with the setting, near enough.'
    : `To bring all to the gauge reading above, bend the tang of ${names(out)}; the table says how far. Never bend it by pressing the float against the needle.`;
}

function ofTheReserve(v: Values, { reserve }: Computed, { lengths }: Known): string | undefined {
  if (reserve instanceof Absent || (reserve as number) >= 1.5 * v.head) return undefined;
  return `There is little in hand: at a head of ${showFixed(reserve as number, 'mm', 0, lengths)} the float would be wholly under and the chamber overflow.`;
}

export const remarks = (v: Values, computed: Computed, known: Known): readonly Remark[] => [
  { about: 'how to bend the tang for the level wanted', say: () => ofTheTang(v, computed, known) },
  { about: 'which carburettors to bring to the setting', say: () => ofTheOthers(v) },
  { about: 'what head the valve holds', say: () => ofTheReserve(v, computed, known) },
];
