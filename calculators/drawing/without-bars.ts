import { wordsWidth } from './holding-words.ts';
import { piecesOf, type Drawing, type Piece } from './shapes.ts';

/** The end of what runs anticlockwise from one direction to another, as no less than where it starts. */
const onwards = (from: number, to: number): number => from + ((((to - from) % 360) + 360) % 360);

/** From the outermost shape to the edge of the sheet, mm. */
const GAP = 1;

type Point = readonly [x: number, y: number];

/** The ends of an arc, and what of it lies furthest along each axis. */
function alongArc(x: number, y: number, radius: number, from: number, to: number): Point[] {
  const furthest: number[] = [];
  for (let turn = 90 * Math.ceil(from / 90); turn < to; turn += 90) furthest.push(turn);
  return [from, ...furthest, to].map((direction): Point => {
    const angle = (direction * Math.PI) / 180;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

/** Points of which the outermost are as far out as the shape is. */
function reachOf(shape: Piece): readonly Point[] {
  switch (shape.kind) {
    case 'line':
      return [
        [shape.x1, shape.y1],
        [shape.x2, shape.y2],
      ];
    case 'circle':
      return alongArc(shape.x, shape.y, shape.radius, 0, 360);
    case 'arc':
      return alongArc(shape.x, shape.y, shape.radius, shape.from, onwards(shape.from, shape.to));
    case 'slot': {
      const { x, y, radius, width, from, to } = shape;
      return alongArc(x, y, radius, from, onwards(from, to)).flatMap(([u, v]): Point[] => [
        [u - width / 2, v - width / 2],
        [u + width / 2, v + width / 2],
      ]);
    }
    case 'text': {
      const long = wordsWidth(shape.text, shape.height);
      const back = { start: 0, middle: long / 2, end: long }[shape.anchor];
      const turn = (shape.turn * Math.PI) / 180;
      const at = (along: number, up: number): Point => [
        shape.x + along * Math.cos(turn) - up * Math.sin(turn),
        shape.y + along * Math.sin(turn) + up * Math.cos(turn),
      ];
      return [0, shape.height].flatMap((up) => [at(-back, up), at(long - back, up)]);
    }
  }
}

/** A drawing without its proving bars and the room they take: each of several sheets has its own. */
export function withoutBars({ title, shapes }: Drawing): Drawing {
  const kept = shapes.filter(({ layer }) => layer !== 'proving');
  const points = piecesOf(kept).flatMap(reachOf);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, bottom] = [Math.min(...xs) - GAP, Math.min(...ys) - GAP];
  return {
    title,
    left,
    bottom,
    width: Math.max(...xs) + GAP - left,
    height: Math.max(...ys) + GAP - bottom,
    shapes: kept,
  };
}
