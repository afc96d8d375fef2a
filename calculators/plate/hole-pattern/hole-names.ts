import { wordsWidth } from '../../drawing/holding-words.ts';
import { line, text, type Shape, type Text } from '../../drawing/shapes.ts';
import { crossings } from '../../maths/plate/edge-crossings.ts';
import { comesInto, holds, overlap } from '../../maths/plate/edge-in-box.ts';
import { fromEdge } from '../../maths/plate/from-edge.ts';
import type { Edge, Reach } from '../../maths/plate/land-outline.ts';
import { arrow, LETTER } from './band-lettering.ts';

/** A hole and what is written beside it, mm. */
export interface Named {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly words: string;
}

export interface Name {
  readonly text: Text;
  /** The leader and the line under the words, where they stand further off. */
  readonly leader: readonly Shape[];
  /** Where the leader runs, for what else looks for room. */
  readonly way: readonly Edge[];
  /** The room that the words take, with the line under them. */
  readonly box: Reach;
}

export interface Sheet {
  readonly reach: Reach;
  /** What no name may lie on: edges, openings, rims. */
  readonly cut: readonly Edge[];
  /** What a name had better not lie on: centre lines. */
  readonly centre: readonly Edge[];
}

/** What is left clear round words, mm. */
const CLEAR = 0.6;
/** The line under words that a leader points from stands so far below their feet, mm. */
const UNDER = 0.8;
/** A name without a leader stands so far from the rim, and one with a leader so far, mm. */
const BESIDE = 0.9;
const AWAY = [5, 7, 10, 14, 19, 25, 32, 40, 50, 62, 76, 92, 110, 135, 165, 200, 240, 290] as const;
const WAYS = 24;
/** What a leader costs, against 2 for each centre line that a name lies on. */
const LED = 5;
/** What is added to the sheet at each side where a name finds no room, mm. */
const WIDER = [0, 8, 16, 26, 40, 60, 90] as const;

const boxOf = (left: number, foot: number, wide: number, below: number): Reach => ({
  left: left - CLEAR,
  right: left + wide + CLEAR,
  bottom: foot - below - CLEAR,
  top: foot + LETTER + CLEAR,
});

const straight = (x1: number, y1: number, x2: number, y2: number): Edge => ({
  kind: 'line',
  x1,
  y1,
  x2,
  y2,
});

const among = (edges: readonly Edge[], box: Reach): number =>
  edges.filter((edge) => comesInto(edge, box)).length;

/** Where a name starts right beside its hole, in the direction given. */
function close(hole: Named, wide: number, angle: number): readonly [left: number, foot: number] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const far = hole.radius + BESIDE;
  const [x, y] = [hole.x + far * cos, hole.y + far * sin];
  // The corner, or the middle of the side, that looks at the hole stands there.
  const across = Math.abs(cos) < 0.2 ? -wide / 2 : cos > 0 ? CLEAR : -wide - CLEAR;
  const up = Math.abs(sin) < 0.2 ? -LETTER / 2 : sin > 0 ? CLEAR : -LETTER - CLEAR;
  return [x + across, y + up];
}

/** Whether two edges cross. */
const meets = (a: Edge, b: Edge): boolean =>
  crossings(a, b).some(({ x, y }) => fromEdge(a, x, y) < 1e-7 && fromEdge(b, x, y) < 1e-7);

/** Directions from a hole, from the right of it and above its centre line on. */
const DIRECTIONS = Array.from({ length: WAYS }, (_, i) => ((2 * i + 3) * Math.PI) / WAYS);

/** Where the name of a hole stands best; nothing where it finds no room. */
function placed(
  holes: readonly Named[],
  index: number,
  sheet: Sheet,
  done: readonly Name[],
): Name | undefined {
  const hole = holes[index]!;
  const wide = wordsWidth(hole.words, LETTER);
  const free = (box: Reach): boolean =>
    holds(sheet.reach, box) &&
    done.every((other) => !overlap(other.box, box) && among(other.way, box) === 0) &&
    among(sheet.cut, box) === 0;
  let best: { readonly name: Name; readonly cost: number } | undefined;
  const offer = (cost: number, name: Name): void => {
    if (best === undefined || cost < best.cost) best = { name, cost };
  };
  const inAnother = ({ left, right, bottom, top }: Reach): boolean =>
    holes.some(
      ({ x, y, radius }, other) =>
        other !== index && Math.hypot((left + right) / 2 - x, (bottom + top) / 2 - y) < radius,
    );
  const beside = DIRECTIONS.map((angle) => close(hole, wide, angle));
  const within = [hole.x - wide / 2, hole.y + 2 * CLEAR] as const;
  for (const [i, [left, foot]] of [...beside, within].entries()) {
    const box = boxOf(left, foot, wide, 0);
    if (!free(box) || inAnother(box)) continue;
    const name = { text: text(left, foot, LETTER, hole.words), leader: [], way: [], box };
    offer(0.01 * i + 2 * among(sheet.centre, box), name);
  }
  for (const away of AWAY) {
    const least = LED + 0.2 * away;
    if (best !== undefined && best.cost <= least) break;
    for (const angle of DIRECTIONS) {
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      const tip = [hole.x + hole.radius * cos, hole.y + hole.radius * sin] as const;
      const tail = [tip[0] + away * cos, tip[1] + away * sin] as const;
      const left = cos >= 0 ? tail[0] : tail[0] - wide;
      const foot = tail[1] + UNDER;
      const box = boxOf(left, foot, wide, UNDER);
      const way = [straight(...tail, ...tip)];
      if (!free(box) || done.some((other) => among(way, other.box) > 0)) continue;
      const crossed = [...sheet.cut, ...done.flatMap((other) => other.way)].filter((edge) =>
        meets(way[0]!, edge),
      ).length;
      offer(least + crossed + among(sheet.centre, box), {
        text: text(left, foot, LETTER, hole.words),
        leader: [
          ...arrow(tail, tip, `leader-${index + 1}`),
          line('dimension', left, tail[1], left + wide, tail[1]),
        ],
        way,
        box,
      });
    }
  }
  return best?.name;
}

const widened = ({ left, right, bottom, top }: Reach, by: number): Reach => ({
  left: left - by,
  right: right + by,
  bottom: bottom - by,
  top: top + by,
});

/**
 * A place for the name of each hole, clear of the edges of the part, of other names and of the border
 * of the sheet: beside its hole, or at the end of a leader (ISO 129-1: an arrow that points at the
 * rim, the words above a line). The sheet is made wider where there is no such place.
 */
export function holeNames(
  holes: readonly Named[],
  sheet: Sheet,
): { readonly names: readonly Name[]; readonly reach: Reach } {
  let names: Name[] = [];
  let { reach } = sheet;
  for (const by of WIDER) {
    names = [];
    reach = widened(sheet.reach, by);
    for (const index of holes.keys()) {
      const name = placed(holes, index, { ...sheet, reach }, names);
      if (!name) break;
      names.push(name);
    }
    if (names.length === holes.length) break;
  }
  return { names, reach };
}
