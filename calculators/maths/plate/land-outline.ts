import { MathsError } from '../numeric/errors.ts';
import { findRoot } from '../numeric/find-root.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { crossingOf, type Crossing } from './outline-crossing.ts';

/** A round land: where, and how far from there its edge runs, mm. */
export interface Land {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

export interface StraightEdge {
  readonly kind: 'line';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** A round edge, anticlockwise in degrees; `hollow` bends inwards. */
export interface RoundEdge {
  readonly kind: 'arc';
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
  readonly hollow: boolean;
}

export type Edge = StraightEdge | RoundEdge;

const DEGREES = 180 / Math.PI;
/** Lines that touch a land closer than this touch it, mm. */
const TOUCH = 1e-9;

/** A straight line along two lands that leaves all the others on its left. */
interface Rope {
  readonly from: number;
  readonly to: number;
  /** Direction from a land's middle to where the line touches it, radians. */
  readonly normal: number;
  readonly length: number;
}

function ropes(lands: readonly Land[]): Rope[] {
  const found: Rope[] = [];
  lands.forEach((a, from) => {
    lands.forEach((b, to) => {
      const apart = Math.hypot(b.x - a.x, b.y - a.y);
      if (from === to || apart <= Math.abs(a.radius - b.radius) + TOUCH) return;
      const way = Math.atan2(b.y - a.y, b.x - a.x);
      const normal = way - Math.acos((a.radius - b.radius) / apart);
      const [cos, sin] = [Math.cos(normal), Math.sin(normal)];
      const level = (land: Land): number => cos * land.x + sin * land.y + land.radius;
      if (lands.some((land) => level(land) > level(a) + TOUCH * (1 + apart))) return;
      found.push({ from, to, normal, length: Math.sqrt(apart ** 2 - (a.radius - b.radius) ** 2) });
    });
  });
  // Three lands along one line: only the whole of it is an edge.
  const longest = found.filter(({ normal, length }) =>
    found.every(
      (other) =>
        Math.abs(Math.sin((other.normal - normal) / 2)) > 1e-7 || other.length <= length + TOUCH,
    ),
  );
  const first = longest[0];
  if (!first) return [];
  return longest.sort((a, b) => turnTo(first.normal, a.normal) - turnTo(first.normal, b.normal));
}

interface Bent {
  /** Directions from the middles of both lands to where the edge touches them, radians. */
  readonly leaves: number;
  readonly arrives: number;
  readonly edge: Edge;
}

/** A bulge, mm, that no straightedge shows. */
const STRAIGHT = 1e-6;

const bulgeError = (hole: number, bulge: number): MathsError =>
  new MathsError(
    'bulge-too-large',
    [`bulge-${hole + 1}`],
    `The edge on from hole ${hole + 1} cannot bulge by ${sayNumber(bulge)} mm and still run smoothly into the lands at both its ends. Make it less, or the lands wider.`,
  );

/** A straight edge, or one bent so that a straightedge laid on both lands shows `bulge`. */
function bent(lands: readonly Land[], rope: Rope, bulge: number): Bent {
  const { from, to, normal, length } = rope;
  const [a, b] = [lands[from]!, lands[to]!];
  const [nx, ny] = [Math.cos(normal), Math.sin(normal)];
  const start = { x: a.x + a.radius * nx, y: a.y + a.radius * ny };
  if (Math.abs(bulge) < STRAIGHT) {
    const end = { x: b.x + b.radius * nx, y: b.y + b.radius * ny };
    const edge: Edge = { kind: 'line', x1: start.x, y1: start.y, x2: end.x, y2: end.y };
    return { leaves: normal, arrives: normal, edge };
  }
  const hollow = bulge < 0;
  const height = Math.abs(bulge);
  const sign = hollow ? 1 : -1;
  /** How far along the edge from a land the middle of the arc stands. */
  const along = (land: Land, radius: number): number =>
    Math.sqrt(Math.max(0, height * (2 * (radius + sign * land.radius) - height)));
  const excess = (radius: number): number => along(a, radius) + along(b, radius) - length;
  const least = hollow
    ? Math.max(0, height / 2 - Math.min(a.radius, b.radius))
    : Math.max(a.radius, b.radius) + height / 2;
  const most = least + (length ** 2 + height ** 2) / height + a.radius + b.radius;
  if (!(excess(least) < 0)) throw bulgeError(from, bulge);
  const radius = findRoot(excess, least, most);
  const [out, on] = [bulge + sign * radius, along(a, radius)];
  // Along the edge is the normal turned a quarter anticlockwise.
  const x = start.x + out * nx - on * ny;
  const y = start.y + out * ny + on * nx;
  const towards = (land: Land): number => Math.atan2(sign * (y - land.y), sign * (x - land.x));
  const [leaves, arrives] = [towards(a), towards(b)];
  const turn = hollow ? Math.PI : 0;
  const ends = hollow ? [arrives + turn, leaves + turn] : [leaves, arrives];
  return { leaves, arrives, edge: arc(x, y, radius, ends[0]!, ends[1]!, hollow) };
}

function arc(
  x: number,
  y: number,
  radius: number,
  from: number,
  to: number,
  hollow = false,
): RoundEdge {
  const sweep = turnTo(from, to);
  return { kind: 'arc', x, y, radius, from: from * DEGREES, to: (from + sweep) * DEGREES, hollow };
}

/** Anticlockwise from one direction to another, 0 to a full turn. */
const turnTo = (from: number, to: number): number => {
  const turn = (to - from) % (2 * Math.PI);
  return turn < 0 ? turn + 2 * Math.PI : turn;
};

/** An edge with the land it goes round, or on from which it runs. */
interface Side {
  readonly edge: Edge;
  readonly land: number;
  /** Whether it is the edge on from that land, and not the round one about it. */
  readonly on: boolean;
}

/** The edges in their order, whether or not they cross. */
function sidesOf(
  lands: readonly Land[],
  found: readonly Rope[],
  bulges: readonly number[],
): Side[] {
  const edges = found.map((rope) => ({ rope, ...bent(lands, rope, bulges[rope.from] ?? 0) }));
  return edges.flatMap(({ rope, leaves, edge }, i): Side[] => {
    const before = edges.at(i - 1)!;
    const land = lands[rope.from]!;
    const straight = turnTo(before.rope.normal, rope.normal);
    const shift = (from: number, to: number): number =>
      Math.atan2(Math.sin(to - from), Math.cos(to - from));
    const sweep = straight + shift(rope.normal, leaves) - shift(before.rope.normal, before.arrives);
    if (sweep < -1e-9) throw bulgeError(rope.from, bulges[rope.from] ?? 0);
    const round = arc(
      land.x,
      land.y,
      land.radius,
      before.arrives,
      before.arrives + Math.max(0, sweep),
    );
    const on: Side = { edge, land: rope.from, on: true };
    return sweep < 1e-9 || land.radius === 0
      ? [on]
      : [{ edge: round, land: rope.from, on: false }, on];
  });
}

/** The tenth of a millimetre below, so that what is said to be enough is. */
const belowTenth = (figure: number): number => Math.floor(figure * 10 + 1e-9) / 10;

/** Why an outline that crosses itself is none, where, and how much less hollow its edges must be. */
function crossingError(
  lands: readonly Land[],
  found: readonly Rope[],
  bulges: readonly number[],
  sides: readonly Side[],
  { edges, at }: Crossing,
): MathsError {
  const bentIn = (some: readonly Side[]): Side[] =>
    some.filter(({ edge, on }) => on && edge.kind === 'arc' && edge.hollow);
  const pair = edges.map((i) => sides[i]!);
  const [crossing, between] = [bentIn(pair), bentIn(sides.slice(edges[0] + 1, edges[1]))];
  // Two lands cross where the edge between them is hollow enough to run round both.
  const hollow = [crossing, between, bentIn(sides)].find((some) => some.length > 0)!;
  const other = crossing.length === 1 ? pair.find((side) => side !== crossing[0]) : undefined;
  const holes = [...new Set(hollow.map(({ land }) => land))].sort((a, b) => a - b);
  let [clear, crossed] = [0, 1];
  for (let turn = 0; turn < 24; turn += 1) {
    const share = (clear + crossed) / 2;
    const less = bulges.map((bulge, hole) => (holes.includes(hole) ? bulge * share : bulge));
    const crosses = crossingOf(sidesOf(lands, found, less).map(({ edge }) => edge)) !== undefined;
    [clear, crossed] = crosses ? [clear, share] : [share, crossed];
  }
  const names = holes.map((hole) => hole + 1);
  const [across, up] = [at.x, at.y].map((place) => sayNumber(Number(place.toFixed(1))));
  // Of one unit, so that in inches too both have the same.
  const where = `near X and Y of ${across} and ${up} mm`;
  const room = holes.map((hole) => sayNumber(belowTenth(-(bulges[hole] ?? 0) * clear)));
  const what = pair.every((side) => !hollow.includes(side))
    ? `The edge on from hole ${names[0]!} is so hollow that the lands of holes ${pair[0]!.land + 1} and ${pair[1]!.land + 1} cross`
    : names.length > 1
      ? `The edges on from holes ${names.join(' and ')} are so hollow that they cross`
      : `The edge on from hole ${names[0]!} is so hollow that it crosses ${other?.on === true ? 'the edge on from' : 'the land of'} hole ${other!.land + 1}`;
  const remedy =
    clear === 0
      ? 'Another edge is too hollow as well: make them all less hollow.'
      : names.length > 1
        ? `With the others as they are, they clear each other when hollow by no more than ${room.join(' and ')} mm. Make one or both less hollow, or measure again how deep they are.`
        : `With the others as they are, it clears that when hollow by no more than ${room[0]!} mm. Make it less hollow, or measure again how deep it is.`;
  return new MathsError(
    'edges-cross',
    names.map((name) => `bulge-${name}`),
    `${what}, ${where}: the part would fall in two there. ${remedy}`,
  );
}

/**
 * The outline round lands: a round edge about each outer land, and between two that follow each
 * other anticlockwise a straight edge that touches both, or a round one that does.
 *
 * @param lands One for each hole; those inside take no part.
 * @param bulges How far the edge on from each land stands out beyond a straight one, mm; hollow is
 *   negative. That of a land inside says nothing.
 * @returns The edges anticlockwise from that of the outer land with the lowest number; a single full
 *   circle where one land holds all others.
 * @throws MathsError `bulge-too-large`; `edges-cross` where an edge is so hollow that the outline
 *   crosses itself.
 */
export function landOutline(lands: readonly Land[], bulges: readonly number[]): readonly Edge[] {
  const found = ropes(lands);
  if (found.length === 0) {
    const largest = lands.reduce((a, b) => (b.radius > a.radius ? b : a));
    return [{ kind: 'arc', ...largest, from: 0, to: 360, hollow: false }];
  }
  const sides = sidesOf(lands, found, bulges);
  const edges = sides.map(({ edge }) => edge);
  const crossing = crossingOf(edges);
  if (crossing) throw crossingError(lands, found, bulges, sides, crossing);
  return edges;
}

export interface Reach {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The upright rectangle that holds some edges. */
export function reachOf(edges: readonly Edge[]): Reach {
  const points = edges.flatMap((edge): (readonly [number, number])[] => {
    if (edge.kind === 'line') {
      return [
        [edge.x1, edge.y1],
        [edge.x2, edge.y2],
      ];
    }
    const angles = [edge.from, edge.to];
    for (let turn = Math.ceil(edge.from / 90) * 90; turn < edge.to; turn += 90) angles.push(turn);
    return angles.map((angle): [number, number] => [
      edge.x + edge.radius * Math.cos(angle / DEGREES),
      edge.y + edge.radius * Math.sin(angle / DEGREES),
    ]);
  });
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    bottom: Math.min(...ys),
    top: Math.max(...ys),
  };
}
