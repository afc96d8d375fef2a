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

/** A line through points, of any look. */
export function Line({ points, look }: { readonly points: readonly Point[]; look: string }) {
  return <path class={look} d={path(points as Point[]) ?? ''} />;
}

/** A line through points. */
export const Curve = ({ points, kind = 'main' }: CurveProps) => (
  <Line look={`curve curve-${kind}`} points={points} />
);

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

/** What lies between two lines, of any look. */
export function Patch({ edges, look }: { readonly edges: readonly Edge[]; look: string }) {
  return <path class={look} d={between(edges as Edge[]) ?? ''} />;
}

/** A shaded band, such as what a measuring error allows. */
export const Band = ({ edges, kind = 'error' }: BandProps) => (
  <Patch look={`band band-${kind}`} edges={edges} />
);
