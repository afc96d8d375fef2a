/** A hole as seen from the centre. */
export interface Polar {
  /** mm. */
  readonly radius: number;
  /** Degrees, anticlockwise. */
  readonly angle: number;
  /** mm. */
  readonly diameter: number;
}

export interface Sets {
  /** Direction of each set’s own line, through its first hole, degrees. */
  readonly directions: readonly number[];
  /** One set, the mean of all: `angle` from its own line. */
  readonly holes: readonly Polar[];
  /** How far the hole that fits worst lies from there, mm. */
  readonly worst: number;
}

const RADIANS = Math.PI / 180;

const turn = (from: number, to: number): number => (((to - from) % 360) + 360) % 360;
/** The same within half a turn either way. */
const near = (from: number, to: number): number => turn(from + 180, to) - 180;
const mean = (figures: readonly number[]): number =>
  figures.reduce((sum, figure) => sum + figure, 0) / figures.length;

/** One way of cutting the round of holes into sets: all alike, as well as may be. */
function cut(round: readonly Polar[], count: number): Sets {
  const size = round.length / count;
  const sets = Array.from({ length: count }, (_, s) => round.slice(s * size, (s + 1) * size));
  const offset = Array.from({ length: size }, (_, h) =>
    mean(sets.map((set) => near(set[0]!.angle, set[h]!.angle))),
  );
  const shift = sets.map((set) =>
    mean(set.map((hole, h) => near(set[0]!.angle + offset[h]!, hole.angle))),
  );
  const directions = sets.map((set, s) => set[0]!.angle + shift[s]!);
  const holes = Array.from({ length: size }, (_, h): Polar => ({
    radius: mean(sets.map((set) => set[h]!.radius)),
    angle: offset[h]!,
    diameter: mean(sets.map((set) => set[h]!.diameter)),
  }));
  const off = sets.flatMap((set, s) =>
    set.map((hole, h) => {
      const like = holes[h]!;
      const along = near(directions[s]! + like.angle, hole.angle) * RADIANS * like.radius;
      return Math.max(
        Math.hypot(hole.radius - like.radius, along),
        Math.abs(hole.diameter - like.diameter),
      );
    }),
  );
  return { directions, holes, worst: Math.max(...off) };
}

/** Cuts that fit within this of the best are told apart by how close their holes lie, mm. */
const AS_WELL = 0.2;

/**
 * Holes about a centre as so many like sets, each a run of neighbours in the round. Of the ways to cut
 * the round, the one whose sets are most alike; of those as good, the one whose holes lie closest.
 *
 * @param holes Those that do not lie at the centre.
 * @param count How many sets, 1 or more.
 * @returns Nothing where the holes cannot be shared out evenly.
 */
export function setsAbout(holes: readonly Polar[], count: number): Sets | undefined {
  if (count < 1 || holes.length === 0 || holes.length % count !== 0) return undefined;
  const first = holes[0]!.angle;
  const round = [...holes].sort((a, b) => turn(first, a.angle) - turn(first, b.angle));
  const size = holes.length / count;
  const ways = Array.from({ length: size }, (_, from) =>
    cut([...round.slice(from), ...round.slice(0, from)], count),
  );
  const best = Math.min(...ways.map(({ worst }) => worst));
  const spread = (sets: Sets): number =>
    Math.max(...sets.holes.map(({ angle }) => turn(sets.holes[0]!.angle, angle)));
  return ways
    .filter(({ worst }) => worst <= best + AS_WELL)
    .reduce((a, b) => (spread(b) < spread(a) - 1e-9 ? b : a));
}
