import { listed } from '../../maths/numeric/listed.ts';
import { showFixed } from '../../frame/text/format.ts';
import { Absent, type Known, type Remark } from '../../frame/types.ts';
import { orAssumed } from '../../frame/whose-limit.ts';
import type { Computed, Values } from './compute.ts';

const names = (indexes: readonly number[]): string =>
  `${indexes.length === 1 ? 'carburettor' : 'carburettors'} ${listed(indexes.map((index) => index + 1))}`;

const near = (v: Values, known: Known): string =>
  `${showFixed(v.tolerance, 'mm', 1, known.lengths)}${orAssumed(known, 'tolerance')}`;

/** What to do with one carburettor: leave it, or bend its tang which way and how far. */
export function verdict(v: Values, computed: Computed, index: number, { lengths }: Known): string {
  const bend = (computed.bend as readonly number[])[index - 1]!;
  const out = Math.abs(v.found[index - 1]! - v.height);
  if (out <= v.tolerance + 1e-9) return 'Leave it.';
  const way = bend > 0 ? 'towards the needle' : 'away from the needle';
  return `Bend it ${showFixed(Math.abs(bend), 'mm', 2, lengths)} ${way}.`;
}

function ofTheTang(v: Values, computed: Computed, known: Known): string {
  const { lengths } = known;
  const say = (mm: number, decimals: number): string => showFixed(mm, 'mm', decimals, lengths);
  const bend = computed['tang-for'] as number;
  const height = computed['height-for'] as number;
  if (Math.abs(height - v.height) <= v.tolerance) {
    return `The gauge reading gives the level wanted within ${near(v, known)}: leave the tang alone.`;
  }
  const spare = known.isAssumed('tolerance') ? ` Within ${near(v, known)} it may stay.` : '';
  return bend > 0
    ? `For the level wanted the float must shut the valve lower down: bend the tang ${say(bend, 2)} towards the needle and look for ${say(height, 1)} on the gauge.${spare}`
    : `For the level wanted the float must shut the valve higher up: bend the tang ${say(-bend, 2)} away from the needle and look for ${say(height, 1)} on the gauge.${spare}`;
}

/** Those that are further from the setting than is near enough. */
const outOf = (v: Values): readonly number[] =>
  v.found.flatMap((reading, index) =>
    Math.abs(reading - v.height) > v.tolerance + 1e-9 ? [index] : [],
  );

function ofTheOthers(v: Values, known: Known): string | undefined {
  if (v.found.length < 2) return undefined;
  const out = outOf(v);
  return out.length === 0
    ? `All carburettors agree with the gauge reading above within ${near(v, known)}.`
    : `Further from the gauge reading above than ${near(v, known)}: bend the tang of ${names(out)}. Never bend it by pressing the float against the needle.`;
}

/** How far hangs on the arms, and not on the readings alone. */
function ofTheBends(v: Values, computed: Computed): string | undefined {
  const bends = computed.bend as readonly number[];
  return v.found.length > 1 && bends.some((bend) => bend !== 0)
    ? 'The table says how far each would be bent to read the same.'
    : undefined;
}

function ofTheReserve(v: Values, { reserve }: Computed, { lengths }: Known): string | undefined {
  if (reserve instanceof Absent || (reserve as number) >= 1.5 * v.head) return undefined;
  return `There is little in hand: at a head of ${showFixed(reserve as number, 'mm', 0, lengths)} the float would be wholly under and the chamber overflow.`;
}

export const remarks = (v: Values, computed: Computed, known: Known): readonly Remark[] => [
  { about: 'how to bend the tang for the level wanted', say: () => ofTheTang(v, computed, known) },
  { about: 'which carburettors to bring to the setting', say: () => ofTheOthers(v, known) },
  { about: 'how far to bend each tang', say: () => ofTheBends(v, computed) },
  { about: 'what head the valve holds', say: () => ofTheReserve(v, computed, known) },
];
