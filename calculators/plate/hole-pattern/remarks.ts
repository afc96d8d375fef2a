import { listed } from '../../maths/numeric/listed.ts';
import { fixed, showFixed } from '../../frame/text/format.ts';
import type { ComputedOf, Known, Remark } from '../../frame/types.ts';
import { nextDistance } from '../../maths/plate/next-distance.ts';
import { centreOf, fitted, patternOf, type Values } from './compute.ts';
import { openingsOf } from './opening.ts';
import { edgesOf, thinnest } from './part.ts';
import type { results } from './results.ts';
import { contradiction, left, suspects } from './suspects.ts';
import { setsOf } from './to-plate.ts';

type Computed = ComputedOf<typeof results>;

/** A distance whose misreading leaves less than this share over is hardly checked, per cent. */
const LITTLE = 4;

const named = (v: Values, k: number): string => `distance ${k + 1} (hole ${v.a[k]!} to ${v.b[k]!})`;

/** Whether a distance is misread, and which. */
function ofTheReadings(v: Values, computed: Computed, known: Known): string {
  const spare = computed.spare as number;
  if (spare < 1) {
    return 'No distance checks another, so a misread one would not show. Measure one of them a second time, or one more.';
  }
  const found = suspects(v, computed, known);
  if (!found) return 'Give the distances a ±: without one nothing says whether they agree.';
  const { which, cleared, times, contradict } = found;
  if (!contradict) return 'The distances agree within their ±: none looks misread.';
  const wider = `Until they agree, the ± of the places is ${fixed(contradiction(computed, known.spreads), 1)} times as wide as the readings alone would make it.`;
  const not =
    cleared.length > 0
      ? ` Without ${listed(
          cleared.map((one) => named(v, one)),
          'or',
        )} the others would not agree.`
      : '';
  if (which.length > 1) {
    const alike =
      which.length === v.distance.length
        ? `all ${which.length} of them stand out alike, so that any one may be misread. Measure them all again`
        : `${listed(which.map((k) => named(v, k)))} stand out alike. Measure these again`;
    return `The distances contradict each other by more than their ± allows. Nothing tells which is at fault: ${alike}, or one more between holes that have none.${not} ${wider}`;
  }
  const k = which[0]!;
  const without = left(patternOf(v), k);
  const say = (figure: number): string => showFixed(figure, 'mm', 2, known.lengths);
  const others = without
    ? ` Without it the others agree to ${say(without.rms)}, and make it ${say(without.read)} where ${say(v.distance[k]!)} was read.`
    : '';
  const tilted =
    without && without.read < v.distance[k]!
      ? 'a caliper held askew or over a burr'
      : 'a slip of the jaw';
  return `Look again at ${named(v, k)}: what is left over there is ${fixed(times, 1)} times its ±.${others}${not} It may be misread, belong to another pair of holes, or come of ${tilted}. ${wider}`;
}

const contradict = (v: Values, computed: Computed, known: Known): boolean =>
  (computed.spare as number) >= 1 && suspects(v, computed, known)?.contradict === true;

/** Distances that hardly any other checks. */
function ofTheChecks(v: Values, computed: Computed): string | undefined {
  if ((computed.spare as number) < 1) return undefined;
  const weak = (computed.checked as readonly number[]).flatMap((share, k) =>
    share < LITTLE ? [k] : [],
  );
  if (weak.length === 0) return undefined;
  const some = listed(weak.slice(0, 3).map((k) => named(v, k)));
  return `Little checks ${some}${weak.length > 3 ? ` and ${weak.length - 3} more` : ''}: misread there, the places would move and next to nothing would show. Measure ${weak.length === 1 ? 'it' : 'each'} twice and give both.`;
}

/** Which distance would help most. */
function ofTheNext(v: Values): string | undefined {
  const pattern = patternOf(v);
  const next = nextDistance(pattern, fitted(pattern));
  if (!next || next.then > 0.85 * next.now) return undefined;
  const less = Math.round((1 - next.then / next.now) * 100);
  return `Hole ${next.hole} is held least. To measure from hole ${next.from} to ${next.to} as well would make its place surer by ${less}%.`;
}

function ofTheMetal(v: Values, { lengths }: Known): string {
  const { places } = fitted(patternOf(v));
  const middle = centreOf(v, places);
  const edges = edgesOf(v, places, middle);
  const openings = openingsOf(v, places, edges);
  const { wall, between } = thinnest(v, places, middle, edges, openings);
  return `The metal is thinnest between ${between.join(' and ')}: ${showFixed(wall, 'mm', 2, lengths)}.`;
}

function ofTheSets(v: Values): string | undefined {
  if (v.sets < 2) return undefined;
  const sets = setsOf(v);
  return sets
    ? `The holes make ${v.sets} like sets of ${sets.holes.length} about the centre: each lies within ${fixed(Math.max(0.01, sets.worst), 2)} mm of its like.`
    : `The holes do not make ${v.sets} like sets about this centre: they cannot be shared out evenly, or lie more than 1 mm from alike. Check the number of sets and the centre.`;
}

export const remarks = (v: Values, computed: Computed, known: Known): readonly Remark[] => [
  {
    about: 'whether a distance is misread',
    quiet: true,
    leads: true,
    say: () => (contradict(v, computed, known) ? ofTheReadings(v, computed, known) : undefined),
  },
  {
    about: 'whether a distance is misread',
    say: () => (contradict(v, computed, known) ? undefined : ofTheReadings(v, computed, known)),
  },
  { about: 'which distances nothing checks', quiet: true, say: () => ofTheChecks(v, computed) },
  { about: 'which distance to measure next', quiet: true, say: () => ofTheNext(v) },
  { about: 'where the metal is thinnest', quiet: true, say: () => ofTheMetal(v, known) },
  { about: 'whether the holes make like sets', quiet: true, say: () => ofTheSets(v) },
];
