import { Absent, type ComputedOf, type Known } from '../../frame/types.ts';
import type { results } from './results.ts';

type Computed = ComputedOf<typeof results>;
type Spreads = Known['spreads'];

/** A misfit beyond so many times its own ± is no chance: one in some hundreds. */
const DOUBTFUL = 3;
/** Two that stand out by nearly the same cannot be told apart. */
const AS_MUCH = 0.95;

export interface Suspects {
  /** The distances that stand out most, from 0. */
  readonly which: readonly number[];
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

/** The distances whose misfit is furthest beyond its ±; nothing without a ± or a check. */
export function suspects(
  computed: Computed,
  { spreads }: Pick<Known, 'spreads'>,
): Suspects | undefined {
  const times = timesOf(computed, spreads);
  if (!times) return undefined;
  const most = Math.max(...times);
  return {
    which: times.flatMap((one, k) => (one >= AS_MUCH * most ? [k] : [])),
    times: most,
    contradict: most > DOUBTFUL,
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
