import type { Edge } from '../maths/plate/land-outline.ts';
import { wordsWidth } from './holding-words.ts';
import type { Shape, Slot, Text } from './shapes.ts';

/** The end of what runs anticlockwise from one direction to another, as no less than where it starts. */
const onwards = (from: number, to: number): number => from + ((((to - from) % 360) + 360) % 360);

const arc = (x: number, y: number, radius: number, from = 0, to = 360): Edge => ({
  kind: 'arc',
  x,
  y,
  radius,
  from,
  to,
  hollow: false,
});

/** Its two sides, and a circle at either end. */
function slotEdges({ x, y, radius, width, from, to }: Slot): readonly Edge[] {
  const half = width / 2;
  const end = onwards(from, to);
  return [
    ...[radius - half, radius + half].map((side) => arc(x, y, side, from, end)),
    ...[from, end].map((direction) => {
      const angle = (direction * Math.PI) / 180;
      return arc(x + radius * Math.cos(angle), y + radius * Math.sin(angle), half);
    }),
  ];
}

/** The box that holds words. */
function boxEdges({ x, y, height, text, anchor, turn }: Text): readonly Edge[] {
  const long = wordsWidth(text, height);
  const back = { start: 0, middle: long / 2, end: long }[anchor];
  const angle = (turn * Math.PI) / 180;
  const corners = [
    [-back, 0],
    [long - back, 0],
    [long - back, height],
    [-back, height],
  ].map(([along, up]) => ({
    x: x + along! * Math.cos(angle) - up! * Math.sin(angle),
    y: y + along! * Math.sin(angle) + up! * Math.cos(angle),
  }));
  return corners.map((corner, i): Edge => {
    const next = corners[(i + 1) % corners.length]!;
    return { kind: 'line', x1: corner.x, y1: corner.y, x2: next.x, y2: next.y };
  });
}

/** A shape as the edges that it is drawn of; of words the edges of their box. */
export function edgesOf(shape: Shape): readonly Edge[] {
  switch (shape.kind) {
    case 'line': {
      const { x1, y1, x2, y2 } = shape;
      return [{ kind: 'line', x1, y1, x2, y2 }];
    }
    case 'circle':
      return [arc(shape.x, shape.y, shape.radius)];
    case 'arc':
      return [arc(shape.x, shape.y, shape.radius, shape.from, onwards(shape.from, shape.to))];
    case 'slot':
      return slotEdges(shape);
    case 'path':
      return shape.edges;
    case 'text':
      return boxEdges(shape);
  }
}
