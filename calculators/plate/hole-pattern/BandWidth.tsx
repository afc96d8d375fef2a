import { fixed } from '../../frame/format.ts';
import { toDisplay, type LengthDisplay } from '../../frame/units.ts';
import { hundredth } from '../../maths/numeric/steps.ts';
import type { InnerEdge } from '../../maths/plate/band-openings.ts';
import { lengthOf, placeAlong } from '../../maths/plate/edge-parts.ts';
import { beside, inside, overlap, round, type Box } from '../../picture/boxes.ts';
import { arrowHead } from '../../picture/label.tsx';

type Point = readonly [x: number, y: number];

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

/** How long the lines of the arrows are, user units. */
const LINE = 14;
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8] as const;

interface Room {
  readonly sheet: Box;
  /** What no word may lie on. */
  readonly taken: readonly Box[];
  /** What no arrow may lie on: words and holes. */
  readonly marks: readonly Box[];
}

/** Where the width of the band can be dimensioned: on the longest part of it that has room. */
export function bandMark(
  openings: readonly (readonly InnerEdge[])[],
  band: number,
  lengths: LengthDisplay,
  at: (x: number, y: number) => { readonly x: number; readonly y: number },
  { sheet, taken, marks }: Room,
): BandMark | undefined {
  const words = `band ${fixed(toDisplay(band, 'mm', lengths), lengths === 'in' ? 3 : 2)}`;
  const along = openings
    .flat()
    .filter(({ land }) => land === undefined)
    .sort((a, b) => lengthOf(b.edge) - lengthOf(a.edge));
  for (const { edge } of along) {
    for (const share of SHARES) {
      const here = placeAlong(edge, share);
      const [before, after] = [placeAlong(edge, share - 1e-3), placeAlong(edge, share + 1e-3)];
      const long = Math.hypot(after.x - before.x, after.y - before.y);
      // The opening lies on the left of its edge, and the band on the right.
      const [rx, ry] = [(after.y - before.y) / long, (before.x - after.x) / long];
      const [inner, outer] = [at(here.x, here.y), at(here.x + rx * band, here.y + ry * band)];
      const ends = ([to, from, way]: readonly [Point, Point, number]): Point => {
        const span = Math.hypot(from[0] - to[0], from[1] - to[1]);
        const step = way / span;
        return [to[0] + (to[0] - from[0]) * step, to[1] + (to[1] - from[1]) * step];
      };
      const [i, o]: readonly [Point, Point] = [
        [inner.x, inner.y],
        [outer.x, outer.y],
      ];
      const within = ends([i, o, LINE]);
      const outside = ends([o, i, LINE]);
      const line = [0, 0.25, 0.5, 0.75, 1].flatMap((part) =>
        (
          [
            [i, within],
            [o, outside],
          ] as const
        ).map(([a, b]) => round(a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part, 3)),
      );
      if (line.some((box) => !inside(box, sheet) || marks.some((mark) => overlap(box, mark)))) {
        continue;
      }
      const found = [within, outside]
        .map(([x, y]) => beside({ x, y, radius: 0 }, words, sheet, [...taken, ...line]))
        .find((place) => place !== undefined);
      if (found) return { outer: o, inner: i, outside, within, words, at: found };
    }
  }
  return undefined;
}

const write = ([x, y]: Point): string => `${hundredth(x)} ${hundredth(y)}`;

/** The dimension of the band (ISO 129-1): arrows from outside, since the band is narrow. */
export const BandWidth = ({ outer, inner, outside, within, words, at }: BandMark) => (
  <g>
    <path
      class="size-line"
      d={`M${write(outside)}L${write(outer)}M${write(within)}L${write(inner)}`}
    />
    <path class="size-head" d={`${arrowHead(outside, outer)}${arrowHead(within, inner)}`} />
    <text x={hundredth(at.x)} y={hundredth(at.y)}>
      {words}
    </text>
  </g>
);
