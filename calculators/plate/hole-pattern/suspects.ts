import { memoize } from '../../frame/memoize.ts';
import { Absent, type ComputedOf, type Known } from '../../frame/types.ts';
import { mostByChance } from '../../maths/numeric/chi-square.ts';
import type { Pattern } from '../../maths/plate/hole-distances.ts';
import { withoutDistance } from '../../maths/plate/next-distance.ts';
import { patternOf, type Values } from './compute.ts';
import type { results } from './results.ts';

type Computed = ComputedOf<typeof results>;
type Spreads = Known['spreads'];

/** A misfit beyond so many times its own ± is no chance: one in some hundreds. */
const DOUBTFUL = 3;
/** Two that stand out by nearly the same cannot be told apart. */
const AS_MUCH = 0.95;

export interface Suspects {
  /** The distances that stand out most, from 0, and without any one of which the others agree. */
  readonly which: readonly number[];
  /** Those that stand out as much, but without which the others still contradict each other. */
  readonly cleared: readonly number[];
  /** How many times its own ± the misfit of the first is. */
  readonly times: number;
  /** Whether that is more than chance. */
  readonly contradict: boolean;
}

/** How many times its own ± each misfit is; nothing without a ± or a check. */
function timesOf(computed: Computed, spreads: Spreads): readonly number[] | undefined {
  if (computed.misfit instanceof Absent) return undefined;
  const misfits = computed.misfit as readonly number[];
  const checked = computed.checked as readonly number[];
  const times = misfits.map((misfit, k) => {
    const spread = checked[k]! > 0.01 ? (spreads[`misfit-${k + 1}`] ?? 0) : 0;
    return spread > 0 ? Math.abs(misfit) / spread : undefined;
  });
  return times.every((one) => one === undefined) ? undefined : times.map((one) => one ?? 0);
}

/** What the others say without one distance: asked for by the remarks and by each row of the table. */
export const left = memoize((pattern: Pattern, k: number) => withoutDistance(pattern, k), 40);

/**
 * Whether the others agree within their ± without one distance: the squares of their misfits over
 * their ± are no more than chance makes them.
 *
 * Source: C. D. Ghilani, as below, chapter 5 (statistical testing: of a variance, by chi-square). From
 * memory.
 */
function agreeWithout(k: number, v: Values, computed: Computed, spreads: Spreads): boolean {
  const without = left(patternOf(v), k);
  if (!without) return true;
  const checked = (computed.checked as readonly number[]).toSpliced(k, 1);
  const squares = without.misfits.reduce((sum, misfit, j) => {
    const spread = spreads[`misfit-${(j < k ? j : j + 1) + 1}`] ?? 0;
    // A misfit's own variance is that of its reading times its share that is checked.
    return spread > 0 ? sum + (checked[j]! / 100) * (misfit / spread) ** 2 : sum;
  }, 0);
  return squares <= mostByChance((computed.spare as number) - 1);
}

/** The distances whose misfit is furthest beyond its ±; nothing without a ± or a check. */
export function suspects(
  v: Values,
  computed: Computed,
  { spreads }: Pick<Known, 'spreads'>,
): Suspects | undefined {
  const times = timesOf(computed, spreads);
  if (!times) return undefined;
  const most = Math.max(...times);
  const contradict = most > DOUBTFUL;
  const alike = times.flatMap((one, k) => (one >= AS_MUCH * most ? [k] : []));
  // With one spare distance the others agree whichever is left out.
  const ask = contradict && alike.length > 1 && (computed.spare as number) > 1;
  const found = alike.filter((k) => ask && agreeWithout(k, v, computed, spreads));
  const which = found.length > 0 ? found : alike;
  return {
    which,
    cleared: alike.filter((k) => !which.includes(k)),
    times: most,
    contradict,
  };
}

/**
 * How many times further off the distances are than their ± allows, where they contradict each other:
 * the root of the sum of the squares of misfits over their own ±, divided by the spare distances. 1
 * where they agree.
 *
 * Source: C. D. Ghilani, Adjustment Computations: Spatial Data Analysis, 5th ed., Wiley, 2010, chapter
 * 12 (the reference standard deviation after the adjustment), and the redundancy numbers of chapter
 * 21, by which a misfit's own variance is that of its reading times its share that is checked. From
 * memory.
 */
export function contradiction(computed: Computed, spreads: Spreads): number {
  const times = timesOf(computed, spreads);
  if (!times || Math.max(...times) <= DOUBTFUL) return 1;
  const checked = computed.checked as readonly number[];
  const squares = times.reduce((sum, one, k) => sum + (checked[k]! / 100) * one ** 2, 0);
  return Math.max(1, Math.sqrt(squares / (computed.spare as number)));
}
