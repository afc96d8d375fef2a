import { fixed } from '../../frame/text/format.ts';
import type { Known, Remark, Uncertain } from '../../frame/types.ts';
import { EARLIEST_SPARK } from '../../maths/limits/earliest-spark.ts';
import { unusualTiming } from '../../plate/usual-timing.ts';
import { listed } from '../../maths/numeric/listed.ts';
import { orAssumed } from '../../frame/whose-limit.ts';
import { withinTolerance } from '../../maths/plate/plate-setting.ts';
import { timingsOf, type Computed, type Values } from './compute.ts';

/** More than this between cylinders is a mistake in measuring rather than a matter of setting. */
const UNLIKELY_SPREAD = 20;

/** Numbers of the cylinders of which a figure lies nearer to the tolerance than its own ±. */
const closeTo = (
  errors: readonly number[],
  tolerance: number,
  spreadOf: (row: number) => number | undefined,
): string[] =>
  errors.flatMap((error, i) =>
    Math.abs(Math.abs(error) - tolerance) < (spreadOf(i + 1) ?? 0) ? [String(i + 1)] : [],
  );

const cylinders = (numbers: readonly string[]): string =>
  `${numbers.length === 1 ? 'cylinder' : 'cylinders'} ${listed(numbers)}`;

/** Pass or fail of the plate, and of which cylinders it is too near to tell; nothing while a figure is first to be put right. */
function ofThePlate(v: Values, computed: Computed, known: Known): string | undefined {
  if (isAmiss(v, computed)) return undefined;
  const errors = computed.error as readonly number[];
  const before = computed['error-before'] as readonly number[];
  const { spreads } = known;
  const tolerance = `± ${fixed(v.tolerance, 2)}°${orAssumed(known, 'tolerance')}`;
  const asFound = withinTolerance(before, v.tolerance);
  const out = errors.flatMap((error, index) =>
    withinTolerance([error], v.tolerance) ? [] : [String(index + 1)],
  );
  const [judged, name] = asFound ? [before, 'error-before'] : [errors, 'error'];
  const close = closeTo(judged, v.tolerance, (row) => spreads[`${name}-${String(row)}`]);
  const unsure =
    close.length === 0
      ? ''
      : ` The readings of ${cylinders(close)} are no surer than that: measure again before you go by it.`;
  const isUnusual = unusualTiming(timingsOf(v).target) !== undefined;
  const doubt = `${unsure}${isUnusual ? ' All that holds only if the timing to set is right, which is to be checked first.' : ''}`;
  if (asFound) {
    return `Pass as found: every cylinder read here is within ${tolerance}. Leave plate and sets alone.${doubt}`;
  }
  if (out.length === 0) {
    return `Pass with the plate alone: turned so, every cylinder read here is within ${tolerance}.${doubt}`;
  }
  return `Fail with the plate alone: ${cylinders(out)} would still be outside ${tolerance}. Move ${out.length === 1 ? 'that set' : 'those sets'} in the slot after the plate is set, by the table: + is against the way the cam turns, which is earlier.${doubt}`;
}

/** Pass or fail of one cylinder after the turn of the plate. */
export function verdict(v: Values, computed: Computed, index: number, more: Uncertain): string {
  if (isAmiss(v, computed)) return 'not judged: see the remark under the answer';
  const error = (computed.error as readonly number[])[index - 1]!;
  const passes = withinTolerance([error], v.tolerance);
  const close =
    closeTo([error], v.tolerance, () => more.spreads[`error-${String(index)}`]).length > 0;
  return `${passes ? 'pass' : 'fail, move this set'}${close ? ' (too near to the limit to be sure: measure again)' : ''}`;
}

/** Cylinders that fire where none does: it is the reading that is to be looked at. */
function ofThePlaces(found: readonly number[]): string | undefined {
  const numbered = found.map((angle, i) => ({ angle, number: String(i + 1) }));
  const early = numbered.filter(({ angle }) => angle > EARLIEST_SPARK);
  const late = numbered.filter(({ angle }) => angle < 0);
  const fire = (those: typeof numbered): string =>
    `${those.length === 1 ? 'Cylinder' : 'Cylinders'} ${listed(those.map(({ number }) => number))} ${those.length === 1 ? 'fires' : 'fire'}`;
  const said = [
    ...(early.length === 0
      ? []
      : [`${fire(early)} more than ${EARLIEST_SPARK}° before the top, where no such engine does.`]),
    ...(late.length === 0 ? [] : [`${fire(late)} after the top, as the minus says.`]),
  ];
  return said.length === 0
    ? undefined
    : `${said.join(' ')} Check those readings, their unit and their sign before anything is turned.`;
}

/** Whether a reading or the timing to set lies where no engine fires, so that nothing is judged or turned by it. */
const isAmiss = (v: Values, computed: Computed): boolean =>
  [timingsOf(v).target, ...(computed['as-found'] as readonly number[])].some(
    (angle) => angle > EARLIEST_SPARK || angle < 0,
  );

/** What the turn of the plate is called where it is not to be turned. */
export function leftAlone(v: Values, computed: Computed): string | undefined {
  if (isAmiss(v, computed)) return 'Put the figures right first; turn by them';
  return withinTolerance(computed['error-before'] as readonly number[], v.tolerance)
    ? 'Leave the plate; the best turn is'
    : undefined;
}

/** Pass or fail, and the order of work. */
export const remarks = (v: Values, computed: Computed, known: Known): readonly Remark[] => [
  {
    about: 'whether an engine fires there',
    quiet: true,
    leads: true,
    say: () => ofThePlaces(computed['as-found'] as readonly number[]),
  },
  {
    about: 'whether an engine is set so',
    quiet: true,
    leads: true,
    say: () => {
      const said = unusualTiming(timingsOf(v).target);
      return said && `The timing to set is ${said} Check the figure, its unit, and stroke and rod.`;
    },
  },
  {
    about: 'whether the cylinders are likely so far apart',
    quiet: true,
    leads: true,
    say: () => {
      const spread = computed.spread as number;
      return spread > UNLIKELY_SPREAD
        ? `${fixed(spread, 0)}° between cylinders is more than slots allow. Check that each was measured at its own top dead centre, turning forwards, and that the sets are not swapped.`
        : undefined;
    },
  },
  { about: 'pass or fail of the plate', say: () => ofThePlate(v, computed, known) },
  {
    about: 'the order of work',
    say: () =>
      'Order of work: gap every set first, since the gap moves the timing; then measure every cylinder; then turn the plate and lock it; then move single sets in their slots; then gap and measure all of them once more, since a set moved in its slot may have changed its gap.',
  },
];
