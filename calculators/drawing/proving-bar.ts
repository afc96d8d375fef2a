import { inputDigits } from '../frame/format.ts';
import { metric } from '../frame/prose.ts';
import { line, text, type Shape } from './shapes.ts';

/** Nominal lengths of the two bars, mm. */
export const BAR_ACROSS = 100;
export const BAR_UP = 50;
/** As it is lettered: the bars stay what they are whatever a reader's lengths are in. */
export const barLength = (length: number): string =>
  `${metric(length)} (${inputDigits(length, 'in', 0.1)} in)`;
/** Room below `bottom` that the lettering takes, mm. */
export const BAR_FOOT = 10;

const TICK = 2;

/**
 * The bars that prove a print's scale, one across the sheet and one up it: a printer may stretch the
 * two ways differently. They meet at `left`, `bottom`; a tick stands at every 10 mm.
 */
export function provingBars(left: number, bottom: number): readonly Shape[] {
  const ticks = (length: number): number[] =>
    Array.from({ length: length / 10 + 1 }, (_, i) => i * 10);
  return [
    line('proving', left, bottom, left + BAR_ACROSS, bottom, 'bar-across'),
    line('proving', left, bottom, left, bottom + BAR_UP, 'bar-up'),
    ...ticks(BAR_ACROSS).map((x) =>
      line('proving', left + x, bottom, left + x, bottom + (x % BAR_ACROSS === 0 ? 2 : 1) * TICK),
    ),
    ...ticks(BAR_UP).map((y) =>
      line('proving', left, bottom + y, left + (y % BAR_UP === 0 ? 2 : 1) * TICK, bottom + y),
    ),
    ...[
      `Proving bars: ${barLength(BAR_ACROSS)} across, ${barLength(BAR_UP)} up, from tick to tick.`,
      'Print at 100 %, not fitted to the page, then measure both.',
    ].map((words, row) => text(left, bottom - 4 - row * 3.6, 2.4, words, 'start', 0, 'proving')),
  ];
}
