import { circle, line, type Shape } from '../../drawing/shapes.ts';
import type { InnerEdge } from '../../maths/plate/band-openings.ts';
import type { Place } from '../../maths/plate/place.ts';
import { reachOf, type Edge, type Reach } from '../../maths/plate/land-outline.ts';
import { centreOf, fitted, patternOf, type Values } from './compute.ts';
import { openingsOf } from './opening.ts';
import { boreOf, edgesOf, openHoles } from './part.ts';

/** How far a centre line runs beyond its hole, mm (ISO 128-2: beyond the outline of the feature). */
export const BEYOND = 2;

const edgeShape = (edge: Edge, i: number): Shape => {
  const name = `edge-${i + 1}`;
  if (edge.kind === 'line') return line('cut', edge.x1, edge.y1, edge.x2, edge.y2, name);
  const { x, y, radius, from, to } = edge;
  return to - from >= 360
    ? circle('cut', x, y, radius, name)
    : { kind: 'arc', layer: 'cut', x, y, radius, from, to, name };
};

const openingShape = (border: readonly InnerEdge[], i: number): Shape => {
  const name = `opening-${i + 1}`;
  const edges = border.map(({ edge }) => edge);
  const [only] = edges;
  return edges.length === 1 && only!.kind === 'arc'
    ? circle('cut', only!.x, only!.y, only!.radius, name)
    : { kind: 'path', layer: 'cut', edges, name };
};

const cross = ({ x, y }: Place, arm: number): readonly Shape[] => [
  line('centre', x - arm, y, x + arm, y),
  line('centre', x, y - arm, x, y + arm),
];

/** The part as fitted: its edge, its holes and their centre lines, and what it reaches over. */
export function partOf(v: Values): {
  readonly shapes: readonly Shape[];
  readonly reach: Reach;
  readonly places: readonly Place[];
  readonly edges: readonly Edge[];
  readonly openings: readonly (readonly InnerEdge[])[];
} {
  const { places } = fitted(patternOf(v));
  const centre = centreOf(v, places);
  const edges = edgesOf(v, places, centre);
  const openings = openingsOf(v, places, edges);
  const bore = boreOf(v);
  const open = openHoles(v);
  // What lies in the opening is air: its place is shown, and nothing is cut there.
  const rims = places.map(({ x, y }, i) =>
    circle(open.includes(i) ? 'position' : 'cut', x, y, v.hole[i]! / 2, `hole-${i + 1}`),
  );
  const round: Edge[] = places.map(({ x, y }, i) => ({
    kind: 'arc',
    x,
    y,
    radius: v.hole[i]! / 2,
    from: 0,
    to: 360,
    hollow: false,
  }));
  const part = reachOf([...edges, ...round]);
  const { x, y, pitchRadius } = centre;
  // One so flat that it runs far beyond the part shows nothing.
  const most = Math.hypot(part.right - part.left, part.top - part.bottom);
  const circled = v.about !== 'middle' && pitchRadius > 0.1 && pitchRadius < most;
  const pitch: Edge = { kind: 'arc', x, y, radius: pitchRadius, from: 0, to: 360, hollow: false };
  return {
    places,
    edges,
    openings,
    reach: circled ? reachOf([...edges, ...round, pitch]) : part,
    shapes: [
      ...edges.map(edgeShape),
      ...openings.map(openingShape),
      ...rims,
      ...(bore > 0 ? [circle('cut', centre.x, centre.y, bore / 2, 'bore')] : []),
      ...(circled ? [circle('centre', centre.x, centre.y, centre.pitchRadius)] : []),
      ...(v.about === 'circle' && circled ? cross(centre, 4) : []),
      ...places.flatMap((place, i) => cross(place, v.hole[i]! / 2 + BEYOND)),
    ],
  };
}

const circleEdge = ({ x, y }: Place, radius: number): Edge => ({
  kind: 'arc',
  x,
  y,
  radius,
  from: 0,
  to: 360,
  hollow: false,
});

/** The lines of the part that no name may lie on, and those that it had better not. */
export function linesOf(v: Values, { shapes, places, edges, openings }: ReturnType<typeof partOf>) {
  const bore = boreOf(v);
  const centre = shapes.flatMap((shape): Edge[] =>
    shape.layer !== 'centre'
      ? []
      : shape.kind === 'line'
        ? [{ kind: 'line', x1: shape.x1, y1: shape.y1, x2: shape.x2, y2: shape.y2 }]
        : shape.kind === 'circle'
          ? [circleEdge(shape, shape.radius)]
          : [],
  );
  return {
    cut: [
      ...edges,
      ...openings.flat().map(({ edge }) => edge),
      ...places.map((place, i) => circleEdge(place, v.hole[i]! / 2)),
      ...(bore > 0 ? [circleEdge(centreOf(v, places), bore / 2)] : []),
    ],
    centre,
  };
}
