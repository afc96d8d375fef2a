import type { LinearScale } from './scale.ts';

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

/** The horizontal axis, below the field. */
export function AxisBottom({ scale, at, gridTo, label, ticks = 6, format }: AxisProps) {
  const [from, to] = scale.range;
  const write = format ?? trueMinus;
  return (
    <g class="axis" aria-hidden="true">
      <line class="axis-line" x1={from} x2={to} y1={at} y2={at} />
      {scale.ticks(ticks).map((tick) => (
        <g key={tick} transform={`translate(${scale(tick)} 0)`}>
          {gridTo === undefined ? null : <line class="grid" y1={at} y2={gridTo} />}
          <line class="tick" y1={at} y2={at + 5} />
          <text class="tick-text" y={at + 18} text-anchor="middle">
            {write(tick)}
          </text>
        </g>
      ))}
      <text class="axis-text" x={(from + to) / 2} y={at + 35} text-anchor="middle">
        {label}
      </text>
    </g>
  );
}

/** The vertical axis, left of the field; its label stands above it, read without turning the head. */
export function AxisLeft({ scale, at, gridTo, label, ticks = 5, format }: AxisProps) {
  const [from, to] = scale.range;
  const write = format ?? trueMinus;
  const top = Math.min(from, to);
  return (
    <g class="axis" aria-hidden="true">
      <line class="axis-line" x1={at} x2={at} y1={from} y2={to} />
      {scale.ticks(ticks).map((tick) => (
        <g key={tick} transform={`translate(0 ${scale(tick)})`}>
          {gridTo === undefined ? null : <line class="grid" x1={at} x2={gridTo} />}
          <line class="tick" x1={at - 5} x2={at} />
          <text class="tick-text" x={at - 8} dy="0.32em" text-anchor="end">
            {write(tick)}
          </text>
        </g>
      ))}
      <text class="axis-text" x={4} y={top - 10}>
        {label}
      </text>
    </g>
  );
}
