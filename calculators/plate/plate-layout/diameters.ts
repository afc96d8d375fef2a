import type { Shape } from '../../drawing/shapes.ts';
import { inside, overlap, textBox, type Box } from '../../picture/boxes.ts';
import { textWidth } from '../../picture/text-width.ts';
import { pointsOf } from './set-labels.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

export interface DiameterLabel extends Point {
  readonly words: string;
  readonly box: Box;
  /** The leader towards the middle: from the figure to the circle. */
  readonly tail: Point;
  readonly tip: Point;
}

interface Circle {
  readonly radius: number;
  readonly words: string;
}

interface Sheet {
  readonly shapes: readonly Shape[];
  /** From mm about the middle to user units. */
  readonly place: (x: number, y: number) => Point;
  readonly rim: number;
  readonly edges: Box;
  /** Names, holes and the handle. */
  readonly taken: readonly Box[];
}

/** Directions in which a leader may lie, degrees: the corners of the stock first. */
const DIRECTIONS = [45, 135, -45, -135].flatMap((corner) =>
  [0, 6, -6, 12, -12, 18, -18, 24, -24].map((aside) => corner + aside),
);
/** How far beyond the rim a figure may stand, mm. */
const BEYOND = [8, 11, 14, 17, 20, 24];
/** Half of what an arrow head is across, and somewhat over. */
const HEAD = 4;
const wider = ({ left, right, top, bottom }: Box): Box => ({
  left: left - HEAD,
  right: right + HEAD,
  top: top - HEAD,
  bottom: bottom + HEAD,
});
/** From a leader's end to its figure, and from one point of it to the next, user units. */
const GAP = 3;
const STEP = 2;

/**
 * Diameters, each at the outer end of a leader that points to the middle (ISO 129-1), where the figure
 * lies on the sheet and on no line but a centre line, and the leader on nothing that is named; none for
 * a circle that has no such place.
 */
export function diameterLabels(circles: readonly Circle[], sheet: Sheet): readonly DiameterLabel[] {
  const { shapes, place, rim, edges } = sheet;
  const at = (angle: number, radius: number): Point => {
    const turn = (angle * Math.PI) / 180;
    return place(radius * Math.cos(turn), radius * Math.sin(turn));
  };
  const drawn = shapes
    .filter(({ layer }) => layer !== 'centre')
    .flatMap(pointsOf)
    .map(({ x, y }) => place(x, y));
  const within = ({ left, right, top, bottom }: Box, { x, y }: Point): boolean =>
    x > left && x < right && y > top && y < bottom;
  const labels: DiameterLabel[] = [];
  for (const { radius, words } of circles) {
    const taken = [...sheet.taken, ...labels.map(({ box }) => box)];
    let best: { readonly label: DiameterLabel; readonly crossed: number } | undefined;
    for (const angle of DIRECTIONS) {
      for (const beyond of BEYOND) {
        const tail = at(angle, rim + beyond);
        const tip = at(angle, radius);
        const right = Math.cos((angle * Math.PI) / 180) > 0;
        const x = right ? tail.x + GAP : tail.x - GAP - textWidth(words);
        const box = textBox(words, x, tail.y + 4);
        if (!inside(box, edges) || taken.some((other) => overlap(box, other))) continue;
        if (drawn.some((point) => within(box, point))) continue;
        const count = Math.ceil(Math.hypot(tip.x - tail.x, tip.y - tail.y) / STEP);
        const leader = Array.from({ length: count + 1 }, (_, i) => ({
          x: tail.x + ((tip.x - tail.x) * i) / count,
          y: tail.y + ((tip.y - tail.y) * i) / count,
        }));
        if (taken.some((other) => leader.some((point) => within(wider(other), point)))) continue;
        const crossed = leader.filter((point) =>
          drawn.some((line) => Math.hypot(line.x - point.x, line.y - point.y) < STEP),
        ).length;
        if (best === undefined || crossed < best.crossed)
          best = { label: { words, x, y: tail.y + 4, box, tail, tip }, crossed };
        break;
      }
    }
    if (best) labels.push(best.label);
  }
  return labels;
}
