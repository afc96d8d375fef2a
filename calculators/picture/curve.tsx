import { area, line } from 'd3-shape';

export type Point = readonly [x: number, y: number];

interface CurveProps {
  /** Points in user units. */
  readonly points: readonly Point[];
  /** Look of the line: `main`, `other` (dashed) or a class of the calculator's own. */
  readonly kind?: string;
}

/** Tenths of a user unit: a fifth of a dot on a phone's screen, 0.05 mm on paper. */
const DIGITS = 1;

const path = line<Point>(
  ([x]) => x,
  ([, y]) => y,
).digits(DIGITS);

/** A line through points. */
export function Curve({ points, kind = 'main' }: CurveProps) {
  return <path class={`curve curve-${kind}`} d={path(points as Point[]) ?? ''} />;
}

type Edge = readonly [x: number, low: number, high: number];

interface BandProps {
  /** Each x with its low and high y, in user units. */
  readonly edges: readonly Edge[];
  readonly kind?: string;
}

const between = area<Edge>()
  .x(([x]) => x)
  .y0(([, low]) => low)
  .y1(([, , high]) => high)
  .digits(DIGITS);

/** A shaded band, such as what a measuring error allows. */
export function Band({ edges, kind = 'error' }: BandProps) {
  return <path class={`band band-${kind}`} d={between(edges as Edge[]) ?? ''} />;
}
