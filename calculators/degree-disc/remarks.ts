import { papers, placing } from '../drawing/to-pdf.ts';
import { fixed, showFixed } from '../frame/format.ts';
import type { ComputedOf, Known } from '../frame/types.ts';
import type { Values } from './compute.ts';
import { discOf, tapeOf } from './files.ts';
import type { results } from './results.ts';

/** Lines nearer than this run together on a common printer, mm (common practice). */
const READABLE = 0.5;
/** A disc is not read finer than this, degrees. */
const FINE = 0.25;

/** What the print is good for, and what to do when it does not go on the paper. */
export function remarks(
  v: Values,
  computed: ComputedOf<typeof results>,
  { lengths }: Known,
): readonly string[] {
  const said: string[] = [];
  const { name } = papers[v.paper];
  for (const [words, drawing] of [
    ['The disc', discOf(v)],
    ['The tape', tapeOf(v)],
  ] as const) {
    if (placing(drawing, v.paper) === undefined) {
      said.push(
        `${words} does not go on ${name} at true scale. Make it smaller, or save the SVG and have it printed on larger paper.`,
      );
    }
  }
  const perDegree = computed['disc-per-degree'] as number;
  if (perDegree < READABLE) {
    said.push(
      `At the edge of this disc a degree is only ${showFixed(perDegree, 'mm', 2, lengths)}: its lines may run together. A larger disc reads finer.`,
    );
  }
  const tape = computed['tape-print-error'] as number;
  if (Math.abs(tape) > FINE) {
    said.push(
      `The print is ${tape > 0 ? 'too large' : 'too small'}: the tape would be ${fixed(Math.abs(tape), 1)}° out by the end of the round. Print again at 100 %, not fitted to the page.`,
    );
  }
  const disc = computed['disc-print-error'] as number;
  if (disc > FINE) {
    said.push(
      `The printer stretched the sheet more one way than the other; the disc is up to ${fixed(disc, 2)}° out. Print it again, or on another printer.`,
    );
  }
  said.push(
    'Set the zero to true top dead centre with a positive stop, not by eye at the top: see “Finding top dead centre”.',
  );
  return said;
}
