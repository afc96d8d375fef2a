import { decimalsApart, fixed, showFixed } from '../../frame/text/format.ts';
import type { ComputedOf, Known, Remark } from '../../frame/types.ts';
import { walls } from '../../maths/plate/plate-walls.ts';
import { plateOf, type Values } from './compute.ts';
import type { results } from './results.ts';

/** An error of the plate that nobody can measure, degrees. */
const NOTHING = 0.01;
/** What a set can be moved in its own slot without trouble, degrees. */
const SLIGHT = 0.5;

const worst = (errors: readonly number[]): number => Math.max(...errors.map(Math.abs));

/** Pass or fail of the metal that is left. */
function ofTheMetal(v: Values, known: Known): string {
  const { lengths } = known;
  const wanted = `${showFixed(v['least-wall'], 'mm', 1, lengths)} ${known.isAssumed('least-wall') ? 'is assumed to be' : 'was'} wanted`;
  const thinnest = walls(plateOf(v))[0]!;
  const where = `${showFixed(thinnest.wall, 'mm', decimalsApart(thinnest.wall, v['least-wall'], 2), lengths)} between ${thinnest.between.join(' and ')}`;
  return thinnest.wall >= v['least-wall']
    ? `Pass: the thinnest metal is ${where}, and ${wanted}.`
    : `Fail: there is only ${where}, and ${wanted}. Move one of them, drill smaller, or accept less on a thicker plate.`;
}

function ofTheGear(v: Values, computed: ComputedOf<typeof results>): string | undefined {
  if (v.sets < 2) return undefined;
  const gear = worst(computed['tooth-error'] as readonly number[]);
  if (gear <= NOTHING) return undefined;
  return `On a gear of ${String(v.teeth)} teeth a set is up to ${fixed(gear, 2)}° out${gear > SLIGHT ? ': choose one whose teeth divide by the sets, or use the head' : ', which its slot takes up'}.`;
}

function ofTheHead(v: Values, computed: ComputedOf<typeof results>): string | undefined {
  if (v.sets < 2) return undefined;
  const head = worst(computed['head-error'] as readonly number[]);
  return head > NOTHING
    ? `With these hole circles a set is up to ${fixed(head, 3)}° out on the dividing head.`
    : undefined;
}

export const remarks = (
  v: Values,
  computed: ComputedOf<typeof results>,
  known: Known,
): readonly Remark[] => [
  { about: 'whether enough metal is left', say: () => ofTheMetal(v, known) },
  { about: 'how true the gear would be', quiet: true, say: () => ofTheGear(v, computed) },
  { about: 'how true the dividing head would be', quiet: true, say: () => ofTheHead(v, computed) },
];
