import type { ShapeMark, Sheet } from './marks.ts';
import type { Point } from './paths.ts';

/** What a sheet draws with all of these classes, in the order of drawing. */
export const shapesOf = ({ shapes }: Sheet, ...names: readonly string[]): ShapeMark[] =>
  shapes.filter(({ classes }) => names.every((name) => classes.includes(name)));

/** The last of them: what is drawn in the drawing itself comes after what is enlarged beside it. */
export function shapeOf(sheet: Sheet, ...names: readonly string[]): ShapeMark {
  const found = shapesOf(sheet, ...names).at(-1);
  if (!found) throw new Error(`Nothing is drawn as ${names.join('.')}`);
  return found;
}

export const pointsOf = ({ lines }: ShapeMark): readonly Point[] => lines.flat();

export function boxOf(shape: ShapeMark) {
  const points = pointsOf(shape);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
}

/** Middle of a round part. */
export function middleOf(shape: ShapeMark): Point {
  const { left, right, top, bottom } = boxOf(shape);
  return [(left + right) / 2, (top + bottom) / 2];
}

export const distance = ([x1, y1]: Point, [x2, y2]: Point): number => Math.hypot(x2 - x1, y2 - y1);
