import { wordsWidth } from './holding-words.ts';
import { piecesOf, type Line, type Piece, type Shape, type Text } from './shapes.ts';

/** How far a point lies from a straight line that ends. */
function fromLine({ x1, y1, x2, y2 }: Pick<Line, 'x1' | 'y1' | 'x2' | 'y2'>, x: number, y: number) {
  const [along, up] = [x2 - x1, y2 - y1];
  const long = along ** 2 + up ** 2;
  const part = long === 0 ? 0 : ((x - x1) * along + (y - y1) * up) / long;
  const nearest = Math.min(1, Math.max(0, part));
  return Math.hypot(x - x1 - nearest * along, y - y1 - nearest * up);
}

/** How far it lies from words: 0 within them. */
function fromWords({ x: left, y: foot, height, text, anchor, turn }: Text, x: number, y: number) {
  const long = wordsWidth(text, height);
  const back = { start: 0, middle: long / 2, end: long }[anchor];
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const along = (x - left) * cos + (y - foot) * sin + back;
  const up = (y - foot) * cos - (x - left) * sin;
  const beyond = (place: number, end: number): number => Math.max(-place, place - end, 0);
  return Math.hypot(beyond(along, long), beyond(up, height));
}

/** How far a point lies from what is drawn of a shape, mm; an arc counts as the whole of its circle. */
function distanceTo(shape: Piece, x: number, y: number): number {
  if (shape.kind === 'line') return fromLine(shape, x, y);
  if (shape.kind === 'text') return fromWords(shape, x, y);
  const off = Math.abs(Math.hypot(x - shape.x, y - shape.y) - shape.radius);
  return shape.kind === 'slot' ? Math.max(0, off - shape.width / 2) : off;
}

/** Whether a place is so far from every line and word of a drawing, mm. */
export function isClear(shapes: readonly Shape[], room: number): (x: number, y: number) => boolean {
  const pieces = piecesOf(shapes);
  return (x, y) => pieces.every((piece) => distanceTo(piece, x, y) >= room);
}
