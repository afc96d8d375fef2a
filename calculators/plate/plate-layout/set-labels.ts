import { lengthOf, placeAlong } from '../../maths/plate/edge-parts.ts';
import { slotOutline, type Shape } from '../../drawing/shapes.ts';
import { inside, round, textBox } from '../../picture/boxes.ts';
import { overlap, type Box } from '../../picture/common/overlap.ts';
import { textWidth } from '../../picture/common/text-width.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Distance between points by which a line is felt, mm. */
const STEP = 1;

const along = (length: number, at: (share: number) => Point): Point[] => {
  const count = Math.max(1, Math.ceil(length / STEP));
  return Array.from({ length: count + 1 }, (_, i) => at(i / count));
};

const arc = (x: number, y: number, radius: number, from: number, to: number): Point[] =>
  along((Math.abs(to - from) * Math.PI * radius) / 180, (share) => {
    const angle = ((from + (to - from) * share) * Math.PI) / 180;
    return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
  });

/** Points along all that is drawn of a shape but lettering, mm. */
export function pointsOf(shape: Shape): readonly Point[] {
  switch (shape.kind) {
    case 'line': {
      const { x1, y1, x2, y2 } = shape;
      return along(Math.hypot(x2 - x1, y2 - y1), (share) => ({
        x: x1 + (x2 - x1) * share,
        y: y1 + (y2 - y1) * share,
      }));
    }
    case 'circle':
      return arc(shape.x, shape.y, shape.radius, 0, 360);
    case 'arc':
      return arc(shape.x, shape.y, shape.radius, shape.from, shape.to);
    case 'slot':
      return slotOutline(shape).flatMap(pointsOf);
    case 'path':
      return shape.edges.flatMap((edge) =>
        along(lengthOf(edge), (share) => placeAlong(edge, share)),
      );
    case 'text':
      return [];
  }
}

/** Counts the points in a box, and none beyond so many where no more matter. */
export type Struck = (box: Box, most?: number) => number;

/** Height of the rows by which points are found, user units. */
const ROW = 8;
const rowOf = (y: number): number => Math.max(0, Math.floor(y / ROW));

/** The same of the given points: each drag asks it of hundreds of places. */
export function struckOf(points: readonly Point[]): Struck {
  const rows: Point[][] = [];
  for (const point of points) (rows[rowOf(point.y)] ??= []).push(point);
  return ({ left, right, top, bottom }, most = Infinity) => {
    let found = 0;
    for (let row = rowOf(top); row <= rowOf(bottom); row += 1) {
      for (const { x, y } of rows[row] ?? []) {
        if (x > left && x < right && y > top && y < bottom) found += 1;
        if (found >= most) return found;
      }
    }
    return found;
  };
}

/** The same of what two of them count. */
const both =
  (one: Struck, other: Struck): Struck =>
  (box, most = Infinity) => {
    const found = one(box, most);
    return found >= most ? found : found + other(box, most - found);
  };

/** What is felt of some shapes: all their lines, and those that are no centre lines. */
export interface Felt {
  readonly all: Struck;
  readonly edges: Struck;
}

/** @param place From the shapes' mm to where they are felt. */
export function feltOf(shapes: readonly Shape[], place: (x: number, y: number) => Point): Felt {
  const placed = (some: readonly Shape[]): readonly Point[] =>
    some.flatMap(pointsOf).map(({ x, y }) => place(x, y));
  const edges = struckOf(placed(shapes.filter(({ layer }) => layer !== 'centre')));
  const centres = struckOf(placed(shapes.filter(({ layer }) => layer === 'centre')));
  return { all: both(edges, centres), edges };
}

export const feltTogether = (one: Felt, other: Felt): Felt => ({
  all: both(one.all, other.all),
  edges: both(one.edges, other.edges),
});

/** How much worse an edge under a name is than a centre line, and how near it may come, user units. */
const EDGE = 100;
const CLEAR = 1;

/** What a name strikes of all lines, and above all of those that are no centre lines. */
export const strikesOf =
  ({ all, edges }: Felt): Struck =>
  (box, most = Infinity) => {
    const { left, right, top, bottom } = box;
    const found = all(box, most);
    if (found >= most) return found;
    const near = {
      left: left - CLEAR,
      right: right + CLEAR,
      top: top - CLEAR,
      bottom: bottom + CLEAR,
    };
    return found + EDGE * edges(near, 1);
  };

/** How far beyond the rim a name may stand, mm: outside of the stock first, then on the plate. */
const OUTSIDE = [4, 6, 8, 10, 12, 14, 16] as const;
const ON_PLATE = [-5, -7, -9, -12, -15, -18, -21, -24, -28, -32, -36, -40] as const;
/** How far to one side of its set's line, user units: near it, or further off where need be. */
const NEAR = [0, 8, -8, 14, -14, 20, -20] as const;
const FAR = [26, -26, 34, -34] as const;

const PLACES = [
  ...OUTSIDE.flatMap((beyond) => [...NEAR, ...FAR].map((aside) => ({ beyond, aside }))),
  ...ON_PLATE.flatMap((beyond) => NEAR.map((aside) => ({ beyond, aside }))),
  ...ON_PLATE.flatMap((beyond) => FAR.map((aside) => ({ beyond, aside }))),
];

export interface SetLabel extends Point {
  readonly words: string;
  readonly box: Box;
}

/** How far beside it no hole's name stands: “set 4 4-1” would be read as one, user units. */
const APART = 10;

/** The room that a set's name keeps free of the names of holes. */
export const roomOf = ({ box }: SetLabel): Box => ({
  ...box,
  left: box.left - APART,
  right: box.right + APART,
});

/** Room round a hole for its own name, user units. */
const NAMED = 26;

/** A hole, or the handle on it, user units. */
interface Round extends Point {
  readonly radius: number;
}

/**
 * Names of the sets at the ends of their lines, each where it lies on the sheet, on no other and on no
 * hole, and on the fewest lines of the drawing (`struck`); away from holes, which bear names of their
 * own, where all have such a place. None for a set that has no place at all.
 */
export function setLabels(
  struck: Struck,
  place: (x: number, y: number) => Point,
  directions: readonly number[],
  rim: number,
  sheet: Box,
  holes: readonly Round[],
): readonly SetLabel[] {
  const beside = (room: number): readonly SetLabel[] => {
    const taken = holes.map(({ x, y, radius }) => round(x, y, radius + room));
    return labelsClear(struck, place, directions, rim, sheet, taken);
  };
  const away = beside(NAMED);
  return away.length === directions.length ? away : beside(0);
}

function labelsClear(
  struck: Struck,
  place: (x: number, y: number) => Point,
  directions: readonly number[],
  rim: number,
  sheet: Box,
  taken: readonly Box[],
): readonly SetLabel[] {
  const labels: SetLabel[] = [];
  directions.forEach((direction, s) => {
    const words = `set ${String(s + 1)}`;
    const wide = textWidth(words);
    const [cos, sin] = [Math.cos, Math.sin].map((f) => f((direction * Math.PI) / 180)) as [
      number,
      number,
    ];
    const others = [...taken, ...labels.map((label) => label.box)];
    let best: { readonly label: SetLabel; readonly strikes: number } | undefined;
    for (const { beyond, aside } of PLACES) {
      if (best?.strikes === 0) break;
      // Beyond the middle it would stand on the other side.
      if (rim + beyond <= 0) continue;
      const end = place((rim + beyond) * cos, (rim + beyond) * sin);
      const x = end.x - sin * aside - wide / 2;
      const y = end.y - cos * aside + 4;
      const box = textBox(words, x, y, wide);
      if (!inside(box, sheet) || others.some((other) => overlap(box, other))) continue;
      const strikes = struck(box, best?.strikes);
      if (best === undefined || strikes < best.strikes)
        best = { label: { words, x, y, box }, strikes };
    }
    if (best) labels.push(best.label);
  });
  return labels;
}
