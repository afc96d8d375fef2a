import type { LinearScale } from './scale.ts';
import { hundredth } from './steps.ts';

interface AxisProps {
  readonly scale: LinearScale;
  /** Where the axis line lies across the other direction. */
  readonly at: number;
  /** Where the grid lines end. */
  readonly gridTo?: number;
  /** Quantity and unit, such as "crank angle, degrees BTDC". */
  readonly label: string;
  readonly ticks?: number;
  readonly format?: (value: number) => string;
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

/** The horizontal axis, below the field. */
export function AxisBottom({ scale, at, gridTo, label, ticks: count = 6, format }: AxisProps) {
  const [from, to] = scale.range;
  const write = format ?? trueMinus;
  const ticks = ticksOf(scale, count);
  return (
    <g class="axis" aria-hidden="true">
      {gridTo === undefined ? null : (
        <path class="grid" d={strokes(ticks, (x) => `M${x} ${at}V${gridTo}`)} />
      )}
      <path class="axis-line" d={`M${from} ${at}H${to}${strokes(ticks, (x) => `M${x} ${at}v5`)}`} />
      {ticks.map(({ value, place }) => (
        <text key={value} class="tick-text" x={place} y={at + 18} text-anchor="middle">
          {write(value)}
        </text>
      ))}
      <text class="axis-text" x={(from + to) / 2} y={at + 35} text-anchor="middle">
        {label}
      </text>
    </g>
  );
}

/** The vertical axis, left of the field; its label stands above it, read without turning the head. */
export function AxisLeft({ scale, at, gridTo, label, ticks: count = 5, format }: AxisProps) {
  const [from, to] = scale.range;
  const write = format ?? trueMinus;
  const top = Math.min(from, to);
  const ticks = ticksOf(scale, count);
  return (
    <g class="axis" aria-hidden="true">
      {gridTo === undefined ? null : (
        <path class="grid" d={strokes(ticks, (y) => `M${at} ${y}H${gridTo}`)} />
      )}
      <path
        class="axis-line"
        d={`M${at} ${from}V${to}${strokes(ticks, (y) => `M${at} ${y}h-5`)}`}
      />
      {ticks.map(({ value, place }) => (
        <text key={value} class="tick-text" x={at - 8} y={place} dy="0.32em" text-anchor="end">
          {write(value)}
        </text>
      ))}
      <text class="axis-text" x={4} y={top - 10}>
        {label}
      </text>
    </g>
  );
}
