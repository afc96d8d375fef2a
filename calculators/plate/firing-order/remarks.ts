import { listed } from '../../maths/numeric/listed.ts';
import { orderFigure } from '../../frame/text/order.ts';
import { fixed } from '../../frame/text/format.ts';
import type { Known, Remark } from '../../frame/types.ts';
import { sharing, TOGETHER } from '../../maths/crank/firing-order.ts';
import { isByOrder } from './inputs.ts';
import type { Computed, Values } from './compute.ts';

/** Less than this of one piston’s own force is nothing that anybody feels. */
const SLIGHT = 0.01;
/** Degrees below which intervals count as even. */
const EVEN = 0.05;

/** Whole degrees as they are, others to a tenth. */
const degrees = (angle: number): string =>
  `${fixed(angle, Math.abs(angle - Math.round(angle)) < EVEN ? 0 : 1)}°`;

/** Which others could share a coil of two leads with a cylinder. */
export function coilWords(v: Values, computed: Computed, index: number): string {
  const { together, opposite } = sharing(computed.top as readonly number[], index, v.tolerance);
  const each = [
    together.length === 0 ? '' : `may share with ${listed(together)}, which fires at the same time`,
    opposite.length === 0
      ? ''
      : `with ${listed(opposite)}, half a turn away, only as a wasted spark (told above)`,
  ].filter((words) => words !== '');
  return each.length === 0
    ? 'needs a coil of its own: a spare spark would fall in another’s charge'
    : each.join('; ');
}

/** Whether two cylinders are told to fire together only because nobody has said how they lean. */
function isRowAssumed(v: Values, { top }: Computed, { isAssumed }: Known): boolean {
  const tops = top as readonly number[];
  const assumed = tops.filter((_, i) => isAssumed(`lean-${String(i + 1)}`));
  return !isByOrder(v) && assumed.length > 1 && new Set(assumed).size < assumed.length;
}

function ofTheIntervals(v: Values, computed: Computed, { spreads }: Known): string {
  const intervals = computed.interval as readonly number[];
  const order = orderFigure(computed.sequence as number);
  if (v.cylinders === 1) return 'One cylinder fires once a turn.';
  const apart = intervals.filter((interval) => interval >= TOGETHER);
  const said = apart.map(degrees).join(', ');
  if (apart.length === 1) {
    return `All cylinders fire together, once a turn. Order ${order}.`;
  }
  const uneven = computed.uneven as number;
  if (uneven <= EVEN) return `It fires evenly, every ${degrees(apart[0]!)}, in the order ${order}.`;
  return uneven <= (spreads.uneven ?? 0)
    ? `By these readings it fires unevenly in the order ${order}: ${said}. That is within their ±, which cannot tell it from even firing: find each top with the disc before you space the sets.`
    : `It fires unevenly in the order ${order}: ${said}. Space the sets by these, never evenly.`;
}

function ofTheShaking(computed: Computed): string {
  const single = computed.single as number;
  const slight = (force: number): boolean => force <= SLIGHT * single;
  const forces = (['primary', 'secondary'] as const).filter(
    (name) => !slight(computed[name] as number),
  );
  // A couple counts against one piston's force on an arm of a hundredth of a metre.
  const rocks = (['primary-couple', 'secondary-couple'] as const).filter(
    (name) => (computed[name] as number) > SLIGHT * single * 0.1,
  );
  const words = (name: keyof Computed): string => name.replace('-', ' ');
  const left = [...forces.map((name) => `${name} forces`), ...rocks.map(words)];
  if (single === 0) return 'At rest nothing shakes.';
  return left.length === 0
    ? 'Forces and couples cancel, first and second order.'
    : `What is left to shake the engine: ${left.join(', ')}.`;
}

/** Whether any two cylinders could share a coil with two leads, firing so. */
const couldShare = (v: Values, { top }: Computed, how: 'together' | 'opposite'): boolean =>
  (top as readonly number[]).some(
    (_, i, tops) => sharing(tops, i + 1, v.tolerance)[how].length > 0,
  );

export const remarks = (v: Values, computed: Computed, known: Known): readonly Remark[] => [
  { about: 'how evenly it fires', say: () => ofTheIntervals(v, computed, known) },
  {
    about: 'whether the cylinders stand in a row',
    quiet: true,
    // Two on one pin are a vee or a boxer as often as a row; of more, the order is told all the same.
    ...(v.cylinders === 2 ? { leads: true as const } : {}),
    say: () =>
      isRowAssumed(v, computed, known)
        ? 'Cylinders on one pin fire together only if they stand in a row, which nobody has said. Those of a vee or a boxer fire apart: give their leans.'
        : undefined,
  },
  { about: 'what shakes', say: () => ofTheShaking(computed) },
  {
    about: 'wasted sparks',
    quiet: true,
    say: () =>
      couldShare(v, computed, 'opposite')
        ? `A coil shared by cylinders half a turn apart fires both plugs twice a turn: its points or cam must open twice, and the spare spark falls as far before the other piston’s bottom as the timing is before the top, its ports open. Many two-strokes ran so, common practice; one that spits back through the carburettor should have a coil for each.`
        : undefined,
  },
  {
    about: 'the plugs of a shared coil',
    quiet: true,
    say: () =>
      couldShare(v, computed, 'together') || couldShare(v, computed, 'opposite')
        ? 'Of the two plugs of a coil with two leads, one always sparks with its centre electrode positive, whichever way the coil is wired, and needs more voltage for it: common practice. Set both plug gaps at the lower end of their range.'
        : undefined,
  },
];
