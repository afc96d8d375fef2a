import type { Shape } from '../../drawing/shapes.ts';
import { inside, textBox } from '../../picture/boxes.ts';
import { overlap, type Box } from '../../picture/common/overlap.ts';
import { textWidth } from '../../picture/common/text-width.ts';
import type { Struck } from './set-labels.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

export interface DiameterLabel extends Point {
  readonly words: string;
  readonly box: Box;
  /** The leader towards the middle: from the end of the line under the figure to the circle. */
  readonly tail: Point;
  readonly tip: Point;
  /** The other end of the line under the figure. */
  readonly shelf: Point;
}

interface Circle {
  readonly radius: number;
  readonly words: string;
}

interface Sheet {
  readonly shapes: readonly Shape[];
  /** Counts the points in a box of all that is drawn but centre lines. */
  readonly struck: Struck;
  /** From mm about the middle to user units. */
  readonly place: (x: number, y: number) => Point;
  readonly rim: number;
  readonly edges: Box;
  /** Names, holes and the handle. */
  readonly taken: readonly Box[];
}

/** Directions in which a leader may lie, degrees: the corners of the stock, and to either side of each. */
const CORNERS = [45, 135, -135, -45] as const;
const FROM_CORNER = [0, 3, -3, 6, -6, 9, -9, 12, -12, 16, -16, 20, -20, 24, -24, 30, -30] as const;
/** How far beyond the rim a figure may stand, mm. */
const BEYOND = [8, 9.5, 11, 12.5, 14, 16, 18, 20, 22, 24];
/** Half of what an arrow head is across, and somewhat over. */
const HEAD = 4;
/** From a leader's end to its figure, up from the line under it, and along a leader, user units. */
const GAP = 3;
const UNDER = 4;
const STEP = 2;
/** How far words and the line under them keep from other lines, user units, and less where need be. */
const CLEAR = [6, 3, 1.5, 0] as const;
const padded = ({ left, right, top, bottom }: Box, by: number): Box => ({
  left: left - by,
  right: right + by,
  top: top - by,
  bottom: bottom + by,
});
/** How far a leader keeps from the ends of a slot, degrees. */
const ASIDE = 8;

/** The same angle, from -180 to 180. */
const nearest = (angle: number): number => ((((angle + 180) % 360) + 360) % 360) - 180;

function crosses(from: Point, to: Point, { left, right, top, bottom }: Box): boolean {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  // Most lie nowhere near it.
  if (Math.max(from.x, to.x) <= left || Math.min(from.x, to.x) >= right) return false;
  if (Math.max(from.y, to.y) <= top || Math.min(from.y, to.y) >= bottom) return false;
  const count = Math.ceil(Math.hypot(dx, dy) / STEP);
  for (let i = 0; i <= count; i += 1) {
    const x = from.x + (dx * i) / count;
    const y = from.y + (dy * i) / count;
    if (x > left && x < right && y > top && y < bottom) return true;
  }
  return false;
}

/**
 * Diameters, each over a line that runs on into a leader that points to the middle (ISO 129-1), where the
 * figure lies on the sheet and on no line but a centre line, and the leader on nothing that is named; none for
 * a circle that has no such place.
 */
export function diameterLabels(circles: readonly Circle[], sheet: Sheet): readonly DiameterLabel[] {
  const { shapes, struck, place, rim, edges } = sheet;
  const slots = shapes.filter((shape) => shape.kind === 'slot');
  /** Whether a leader from the rim to a circle goes over a slot. */
  const overSlot = (angle: number, radius: number): boolean =>
    slots.some(
      (slot) =>
        slot.radius > radius &&
        Math.abs(nearest(angle - (slot.from + slot.to) / 2)) < (slot.to - slot.from) / 2 + ASIDE,
    );
  const labels: DiameterLabel[] = [];
  /** The first of the places that keep the furthest from lines. */
  const placed = ({ radius, words }: Circle, first: number): DiameterLabel | undefined => {
    const wide = textWidth(words);
    const taken = [...sheet.taken, ...labels.map(({ box }) => box)];
    const kept = taken.map((other) => padded(other, HEAD));
    let best: DiameterLabel | undefined;
    /** Which of `CLEAR` a better place must keep, counted from 0. */
    let better = CLEAR.length - 1;
    // Each begins at a corner of its own.
    for (let corner = first; corner < first + CORNERS.length; corner += 1) {
      for (const aside of FROM_CORNER) {
        const angle = CORNERS[corner % CORNERS.length]! + aside;
        if (overSlot(angle, radius)) continue;
        const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
        const tip = place(radius * cos, radius * sin);
        for (const beyond of BEYOND) {
          const tail = place((rim + beyond) * cos, (rim + beyond) * sin);
          const x = tail.x > tip.x ? tail.x + GAP : tail.x - GAP - wide;
          const y = tail.y - UNDER;
          const box = { ...textBox(words, x, y, wide), bottom: tail.y + 1 };
          if (!inside(box, edges) || taken.some((other) => overlap(box, other))) continue;
          if (struck(padded(box, CLEAR[better]!), 1) > 0) continue;
          if (kept.some((other) => crosses(tail, tip, other))) continue;
          const shelf = { x: tail.x > tip.x ? box.right : box.left, y: tail.y };
          best = { words, x, y, box, tail, tip, shelf };
          do better -= 1;
          while (better >= 0 && struck(padded(box, CLEAR[better]!), 1) === 0);
          if (better < 0) return best;
        }
      }
    }
    return best;
  };
  // The longest leader has the fewest places.
  [...circles]
    .sort((a, b) => a.radius - b.radius)
    .forEach((each, i) => {
      const label = placed(each, i);
      if (label) labels.push(label);
    });
  return labels;
}
