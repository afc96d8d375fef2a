import { papers, placing } from '../../drawing/papers.ts';
import { fixed, showFixed } from '../../frame/text/format.ts';
import type { ComputedOf, Known, Remark } from '../../frame/types.ts';
import type { Values } from './compute.ts';
import { discOf, tapeOf } from './files.ts';
import type { results } from './results.ts';

/** Lines nearer than this run together on a common printer, mm (common practice). */
const READABLE = 0.5;
/** A disc is not read finer than this, degrees. */
const FINE = 0.25;

type Computed = ComputedOf<typeof results>;

const onPaper =
  (words: string, drawing: (v: Values) => Parameters<typeof placing>[0]) =>
  (v: Values): string | undefined =>
    placing(drawing(v), v.paper) === undefined
      ? `${words} is larger than ${papers[v.paper].name}: the PDF lays it on several sheets, to be joined by the crosses on them. Or save the SVG and have it printed on larger paper.`
      : undefined;
const discOnPaper = onPaper('The disc', discOf);
const tapeOnPaper = onPaper('The tape', tapeOf);

/** What the print is good for, and how it goes on paper that is smaller. */
export const remarks = (v: Values, computed: Computed, { lengths }: Known): readonly Remark[] => [
  { about: 'whether the disc goes on the paper', quiet: true, say: () => discOnPaper(v) },
  { about: 'whether the tape goes on the paper', quiet: true, say: () => tapeOnPaper(v) },
  {
    about: 'how fine the disc reads',
    say: () => {
      const perDegree = computed['disc-per-degree'] as number;
      return perDegree < READABLE
        ? `At the edge of this disc a degree is only ${showFixed(perDegree, 'mm', 2, lengths)}: its lines may run together. A larger disc reads finer.`
        : undefined;
    },
  },
  {
    about: 'whether the tape was printed true',
    say: () => {
      const tape = computed['tape-print-error'] as number;
      return Math.abs(tape) > FINE
        ? `The print is ${tape > 0 ? 'too large' : 'too small'}: the tape would be ${fixed(Math.abs(tape), 1)}° out by the end of the round. Print again at 100%, not fitted to the page.`
        : undefined;
    },
  },
  {
    about: 'whether the disc was printed true',
    say: () => {
      const disc = computed['disc-print-error'] as number;
      return disc > FINE
        ? `The printer stretched the sheet more one way than the other; the disc is up to ${fixed(disc, 2)}° out. Print it again, or on another printer.`
        : undefined;
    },
  },
  {
    about: 'where its zero goes',
    say: () =>
      'Set the zero to true top dead centre with a positive stop, not by eye at the top: see “Finding top dead centre”.',
  },
];
