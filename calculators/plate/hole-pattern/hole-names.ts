import { wordsWidth } from '../../drawing/holding-words.ts';
import { crossings } from '../../maths/plate/edge-crossings.ts';
import { comesInto, holds, overlap } from '../../maths/plate/edge-in-box.ts';
import { fromEdge } from '../../maths/plate/from-edge.ts';
import {
  reachOf,
  type Edge,
  type Reach,
  type StraightEdge,
} from '../../maths/plate/land-outline.ts';
import { LETTER } from './band-lettering.ts';

/** A hole and what is written beside it, mm. */
export interface Named {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly words: string;
}

/** Where the name of a hole stands, mm. */
export interface Name {
  /** Where the foot of the first letter is. */
  readonly left: number;
  readonly foot: number;
  readonly wide: number;
  readonly words: string;
  /** From the line under the words to the rim, where they stand further off. */
  readonly leader?: StraightEdge;
  /** The room that the words take, with the line under them. */
  readonly box: Reach;
}

export interface Sheet {
  readonly reach: Reach;
  /** What no name may lie on: edges, openings, rims. */
  readonly cut: readonly Edge[];
  /** Nor on these: centre lines. */
  readonly centre: readonly Edge[];
}

/** What is left clear round words, mm of a sheet whose capitals are `LETTER` high. */
const CLEAR = 0.6;
/** The line under words that a leader points from stands so far below their feet, mm. */
const UNDER = 0.8;
/** A name without a leader stands so far from the rim, and one with a leader so far, mm. */
const BESIDE = 0.9;
const AWAY = [5, 7, 10, 14, 19, 25, 32, 40, 50, 62, 76, 92, 110, 135, 165, 200, 240, 290] as const;
const WAYS = 24;
/** What is added to the sheet at each side where a name finds no room, mm. */
const WIDER = [0, 8, 16, 26, 40, 60, 90] as const;

/** Directions from a hole, from the right of it and above its centre line on. */
const DIRECTIONS = Array.from({ length: WAYS }, (_, i) => ((2 * i + 3) * Math.PI) / WAYS);

/** An edge with what it reaches over, so that most are done with at a glance. */
interface Seen {
  readonly edge: Edge;
  readonly reach: Reach;
}

const seen = (edge: Edge): Seen => ({ edge, reach: reachOf([edge]) });

const among = (edges: readonly Seen[], box: Reach): number =>
  edges.filter(
    ({ edge, reach }) =>
      reach.left <= box.right &&
      reach.right >= box.left &&
      reach.bottom <= box.top &&
      reach.top >= box.bottom &&
      comesInto(edge, box),
  ).length;

/** Whether two edges cross. */
const meets = (a: Edge, b: Edge): boolean =>
  crossings(a, b).some(({ x, y }) => fromEdge(a, x, y) < 1e-7 && fromEdge(b, x, y) < 1e-7);

interface Room {
  readonly reach: Reach;
  readonly cut: readonly Seen[];
  readonly centre: readonly Seen[];
  /** How large letters are, against those on paper. */
  readonly size: number;
}

/** Where the name of a hole stands best; nothing where it finds no room. */
function placed(
  holes: readonly Named[],
  index: number,
  { reach, cut, centre, size }: Room,
  done: readonly Name[],
): Name | undefined {
  const hole = holes[index]!;
  const [letter, clear, under] = [LETTER * size, CLEAR * size, UNDER * size];
  const wide = wordsWidth(hole.words, letter);
  const leaders = done.flatMap(({ leader }) => (leader ? [seen(leader)] : []));
  const boxOf = (left: number, foot: number, below: number): Reach => ({
    left: left - clear,
    right: left + wide + clear,
    bottom: foot - below - clear,
    top: foot + letter + clear,
  });
  const free = (box: Reach): boolean =>
    holds(reach, box) &&
    done.every((other) => !overlap(other.box, box)) &&
    among(leaders, box) === 0 &&
    among(cut, box) === 0 &&
    among(centre, box) === 0;
  /** Whether words stand nearer to their own hole than to any other, from first letter to last. */
  const isIts = ({ left, right, bottom, top }: Reach): boolean =>
    [left, (left + right) / 2, right].every((at) => {
      const off = ({ x, y, radius }: Named): number =>
        Math.hypot(at - x, (bottom + top) / 2 - y) - radius;
      return holes.every((other) => other === hole || off(other) > off(hole) + BESIDE * size);
    });
  let best: { readonly name: Name; readonly cost: number } | undefined;
  const { words } = hole;
  const beside = DIRECTIONS.map((angle): readonly [number, number] => {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const far = hole.radius + BESIDE * size;
    // The corner, or the middle of the side, that looks at the hole stands there.
    const across = Math.abs(cos) < 0.2 ? -wide / 2 : cos > 0 ? clear : -wide - clear;
    const up = Math.abs(sin) < 0.2 ? -letter / 2 : sin > 0 ? clear : -letter - clear;
    return [hole.x + far * cos + across, hole.y + far * sin + up];
  });
  // To the right of its upright centre line, and above the other.
  const within = [hole.x + 2 * clear, hole.y + 2 * clear] as const;
  for (const [left, foot] of [...beside, within]) {
    const box = boxOf(left, foot, 0);
    if (free(box) && isIts(box)) return { left, foot, wide, words, box };
  }
  for (const away of AWAY) {
    const least = 0.2 * away;
    if (best !== undefined && best.cost <= least) break;
    for (const angle of DIRECTIONS) {
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      const [x2, y2] = [hole.x + hole.radius * cos, hole.y + hole.radius * sin];
      const [x1, y1] = [x2 + away * size * cos, y2 + away * size * sin];
      const left = cos >= 0 ? x1 : x1 - wide;
      const foot = y1 + under;
      const box = boxOf(left, foot, under);
      if (!free(box)) continue;
      const leader: StraightEdge = { kind: 'line', x1, y1, x2, y2 };
      if (done.some((other) => comesInto(leader, other.box))) continue;
      const crossed = (line: Seen): boolean => meets(leader, line.edge);
      if (leaders.some(crossed)) continue;
      const name = { left, foot, wide, words, leader, box };
      const cost = least + cut.filter(crossed).length;
      if (best === undefined || cost < best.cost) best = { name, cost };
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
 * rim, the words above a line; leaders do not cross). The sheet is made wider where there is no such
 * place.
 */
export function holeNames(
  holes: readonly Named[],
  sheet: Sheet,
): { readonly names: readonly Name[]; readonly reach: Reach } {
  const lines = { cut: sheet.cut.map(seen), centre: sheet.centre.map(seen), size: 1 };
  let names: Name[] = [];
  let { reach } = sheet;
  for (const by of WIDER) {
    names = [];
    reach = widened(sheet.reach, by);
    for (const index of holes.keys()) {
      const name = placed(holes, index, { ...lines, reach }, names);
      if (!name) break;
      names.push(name);
    }
    if (names.length === holes.length) break;
  }
  return { names, reach };
}

/**
 * The same on a sheet that cannot be made wider, the name of one hole before all others; one that
 * finds no room is left out.
 *
 * @param size How large letters are, against those on paper.
 */
export function namesThatFit(
  holes: readonly Named[],
  sheet: Sheet,
  first: number,
  size: number,
): ReadonlyMap<number, Name> {
  const room = {
    reach: sheet.reach,
    cut: sheet.cut.map(seen),
    centre: sheet.centre.map(seen),
    size,
  };
  const names = new Map<number, Name>();
  for (const index of [first, ...holes.keys()]) {
    if (names.has(index)) continue;
    const name = placed(holes, index, room, [...names.values()]);
    if (name) names.set(index, name);
  }
  return names;
}
