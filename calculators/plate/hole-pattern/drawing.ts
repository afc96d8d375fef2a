import { holdingWords, wordsWidth } from '../../drawing/holding-words.ts';
import { barRoom, provingBars } from '../../drawing/proving-bar.ts';
import { circle, line, text, type Drawing, type Shape } from '../../drawing/shapes.ts';
import { showInput } from '../../frame/text/format.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import type { InnerEdge } from '../../maths/plate/band-openings.ts';
import type { Place } from '../../maths/plate/place.ts';
import { reachOf, type Edge, type Reach } from '../../maths/plate/land-outline.ts';
import { centreOf, fitted, patternOf, type Values } from './compute.ts';
import { arrow, bandLettering, LETTER } from './band-lettering.ts';
import { pointsAlong } from './band-mark.ts';
import { holeNames, type Name } from './hole-names.ts';
import { openingsOf } from './opening.ts';
import { boreOf, edgesOf, openHoles } from './part.ts';

/** Diameters are lettered in millimetres as they were given, and in inches to a thou. */
const FINE = 0.1;
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

/** Room round the part for the bars and the lettering, mm. */
const GAP = 8;

const titleOf = (holes: number): string =>
  `Pattern of ${holes} holes, seen from the side that was measured`;

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

/** A leader with its arrow, and the line under the words. */
const leaderShapes = ({ leader, left, wide }: Name, i: number): readonly Shape[] =>
  leader === undefined
    ? []
    : [
        ...arrow([leader.x1, leader.y1], [leader.x2, leader.y2], `leader-${i + 1}`),
        line('dimension', left, leader.y1, left + wide, leader.y1),
      ];

/** The width of the band keeps so far off leaders, mm. */
const CLEAR_OF_LEADERS = 0.4;
/** Room for a line of notes, mm. */
const NOTE = 5;

/**
 * The part at true scale, each hole with its number and diameter and a band with its width, and
 * nothing round it. Where the part has no room for that width it stands in a note below.
 */
export function barePattern(v: Values, lengths: LengthDisplay = 'mm'): Drawing {
  const part = partOf(v);
  const { reach, places, edges, openings } = part;
  const { names, reach: sheet } = holeNames(
    places.map(({ x, y }, i) => ({
      x,
      y,
      radius: v.hole[i]! / 2,
      words: `${i + 1}: ${showInput(v.hole[i]!, 'mm', lengths, FINE)}`,
    })),
    {
      reach: {
        left: reach.left - GAP,
        bottom: reach.bottom - GAP,
        right: reach.right + GAP,
        top: reach.top + GAP,
      },
      ...linesOf(v, part),
    },
  );
  const words = names.map((name) => text(name.left, name.foot, LETTER, name.words));
  const shapes = [...part.shapes, ...names.flatMap(leaderShapes), ...words];
  const { left, right, bottom, top } = sheet;
  const bare = { title: titleOf(places.length), left, height: top - bottom };
  const [band] = v.band === undefined || openings.length === 0 ? [] : [v.band];
  if (band === undefined) {
    return { ...bare, bottom, width: right - left, shapes };
  }
  const width = showInput(band, 'mm', lengths, FINE);
  const lettered = bandLettering(band, `band ${width}`, {
    edges,
    openings,
    sheet,
    rims: [
      ...places.map(({ x, y }, i) => ({ x, y, radius: v.hole[i]! / 2 + BEYOND })),
      ...names.flatMap(({ leader }) =>
        leader === undefined
          ? []
          : pointsAlong(leader).map(([x, y]) => ({ x, y, radius: CLEAR_OF_LEADERS })),
      ),
    ],
    words,
  });
  if (lettered) {
    return { ...bare, bottom, width: right - left, shapes: [...shapes, ...lettered] };
  }
  const note = `Band: ${width} from its outer edge to its inner one.`;
  return {
    ...bare,
    bottom: bottom - NOTE,
    width: Math.max(right - left, wordsWidth(note, LETTER) + 2),
    height: bare.height + NOTE,
    shapes: [...shapes, text(left + 1, bottom - NOTE + 1.5, LETTER, note)],
  };
}

/** The same with its title, and the bars that prove the scale. */
export function patternDrawing(v: Values, lengths: LengthDisplay = 'mm'): Drawing {
  const bare = barePattern(v, lengths);
  const room = barRoom(lengths);
  const { title, left } = bare;
  const bar = bare.bottom - 1;
  const right = Math.max(left + bare.width, left + room.across + 1);
  const top = Math.max(bare.bottom + bare.height, bar + room.up) + 6;
  return holdingWords({
    title,
    left: left - 4 - room.side,
    bottom: bar - room.foot,
    width: right - left + 4 + room.side,
    height: top - bar + room.foot,
    shapes: [...bare.shapes, ...provingBars(left - 2, bar, lengths), text(left, top - 4, 3, title)],
  });
}
