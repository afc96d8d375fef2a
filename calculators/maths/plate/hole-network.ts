import type { Rows } from '../numeric/linear.ts';
import { PRIME, reduced } from '../numeric/prime-field.ts';

/** Two holes between which a distance is measured, by their places in the list, from 0. */
export type Pair = readonly [number, number];

/** Whether the distances hold the holes to each other in one way only, and what is wanting if not. */
export interface Held {
  readonly kind:
    /** In one way only, but for turning over the whole. */
    | 'held'
    /** Some hole is held by one distance or none. */
    | 'hanging'
    /** Some part can be moved against the rest. */
    | 'loose'
    /** Some holes can lie on either side of a line through two others. */
    | 'mirrored'
    /** Stiff, but put together in more ways than one. */
    | 'twofold';
  /** The holes it is about. */
  readonly holes: readonly number[];
  /** The two holes through which the mirror's line goes. */
  readonly line?: Pair;
  /** Distances that would mend it, the fewest that were found. */
  readonly measure: readonly Pair[];
}

/**
 * Places that are special in no way, of whole numbers: what holds these together holds all but
 * special ones. Drawn as by S. K. Park and K. W. Miller, Random number generators: good ones are hard
 * to find, Communications of the ACM 31 (1988), 1192–1201, with the multiplier that they gave later.
 */
function anywhere(holes: number): readonly (readonly [number, number])[] {
  let state = 1;
  const next = (): number => {
    state = (state * 48_271) % 2_147_483_647;
    return state % PRIME;
  };
  return Array.from({ length: holes }, () => [next(), next()]);
}

/** How each distance changes with each coordinate, at the places given. */
const slopesAt = (
  places: readonly (readonly [number, number])[],
  pairs: readonly Pair[],
): number[][] =>
  pairs.map(([a, b]) => {
    const row = new Array<number>(2 * places.length).fill(0);
    for (const axis of [0, 1] as const) {
      const way = places[a]![axis] - places[b]![axis];
      row[2 * a + axis] = way;
      row[2 * b + axis] = -way;
    }
    return row;
  });

/** How many distances are independent of each other. */
const rankOf = (slopes: Rows): number => reduced(slopes).leading.length;

const same = ([a, b]: Pair, [c, d]: Pair): boolean => (a === c && b === d) || (a === d && b === c);

/** Each pair once, however often it was measured. */
const distinct = (pairs: readonly Pair[]): Pair[] =>
  pairs.filter((pair, i) => pairs.findIndex((other) => same(pair, other)) === i);

const everyPair = (holes: number): Pair[] =>
  Array.from({ length: holes }, (_, b) =>
    Array.from({ length: b }, (__, a): Pair => [a, b]),
  ).flat();

const degrees = (holes: number, pairs: readonly Pair[]): number[] =>
  Array.from({ length: holes }, (_, hole) => pairs.filter((pair) => pair.includes(hole)).length);

/** The holes in connected groups, with some of the holes left out. */
function groups(holes: number, pairs: readonly Pair[], without: readonly number[]): number[][] {
  const groupOf = new Map<number, number>();
  const found: number[][] = [];
  for (let from = 0; from < holes; from += 1) {
    if (without.includes(from) || groupOf.has(from)) continue;
    const group = [from];
    groupOf.set(from, found.length);
    for (const hole of group) {
      for (const pair of pairs) {
        if (!pair.includes(hole)) continue;
        const next = pair[0] === hole ? pair[1] : pair[0];
        if (without.includes(next) || groupOf.has(next)) continue;
        groupOf.set(next, found.length);
        group.push(next);
      }
    }
    found.push(group);
  }
  return found;
}

/** Unmeasured pairs, those between the least measured holes first. */
function candidates(holes: number, pairs: readonly Pair[]): Pair[] {
  const counts = degrees(holes, pairs);
  return everyPair(holes)
    .filter((pair) => !pairs.some((other) => same(pair, other)))
    .sort(([a, b], [c, d]) => counts[a]! + counts[b]! - counts[c]! - counts[d]!);
}

/** The first unmeasured pair that holds the pattern stiffer. */
function stiffening(
  holes: number,
  pairs: readonly Pair[],
  without: readonly Pair[] = [],
): Pair | undefined {
  const places = anywhere(holes);
  const now = rankOf(slopesAt(places, pairs));
  return candidates(holes, [...pairs, ...without]).find(
    (pair) => rankOf(slopesAt(places, [...pairs, pair])) > now,
  );
}

/** A pair without which the rest is no longer stiff: in a fit nothing checks its distance. */
function unchecked(holes: number, pairs: readonly Pair[]): Pair | undefined {
  const slopes = slopesAt(anywhere(holes), pairs);
  // Turned over, a pair is a column; one that is no sum of others leads a row and stands in it alone.
  const across = slopes[0]!.map((_, column) => slopes.map((row) => row[column]!));
  const { rows, leading } = reduced(across);
  const alone = rows.findIndex((row) => row.filter((entry) => entry !== 0).length === 1);
  return alone < 0 ? undefined : pairs[leading[alone]!];
}

/** What one thing is wrong with a network; nothing where it is held in one way only. */
function wanting(holes: number, pairs: readonly Pair[]): Omit<Held, 'measure'> & { add?: Pair } {
  const counts = degrees(holes, pairs);
  const hanging = counts.findIndex((count) => count < Math.min(2, holes - 1));
  const places = anywhere(holes);
  const all = 2 * holes - 3;
  const add = (pair: Pair | undefined) => (pair ? { add: pair } : {});
  if (hanging >= 0) {
    const next = candidates(holes, pairs).find((pair) => pair.includes(hanging));
    return { kind: 'hanging', holes: [hanging], ...add(next) };
  }
  if (rankOf(slopesAt(places, pairs)) < all) {
    const next = stiffening(holes, pairs);
    return { kind: 'loose', holes: [...(next ?? [])].sort((a, b) => a - b), ...add(next) };
  }
  if (holes <= 3) return { kind: 'held', holes: [] };
  for (const line of everyPair(holes)) {
    const parts = groups(holes, pairs, line);
    if (parts.length < 2) continue;
    const least = parts.reduce((a, b) => (b.length < a.length ? b : a));
    const next = candidates(holes, pairs).find(
      ([a, b]) => !line.includes(a) && !line.includes(b) && least.includes(a) !== least.includes(b),
    );
    return { kind: 'mirrored', holes: [...least].sort((a, b) => a - b), line, ...add(next) };
  }
  const alone = unchecked(holes, pairs);
  if (alone === undefined) return { kind: 'held', holes: [] };
  const others = pairs.filter((other) => other !== alone);
  return { kind: 'twofold', holes: [...alone], ...add(stiffening(holes, others, [alone])) };
}

/**
 * Whether distances hold holes in one way only, wherever the holes lie, but for special places (in
 * one line) and for turning the whole over.
 *
 * A flat network is held in one way only if no two of its holes part it, and it stays stiff without
 * any one of its distances. Whether it is stiff is the rank of its slopes at places special in no way.
 *
 * Source: B. Jackson and T. Jordán, Connected rigidity matroids and unique realizations of graphs,
 * Journal of Combinatorial Theory, Series B, 94 (2005), 1–29; B. Hendrickson, Conditions for unique
 * graph realizations, SIAM Journal on Computing 21 (1992), 65–84.
 *
 * @param holes How many, 2 or more.
 * @param measured The pairs measured, each of two different holes; some may come twice.
 */
export function heldBy(holes: number, measured: readonly Pair[]): Held {
  const pairs = distinct(measured);
  const first = wanting(holes, pairs);
  const measure: Pair[] = [];
  for (let now = first; now.kind !== 'held' && now.add;) {
    measure.push(now.add);
    now = wanting(holes, [...pairs, ...measure]);
  }
  const { add: _, ...rest } = first;
  return { ...rest, measure };
}
