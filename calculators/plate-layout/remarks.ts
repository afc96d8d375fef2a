import { fixed, showFixed } from '../frame/format.ts';
import type { ComputedOf, Known } from '../frame/types.ts';
import { walls } from '../maths/plate-walls.ts';
import { plateOf, type Values } from './compute.ts';
import type { results } from './results.ts';

/** An error of the plate that nobody can measure, degrees. */
const NOTHING = 0.01;
/** What a set can be moved in its own slot without trouble, degrees. */
const SLIGHT = 0.5;

const worst = (errors: readonly number[]): number => Math.max(...errors.map(Math.abs));

/** Pass or fail of the metal that is left, and how good a gear would be. */
export function remarks(
  v: Values,
  computed: ComputedOf<typeof results>,
  { lengths }: Known,
): readonly string[] {
  const thinnest = walls(plateOf(v))[0]!;
  const where = `${showFixed(thinnest.wall, 'mm', 2, lengths)} between ${thinnest.between.join(' and ')}`;
  const said = [
    thinnest.wall >= v['least-wall']
      ? `Pass: the thinnest metal is ${where}, and ${showFixed(v['least-wall'], 'mm', 1, lengths)} was wanted.`
      : `Fail: there is only ${where}, and ${showFixed(v['least-wall'], 'mm', 1, lengths)} was wanted. Move one of them, drill smaller, or accept less on a thicker plate.`,
  ];
  if (v.sets > 1) {
    const head = worst(computed['head-error'] as readonly number[]);
    const gear = worst(computed['tooth-error'] as readonly number[]);
    if (gear > NOTHING) {
      said.push(
        `On a gear of ${String(v.teeth)} teeth a set is up to ${fixed(gear, 2)}° out${gear > SLIGHT ? ': choose one whose teeth divide by the sets, or use the head' : ', which its slot takes up'}.`,
      );
    }
    if (head > NOTHING) {
      said.push(
        `With these hole circles a set is up to ${fixed(head, 3)}° out on the dividing head.`,
      );
    }
  }
  return said;
}
