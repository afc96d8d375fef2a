import { CAPITAL } from '../../drawing/svg-element.ts';
import { line, text, type Shape, type Text } from '../../drawing/shapes.ts';
import type { InnerEdge } from '../../maths/plate/band-openings.ts';
import { lengthOf } from '../../maths/plate/edge-parts.ts';
import type { Edge, Reach } from '../../maths/plate/land-outline.ts';
import { round, textBox } from '../../picture/boxes.ts';
import type { Box } from '../../picture/common/overlap.ts';
import { LETTERING } from '../../picture/label.tsx';
import { bandMark, pointsAlong, type Point } from './band-mark.ts';

/** Height of a capital in the files, mm. */
export const LETTER = 2.4;
/** The room for words is reckoned in the picture’s units: so many make a millimetre of the file. */
export const TO_THE_MM = (LETTERING * CAPITAL) / LETTER;

/** Length of an arrow head and half its width, mm. */
const ARROW = [2.2, 0.45] as const;

/** The line of one arrow, from its tail to the edge that it points at, and its head. */
export function arrow([x1, y1]: Point, [x, y]: Point, name: string): Shape[] {
  const long = Math.hypot(x - x1, y - y1);
  const [ux, uy] = [(x - x1) / long, (y - y1) / long];
  const [back, half] = ARROW;
  return [
    line('dimension', x1, y1, x, y, name),
    ...[half, -half].map((side) =>
      line('dimension', x, y, x - ux * back - uy * side, y - uy * back + ux * side),
    ),
  ];
}

interface Part {
  readonly edges: readonly Edge[];
  readonly openings: readonly (readonly InnerEdge[])[];
  /** The sheet that the words may stand on, mm. */
  readonly sheet: Reach;
  /** Holes with their centre lines: where, and how far they reach, mm. */
  readonly rims: readonly { readonly x: number; readonly y: number; readonly radius: number }[];
  readonly words: readonly Text[];
}

/**
 * The width of the band as a dimension (ISO 129-1: arrows from outside where what they measure is
 * narrow), where there is room for it clear of holes, words and edges; nothing where there is none.
 */
export function bandLettering(
  band: number,
  width: string,
  { edges, openings, sheet, rims, words }: Part,
): readonly Shape[] | undefined {
  const at = (x: number, y: number) => ({ x: x * TO_THE_MM, y: -y * TO_THE_MM });
  const back = ([x, y]: Point): Point => [x / TO_THE_MM, -y / TO_THE_MM];
  const [low, high] = [at(sheet.left, sheet.bottom), at(sheet.right, sheet.top)];
  const marks: Box[] = [
    ...rims.map(({ x, y, radius }) => {
      const on = at(x, y);
      return round(on.x, on.y, radius * TO_THE_MM + 1);
    }),
    ...words.map((each) => {
      const on = at(each.x, each.y);
      return textBox(each.text, on.x, on.y);
    }),
  ];
  const onEdges = [...edges, ...openings.flat().map(({ edge }) => edge)]
    .flatMap((edge) => pointsAlong(edge, lengthOf(edge) * TO_THE_MM))
    .map(([x, y]) => {
      const on = at(x, y);
      return round(on.x, on.y, 4);
    });
  const found = bandMark(openings, band, width, at, {
    sheet: { left: low.x, right: high.x, top: high.y, bottom: low.y },
    taken: [...marks, ...onEdges],
    marks,
  });
  if (!found) return undefined;
  const [x, y] = back([found.at.x, found.at.y]);
  return [
    ...arrow(back(found.outside), back(found.outer), 'band-outer'),
    ...arrow(back(found.within), back(found.inner), 'band-inner'),
    text(x, y, LETTER, width),
  ];
}
