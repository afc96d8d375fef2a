import { inputDigits } from '../frame/text/format.ts';
import { metric } from '../frame/text/prose.ts';
import type { LengthDisplay } from '../frame/text/units.ts';
import { MILLIMETRES_PER } from '../maths/units/length-units.ts';
import { line, text, type Shape } from './shapes.ts';

/** Nominal lengths of the two bars, mm. */
export const BAR_ACROSS = 100;
export const BAR_UP = 50;
/** Nominal lengths of what an inch rule proves, in. */
export const INCHES_ACROSS = 4;
export const INCHES_UP = 2;

/** As it is lettered: the bars stay what they are whatever a reader's lengths are in. */
export const barLength = (length: number): string =>
  `${metric(length)} (${inputDigits(length, 'in', 0.1)} in)`;
const inchLength = (inches: number): string =>
  `${inches}\u00A0in (${metric(Number(inputDigits(inches * MILLIMETRES_PER.in, 'mm', 0.1)))})`;

/** What the bars take: along both, and below and left of where they meet, mm. */
export interface BarRoom {
  readonly across: number;
  readonly up: number;
  readonly foot: number;
  readonly side: number;
}

const TICK = 2;
const ROW = 3.6;
const LETTER = 2.4;
/** What runs on beyond the bar across, where it is proved by an inch rule. */
export const INCH_BAR = 'bar-across-inches';
/** Ticks of whole inches stand on the outside of the bars. */
const INCH_TICK = 1.25;

const IN_MILLIMETRES: BarRoom = { across: BAR_ACROSS, up: BAR_UP, foot: 10, side: 0 };
const IN_INCHES: BarRoom = {
  across: INCHES_ACROSS * MILLIMETRES_PER.in,
  up: INCHES_UP * MILLIMETRES_PER.in,
  foot: 16,
  side: 2 * INCH_TICK,
};

/** The room for the bars: those of a reader in inches are proved by an inch rule as well. */
export const barRoom = (lengths: LengthDisplay): BarRoom =>
  lengths === 'in' ? IN_INCHES : IN_MILLIMETRES;

/**
 * The bars that prove a print's scale, one across the sheet and one up it: a printer may stretch the
 * two ways differently. They meet at `left`, `bottom`; a tick stands at every 10 mm. For a reader in
 * inches they run on, with a tick at every inch on the other side.
 */
export function provingBars(
  left: number,
  bottom: number,
  lengths: LengthDisplay = 'mm',
): readonly Shape[] {
  const ticks = (length: number, step: number): number[] =>
    Array.from({ length: Math.round(length / step) + 1 }, (_, i) => i * step);
  const words =
    lengths === 'in'
      ? [
          `Proving bars, outer ticks: ${inchLength(INCHES_ACROSS)} across, ${inchLength(INCHES_UP)} up.`,
          `Inner ticks: ${barLength(BAR_ACROSS)} across, ${barLength(BAR_UP)} up.`,
        ]
      : [
          `Proving bars: ${barLength(BAR_ACROSS)} across, ${barLength(BAR_UP)} up, from tick to tick.`,
        ];
  const first = lengths === 'in' ? 5.6 : 4;
  return [
    line('proving', left, bottom, left + BAR_ACROSS, bottom, 'bar-across'),
    line('proving', left, bottom, left, bottom + BAR_UP, 'bar-up'),
    ...ticks(BAR_ACROSS, 10).map((x) =>
      line('proving', left + x, bottom, left + x, bottom + (x % BAR_ACROSS === 0 ? 2 : 1) * TICK),
    ),
    ...ticks(BAR_UP, 10).map((y) =>
      line('proving', left, bottom + y, left + (y % BAR_UP === 0 ? 2 : 1) * TICK, bottom + y),
    ),
    ...(lengths === 'in' ? inchBars(left, bottom, ticks) : []),
    ...[...words, 'Print at 100%, not fitted to the page, then measure both.'].map((row, i) =>
      text(left, bottom - first - i * ROW, LETTER, row, 'start', 0, 'proving'),
    ),
  ];
}

/** What runs on beyond the bars in millimetres, and the ticks at whole inches. */
function inchBars(
  left: number,
  bottom: number,
  ticks: (length: number, step: number) => number[],
): readonly Shape[] {
  const { across, up } = IN_INCHES;
  const inch = MILLIMETRES_PER.in;
  const out = (at: number, end: number): number =>
    (at === 0 || Math.abs(at - end) < inch / 2 ? 2 : 1) * INCH_TICK;
  return [
    line('proving', left + BAR_ACROSS, bottom, left + across, bottom, INCH_BAR),
    line('proving', left, bottom + BAR_UP, left, bottom + up, 'bar-up-inches'),
    ...ticks(across, inch).map((x) =>
      line('proving', left + x, bottom, left + x, bottom - out(x, across)),
    ),
    ...ticks(up, inch).map((y) => line('proving', left, bottom + y, left - out(y, up), bottom + y)),
  ];
}
