import { listed } from '../../maths/numeric/listed.ts';
import { decimalsApart, fixed } from '../../frame/text/format.ts';
import { Absent, type Known, type Remark } from '../../frame/types.ts';
import { orAssumed } from '../../frame/whose-limit.ts';
import { chosenOf, isRejected, type Computed, type Values } from './compute.ts';

const jets = (numbers: readonly number[]): string =>
  `${numbers.length === 1 ? 'jet' : 'jets'} ${listed(numbers)}`;

/** Among which jets the sets were looked for. */
const among = (v: Values, known: Known): string =>
  v.size === undefined
    ? ''
    : ` within ${fixed(v.tolerance, 1)} per cent${orAssumed(known, 'tolerance')} of the size wanted`;

/** Whether the best set holds jets that are themselves to be rejected. */
export function isMisfit(v: Values, computed: Computed): boolean {
  const { against } = computed;
  if (against instanceof Absent) return false;
  return chosenOf(computed).some((n) => isRejected(v, (against as readonly number[])[n - 1]!));
}

function ofTheMisfit(v: Values, computed: Computed, known: Known): string | undefined {
  const spread = computed.spread as number;
  return isMisfit(v, computed)
    ? `No ${String(v.wanted)} of these jets are alike within ${fixed(v.tolerance, 1)} per cent of area${orAssumed(known, 'tolerance')}: the best set differs by ${fixed(spread, decimalsApart(spread, v.tolerance, 1))} per cent. Check what was typed, or look for more jets. Numbers of two makers are no common measure: then measure all by a pin or by flow.`
    : undefined;
}

function ofTheSet(v: Values, computed: Computed, known: Known): string | undefined {
  const chosen = chosenOf(computed);
  if (chosen.length === 0 || isMisfit(v, computed)) return undefined;
  if (v.wanted === 1 && v.size !== undefined && !(computed.against instanceof Absent)) {
    const off = (computed.against as readonly number[])[chosen[0]! - 1]!;
    const how =
      Math.abs(off) < 0.05
        ? 'of that area'
        : `${fixed(Math.abs(off), 1)} per cent ${off < 0 ? 'less' : 'more'} area`;
    return `Fit ${jets(chosen)}: of all${among(v, known)} it is the nearest, ${how}.`;
  }
  return `Fit ${jets(chosen)}: of all sets of ${String(v.wanted)}${among(v, known)} their areas differ least, by ${fixed(computed.spread as number, 1)} per cent of the mean.`;
}

function ofTheNext(v: Values, computed: Computed, known: Known): string | undefined {
  const { spreads } = known;
  const { spread, 'next-spread': next } = computed;
  if (spread instanceof Absent || next instanceof Absent) return undefined;
  const more = (next as number) - (spread as number);
  const doubt = Math.hypot(spreads.spread ?? 0, spreads['next-spread'] ?? 0);
  return more >= 0 && more < doubt
    ? `The next best set${among(v, known)} differs by ${fixed(next as number, 1)} per cent, nearer to the best than the readings can tell. Either will do; measure finer if you want to know.`
    : undefined;
}

function ofTheRejected(v: Values, computed: Computed, known: Known): string | undefined {
  if (computed.against instanceof Absent) return undefined;
  const out = (computed.against as readonly number[]).flatMap((each, i) =>
    isRejected(v, each) ? [i + 1] : [],
  );
  if (out.length === 0) return undefined;
  return `Put ${jets(out)} aside, marked: more than ${fixed(v.tolerance, 1)} per cent of area${orAssumed(known, 'tolerance')} from ${v.size === undefined ? 'the set' : 'the size wanted'}.`;
}

export const remarks = (v: Values, computed: Computed, known: Known): readonly Remark[] => [
  {
    about: 'whether any set is alike enough',
    quiet: true,
    leads: true,
    say: () => ofTheMisfit(v, computed, known),
  },
  { about: 'which jets to fit', say: () => ofTheSet(v, computed, known) },
  {
    about: 'whether another set is as good',
    quiet: true,
    say: () => ofTheNext(v, computed, known),
  },
  { about: 'which jets to reject', say: () => ofTheRejected(v, computed, known) },
];

/** What becomes of one jet. */
export function ofJet(v: Values, computed: Computed, index: number, known: Known): string {
  if (computed.against instanceof Absent) return '';
  const against = (computed.against as readonly number[])[index - 1]!;
  const sure = known.spreads[`against-${String(index)}`] ?? 0;
  const near =
    Math.abs(Math.abs(against) - v.tolerance) < sure ? ' (too near to the limit to be sure)' : '';
  if (isRejected(v, against)) return `reject: too ${against > 0 ? 'large' : 'small'}${near}`;
  return `${chosenOf(computed).includes(index) ? (isMisfit(v, computed) ? 'in the least unlike set' : 'in the set') : 'spare'}${near}`;
}
