import { area, line } from 'd3-shape';

export type Point = readonly [x: number, y: number];

interface CurveProps {
  /** Points in user units. */
  readonly points: readonly Point[];
  /** Look of the line: `main`, `other` (dashed) or a class of the calculator's own. */
  readonly kind?: string;
}

const path = line<Point>(
  ([x]) => x,
  ([, y]) => y,
);

const rounded = (text: string | null): string =>
  (text ?? '').replaceAll(/-?\d+\.\d+/g, (number) =>
    String(Math.round(Number(number) * 100) / 100),
  );

/** A line through points. */
export function Curve({ points, kind = 'main' }: CurveProps) {
  return <path class={`curve curve-${kind}`} d={rounded(path([...points]))} />;
}

interface BandProps {
  /** Each x with its low and high y, in user units. */
  readonly edges: readonly (readonly [x: number, low: number, high: number])[];
  readonly kind?: string;
}

const between = area<readonly [number, number, number]>()
  .x(([x]) => x)
  .y0(([, low]) => low)
  .y1(([, , high]) => high);

/** A shaded band, such as what a measuring error allows. */
export function Band({ edges, kind = 'error' }: BandProps) {
  return <path class={`band band-${kind}`} d={rounded(between([...edges]))} />;
}
