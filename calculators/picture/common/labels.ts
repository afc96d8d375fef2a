import { textWidth } from './text-width.ts';

/** Room of a line of type, from the middle of one to the middle of the next. */
const LINE = 15;

/**
 * Places of labels beside their marks, in the order given: moved apart as little as makes each
 * readable, and kept between `from` and `to` as far as there is room.
 */
export function spreadOut(
  places: readonly number[],
  from: number,
  to: number,
  gap = LINE,
): readonly number[] {
  const order = places.map((place, index) => ({ place, index }));
  order.sort((a, b) => a.place - b.place || a.index - b.index);
  let least = from;
  for (const each of order) {
    each.place = Math.max(each.place, least);
    least = each.place + gap;
  }
  let most = to;
  for (const each of order.toReversed()) {
    each.place = Math.min(each.place, most);
    most = each.place - gap;
  }
  const out = new Array<number>(places.length);
  for (const { place, index } of order) out[index] = place;
  return out;
}

/** The first of the labels wherever two would lie on each other; which these are, by place in the list. */
export function apart(places: readonly number[], gap = LINE): ReadonlySet<number> {
  const kept: number[] = [];
  places.forEach((place, index) => {
    if (kept.every((other) => Math.abs(places[other]! - place) >= gap)) kept.push(index);
  });
  return new Set(kept);
}

export interface RowLabel {
  readonly at: number;
  readonly words: string;
}

interface Group extends RowLabel {
  readonly count: number;
  readonly sum: number;
}

const SPACE = 8;

/**
 * Labels in one row above their marks: those that would run into each other are joined into one,
 * and each is kept between `from` and `to`.
 */
export function inRow(labels: readonly RowLabel[], from: number, to: number): readonly RowLabel[] {
  const place = ({ words, sum, count }: Group): number => {
    const half = textWidth(words) / 2;
    return Math.max(from + half, Math.min(to - half, sum / count));
  };
  const groups: Group[] = [];
  for (const { at, words } of [...labels].sort((a, b) => a.at - b.at)) {
    let group: Group = { at, words, count: 1, sum: at };
    group = { ...group, at: place(group) };
    for (let before = groups.at(-1); before; before = groups.at(-1)) {
      const room = (textWidth(before.words) + textWidth(group.words)) / 2 + SPACE;
      if (group.at - before.at >= room) break;
      groups.pop();
      const both = `${before.words}, ${group.words}`;
      const count = before.count + group.count;
      const joined = {
        words: textWidth(both) > to - from ? `${String(count)} marks` : both,
        count,
        sum: before.sum + group.sum,
      };
      group = { ...joined, at: place({ ...joined, at: 0 }) };
    }
    groups.push(group);
  }
  return groups;
}

interface Cluster {
  readonly members: readonly number[];
  /** Middle of where its members would stand by themselves. */
  readonly middle: number;
}

const TURN = 360;

/**
 * The same round a circle, in degrees: each cluster of labels stands about the middle of its marks.
 * There must be room for all.
 */
export function spreadRound(angles: readonly number[], gap: number): readonly number[] {
  const order = angles.map((angle, index) => ({ angle: ((angle % TURN) + TURN) % TURN, index }));
  order.sort((a, b) => a.angle - b.angle || a.index - b.index);
  const after = (i: number): number =>
    (order[(i + 1) % order.length]!.angle - order[i]!.angle + TURN) % TURN;
  // The round is cut where it is emptiest, and laid out from there.
  const widest = order.reduce(
    (best, _, i) => (after(i) > after(best) ? i : best),
    order.length - 1,
  );
  const start = order[(widest + 1) % order.length]!.angle;
  const fromStart = order.map((_, i) => order[(widest + 1 + i) % order.length]!);
  const clusters: Cluster[] = [];
  for (const { angle, index } of fromStart) {
    let cluster: Cluster = { members: [index], middle: (angle - start + TURN) % TURN };
    for (let before = clusters.at(-1); before; before = clusters.at(-1)) {
      const [a, b] = [before.members.length, cluster.members.length];
      if (cluster.middle - before.middle >= ((a + b) / 2) * gap) break;
      clusters.pop();
      cluster = {
        members: [...before.members, ...cluster.members],
        middle: (before.middle * a + cluster.middle * b) / (a + b),
      };
    }
    clusters.push(cluster);
  }
  const out = new Array<number>(angles.length);
  for (const { members, middle } of clusters) {
    members.forEach((index, i) => {
      out[index] = start + middle + (i - (members.length - 1) / 2) * gap;
    });
  }
  return out;
}
