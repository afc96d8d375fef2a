import type { InnerEdge } from '../../maths/plate/band-openings.ts';
import { lengthOf, placeAlong } from '../../maths/plate/edge-parts.ts';
import type { Edge } from '../../maths/plate/land-outline.ts';
import { beside, inside, round } from '../../picture/boxes.ts';
import { overlap, type Box } from '../../picture/common/overlap.ts';

export type Point = readonly [x: number, y: number];

/** The dimension of the band, in user units. */
export interface BandMark {
  /** On the outer edge and on the inner one. */
  readonly outer: Point;
  readonly inner: Point;
  /** Where the lines of the two arrows begin, outside the band on either side. */
  readonly outside: Point;
  readonly within: Point;
  readonly words: string;
  readonly at: { readonly x: number; readonly y: number };
}

/** How long the line of the outer arrow is, and how long that of the inner one may be, user units. */
const OUT = 10;
const IN = [12, 24, 38, 54, 72] as const;
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8] as const;

const ALONG = 40;
/** No word slips between two places that lie no further apart, user units. */
const APART = 6;

/**
 * Places along an edge, close enough together that no word slips between.
 *
 * @param long How long the edge is in the picture, user units.
 */
export function pointsAlong(edge: Edge, long = 0): [number, number][] {
  const count = Math.max(ALONG, Math.ceil(long / APART));
  const parts = Array.from({ length: count + 1 }, (_, i) => i / count);
  if (edge.kind === 'line') {
    const { x1, y1, x2, y2 } = edge;
    return parts.map((part) => [x1 + (x2 - x1) * part, y1 + (y2 - y1) * part]);
  }
  const { x, y, radius, from, to } = edge;
  return parts.map((part) => {
    const angle = ((from + (to - from) * part) * Math.PI) / 180;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

interface Room {
  readonly sheet: Box;
  /** What no word may lie on. */
  readonly taken: readonly Box[];
  /** What no arrow may lie on: words and holes. */
  readonly marks: readonly Box[];
}

/** From a place away from another, so far on. */
function onFrom([x, y]: Point, [u, v]: Point, far: number): Point {
  const span = Math.hypot(x - u, y - v);
  return [x + ((x - u) / span) * far, y + ((y - v) / span) * far];
}

/** Boxes along a line, close enough together that no word slips between. */
const boxesAlong = ([x, y]: Point, [u, v]: Point): Box[] =>
  Array.from({ length: 13 }, (_, i) => round(x + ((u - x) * i) / 12, y + ((v - y) * i) / 12, 3.5));

/** The dimension on one place of the inner edge, where there is room. */
function markAt(inner: Point, outer: Point, words: string, room: Room): BandMark | undefined {
  const { sheet, taken, marks } = room;
  const free = (line: readonly Box[]): boolean =>
    line.every((box) => inside(box, sheet) && marks.every((mark) => !overlap(box, mark)));
  const outside = onFrom(outer, inner, OUT);
  const out = boxesAlong(outer, outside);
  if (!free(out)) return undefined;
  for (const far of IN) {
    const within = onFrom(inner, outer, far);
    const line = boxesAlong(inner, within);
    if (!free(line)) return undefined;
    const mark = { x: within[0], y: within[1], radius: 1 };
    const at = beside(mark, words, sheet, [...taken, ...line, ...out]);
    if (at) return { outer, inner, outside, within, words, at };
  }
  return undefined;
}

/** Where the width of the band can be dimensioned: on the longest part of it that has room. */
export function bandMark(
  openings: readonly (readonly InnerEdge[])[],
  band: number,
  words: string,
  at: (x: number, y: number) => { readonly x: number; readonly y: number },
  room: Room,
): BandMark | undefined {
  const along = openings
    .flat()
    .filter(({ land }) => land === undefined)
    .sort((a, b) => lengthOf(b.edge) - lengthOf(a.edge));
  const place = (x: number, y: number): Point => {
    const on = at(x, y);
    return [on.x, on.y];
  };
  for (const { edge } of along) {
    for (const share of SHARES) {
      const here = placeAlong(edge, share);
      const [before, after] = [placeAlong(edge, share - 1e-3), placeAlong(edge, share + 1e-3)];
      const long = Math.hypot(after.x - before.x, after.y - before.y);
      // The opening lies on the left of its edge, and the band on the right.
      const [rx, ry] = [(after.y - before.y) / long, (before.x - after.x) / long];
      const inner = place(here.x, here.y);
      const outer = place(here.x + rx * band, here.y + ry * band);
      const found = markAt(inner, outer, words, room);
      if (found) return found;
    }
  }
  return undefined;
}
