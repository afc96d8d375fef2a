import { outline, polyline, type Edge, type Point } from './path.ts';

export type { Point };

interface CurveProps {
  /** Points in user units. */
  readonly points: readonly Point[];
  /** Look of the line: `main`, `other` (dashed) or a class of the calculator's own. */
  readonly kind?: string;
}

/** A line through points, of any look. */
export function Line({ points, look }: { readonly points: readonly Point[]; look: string }) {
  return <path class={look} d={polyline(points)} />;
}

/** A line through points. */
export const Curve = ({ points, kind = 'main' }: CurveProps) => (
  <Line look={`curve curve-${kind}`} points={points} />
);

interface BandProps {
  /** Each x with its low and high y, in user units. */
  readonly edges: readonly Edge[];
  readonly kind?: string;
}

/** What lies between two lines, of any look. */
export function Patch({ edges, look }: { readonly edges: readonly Edge[]; look: string }) {
  return <path class={look} d={outline(edges)} />;
}

/** A shaded band, such as what a measuring error allows. */
export const Band = ({ edges, kind = 'error' }: BandProps) => (
  <Patch look={`band band-${kind}`} edges={edges} />
);
