import { ticks } from 'd3-array';
import type { Field } from './field.tsx';
import { usualMargin } from '../common/plot.tsx';
import type { LinearScale } from './scale.ts';
import { hundredth } from '../../maths/numeric/steps.ts';
import { textWidth } from '../common/text-width.ts';

interface AxisProps {
  readonly scale: LinearScale;
  /** The rectangle it belongs to: its line lies along an edge, its grid runs across and no further. */
  readonly field: Field;
  readonly grid?: boolean;
  /** Quantity and unit, such as "crank angle, degrees BTDC". */
  readonly label: string;
  readonly ticks?: number;
  readonly format?: (value: number) => string;
  /** How much higher the label of a vertical axis stands, where a row of words comes between. */
  readonly labelUp?: number;
}

const trueMinus = (value: number): string => String(value).replace('-', '−');

interface Tick {
  readonly value: number;
  readonly place: number;
}

const ticksOf = (scale: LinearScale, count: number): Tick[] =>
  scale.ticks(count).map((value) => ({ value, place: hundredth(scale(value)) }));

/** The same stroke at every tick, as one path: a picture redraws the faster the fewer parts it has. */
const strokes = (ticks: readonly Tick[], stroke: (place: number) => string): string =>
  ticks.map(({ place }) => stroke(place)).join('');

/** How far a figure may stand out beyond the end of its axis, and off its tick so as not to. */
const BEYOND = 20;
const OFF_TICK = 4;
/** Between two figures, user units. */
const BETWEEN = 4;
/** Every so many ticks may bear a figure. */
const EVERY = [1, 2, 5, 10] as const;

interface Figure extends Tick {
  readonly words: string;
  /** Where its middle stands. */
  readonly middle: number;
}

/**
 * The figures of a horizontal axis that have room beside each other and within the sheet: those of
 * every tick, or of every second, fifth or tenth, counted from 0.
 */
export function figured(
  ticks: readonly Tick[],
  write: (value: number) => string,
  { left, right }: Pick<Field, 'left' | 'right'>,
): readonly Figure[] {
  const all = [...ticks]
    .sort((a, b) => a.place - b.place)
    .flatMap((tick): Figure[] => {
      const words = write(tick.value);
      const half = textWidth(words) / 2;
      const middle = Math.max(left - BEYOND + half, Math.min(right + BEYOND - half, tick.place));
      return Math.abs(middle - tick.place) > OFF_TICK ? [] : [{ ...tick, words, middle }];
    });
  const step = Math.abs((ticks[1]?.value ?? 1) - (ticks[0]?.value ?? 0));
  const thinned = EVERY.map((every) =>
    all.filter(({ value }) => Math.round(value / step) % every === 0),
  );
  const apart = (figures: readonly Figure[]): boolean =>
    figures.every(({ middle, words }, i) => {
      const next = figures[i + 1];
      if (next === undefined) return true;
      return next.middle - middle >= (textWidth(words) + textWidth(next.words)) / 2 + BETWEEN;
    });
  return thinned.find(apart) ?? all.slice(0, 1);
}

/** The horizontal axis, below the field. */
export function AxisBottom({
  scale,
  field,
  grid = true,
  label,
  ticks: count = 6,
  format,
}: AxisProps) {
  const { left, top, right, bottom } = field;
  const ticks = ticksOf(scale, count);
  return (
    <g class="axis" aria-hidden="true">
      {grid ? <path class="grid" d={strokes(ticks, (x) => `M${x} ${bottom}V${top}`)} /> : null}
      <path
        class="axis-line"
        d={`M${left} ${bottom}H${right}${strokes(ticks, (x) => `M${x} ${bottom}v5`)}`}
      />
      {figured(ticks, format ?? trueMinus, field).map(({ value, middle, words }) => (
        <text
          key={value}
          class="tick-text"
          x={hundredth(middle)}
          y={bottom + 18}
          text-anchor="middle"
        >
          {words}
        </text>
      ))}
      <text class="axis-text" x={(left + right) / 2} y={bottom + 35} text-anchor="middle">
        {label}
      </text>
    </g>
  );
}

/** The vertical axis, left of the field; its label stands above it, read without turning the head. */
export function AxisLeft(props: AxisProps) {
  const { scale, field, grid = true, label, ticks: count = 5, format, labelUp = 0 } = props;
  const { left, top, right, bottom } = field;
  const write = format ?? trueMinus;
  const ticks = ticksOf(scale, count);
  return (
    <g class="axis" aria-hidden="true">
      {grid ? <path class="grid" d={strokes(ticks, (y) => `M${left} ${y}H${right}`)} /> : null}
      <path
        class="axis-line"
        d={`M${left} ${bottom}V${top}${strokes(ticks, (y) => `M${left} ${y}h-5`)}`}
      />
      {ticks.map(({ value, place }) => (
        <text key={value} class="tick-text" x={left - 8} y={place} dy="0.32em" text-anchor="end">
          {write(value)}
        </text>
      ))}
      <text class="axis-text" x={4} y={top - 10 - labelUp}>
        {label}
      </text>
    </g>
  );
}

/** The room that the figures of a vertical axis need to the left of the field. */
export function roomLeft(
  domain: readonly [from: number, to: number],
  { ticks: count = 5, format = trueMinus } = {},
): number {
  const widths = ticks(...domain, count).map((value) => textWidth(format(value)));
  return Math.max(usualMargin.left, Math.ceil(Math.max(0, ...widths)) + 11);
}
