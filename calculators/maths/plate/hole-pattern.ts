import { MathsError } from '../numeric/errors.ts';
import { builtUp } from './built-up.ts';
import { heldBy, type Held, type Pair } from './hole-network.ts';
import {
  cholesky,
  inverseNormal,
  leastSquares,
  leverage,
  normal,
  rank,
  solveBy,
  type Rows,
} from '../numeric/linear.ts';
import { sayNumber } from '../numeric/rounding.ts';

/** Most holes of a pattern, and most distances between them: with more the fit keeps a phone waiting. */
export const MOST_HOLES = 12;
export const MOST_DISTANCES = 40;

export type Span = 'centres' | 'inside' | 'outside';

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** A distance as it was measured, between two holes by their numbers, from 1. */
export interface Distance {
  readonly from: number;
  readonly to: number;
  /** mm, as read. */
  readonly read: number;
  /** Between centres, nearest edges, or furthest edges. */
  readonly span: Span;
}

export interface Pattern {
  /** Diameters of the holes, mm. */
  readonly diameters: readonly number[];
  readonly distances: readonly Distance[];
}

export interface Fitted {
  /** Hole 1 at 0 0, hole 2 on +X, hole 3 on the side of +Y; mm. */
  readonly places: readonly Place[];
  /** Measured less fitted, between centres, of each distance, mm. */
  readonly misfits: readonly number[];
  /**
   * How much of an error in each distance is left in its own misfit, 0 to 1: nothing where no other
   * distance checks it, near 1 where many do.
   */
  readonly checked: readonly number[];
  /** Root mean square of the misfits, mm. */
  readonly rms: number;
  /** Distances beyond the fewest that place the holes. */
  readonly spare: number;
}

/** What is added to a reading to have it between centres, mm. */
function toCentres({ diameters }: Pattern, { from, to, span }: Distance): number {
  const radii = (diameters[from - 1]! + diameters[to - 1]!) / 2;
  return { centres: 0, inside: radii, outside: -radii }[span];
}

/** A reading turned into the distance between centres, mm. */
export const betweenCentres = (pattern: Pattern, distance: Distance): number =>
  distance.read + toCentres(pattern, distance);

/** A distance between centres turned into what would be read, mm. */
export const asRead = (pattern: Pattern, distance: Distance, centres: number): number =>
  centres - toCentres(pattern, distance);

/** Fewest distances that can place so many holes in one way: each two, but for the first pair's. */
export const fewestDistances = (holes: number): number => 2 * holes - 3;

const and = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`;

const numbers = (holes: readonly number[]): string => {
  const words = and(holes.map((hole) => String(hole + 1)));
  return holes.length === 1 ? `hole ${words}` : `holes ${words}`;
};

/** “from hole 2 to 4 and from 3 to 4”. */
const fromTo = (pairs: readonly Pair[]): string =>
  and(pairs.map(([a, b], i) => `from ${i === 0 ? 'hole ' : ''}${a + 1} to ${b + 1}`));

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** What is wrong with a network, and which distances mend it. */
function heldWords({ kind, holes, line, measure }: Held, pairs: readonly Pair[]): string {
  const more = measure.length === 0 ? '' : ` Measure also ${fromTo(measure)}.`;
  switch (kind) {
    case 'held':
      return '';
    case 'hanging': {
      const only = pairs.find((pair) => pair.includes(holes[0]!))?.find((one) => one !== holes[0]);
      return `${capital(numbers(holes))} ${only === undefined ? 'has no distance to any other' : `hangs on one distance only, that to ${numbers([only])}: it may lie anywhere on a circle about it`}.${more}`;
    }
    case 'loose':
      return `The distances do not hold the holes to each other: ${numbers(holes)} can still move apart or together.${more}`;
    case 'mirrored':
      return `${capital(numbers(holes))} may lie on either side of the line through ${numbers(line!)}: every distance is the same for both.${more}`;
    case 'twofold':
      return `The distances fit the holes together in more ways than one, since nothing checks the one ${fromTo([holes as Pair])}.${more}`;
  }
}

/** Which distances the sentence about a hole belongs to: those that go there. */
function assertNetwork(pattern: Pattern): void {
  const holes = pattern.diameters.length;
  const pairs = pattern.distances.map(({ from, to }): Pair => [from - 1, to - 1]);
  const held = heldBy(holes, pairs);
  if (held.kind === 'held') return;
  throw new MathsError(held.kind, ['distances'], heldWords(held, pairs));
}

function assertSound(pattern: Pattern): void {
  const { diameters, distances } = pattern;
  const holes = diameters.length;
  if (!(holes >= 2 && holes <= MOST_HOLES)) {
    throw new MathsError(
      'out-of-range',
      ['holes'],
      `A pattern has from 2 to ${MOST_HOLES} holes, not ${holes}. Split a larger one into parts that share three holes.`,
    );
  }
  diameters.forEach((diameter, i) => {
    if (diameter >= 0 && Number.isFinite(diameter)) return;
    throw new MathsError(
      'out-of-range',
      [`hole-${i + 1}`],
      `The diameter of hole ${i + 1} must be 0 mm or more. Measure it anew.`,
    );
  });
  if (distances.length > MOST_DISTANCES) {
    throw new MathsError(
      'out-of-range',
      ['distances'],
      `No more than ${MOST_DISTANCES} distances are reckoned with. Leave out the shortest.`,
    );
  }
  distances.forEach((distance, k) => {
    const { from, to } = distance;
    for (const [name, hole] of [
      ['from', from],
      ['to', to],
    ] as const) {
      if (Number.isInteger(hole) && hole >= 1 && hole <= holes) continue;
      throw new MathsError(
        'no-such-hole',
        [`${name}-${k + 1}`],
        `Distance ${k + 1} goes to hole ${sayNumber(hole)}, and there are ${holes} holes. Type a number from 1 to ${holes}.`,
      );
    }
    if (from === to) {
      throw new MathsError(
        'same-hole',
        [`to-${k + 1}`],
        `Distance ${k + 1} goes from hole ${from} to itself. Type the number of the other hole.`,
      );
    }
    const centres = betweenCentres(pattern, distance);
    if (!(centres > 0) || !Number.isFinite(centres)) {
      throw new MathsError(
        'no-distance',
        [`read-${k + 1}`],
        `Distance ${k + 1} of ${sayNumber(distance.read)} mm ${distance.span === 'outside' ? 'over the furthest edges is no more than both holes’ radii together' : 'leaves nothing between the centres'}. Check it, the holes’ diameters and from where it was measured.`,
      );
    }
  });
}

/** Everywhere to everywhere by the measured distances, the shortest way. */
function allWays(holes: number, pairs: readonly Pair[], lengths: readonly number[]): number[][] {
  const ways = Array.from({ length: holes }, (_, i) =>
    Array.from({ length: holes }, (__, j) => (i === j ? 0 : Infinity)),
  );
  pairs.forEach(([a, b], k) => {
    const least = Math.min(ways[a]![b]!, lengths[k]!);
    ways[a]![b] = least;
    ways[b]![a] = least;
  });
  for (let over = 0; over < holes; over += 1) {
    for (let i = 0; i < holes; i += 1) {
      for (let j = 0; j < holes; j += 1) {
        ways[i]![j] = Math.min(ways[i]![j]!, ways[i]![over]! + ways[over]![j]!);
      }
    }
  }
  return ways;
}

/**
 * Rough places from all distances, by the two strongest directions of their centred squares.
 *
 * Source: W. S. Torgerson, Multidimensional scaling: I. Theory and method, Psychometrika 17 (1952),
 * 401–419.
 */
function roughPlaces(ways: readonly (readonly number[])[]): Place[] {
  const n = ways.length;
  const squares = ways.map((row) => row.map((way) => way * way));
  const means = squares.map((row) => row.reduce((a, b) => a + b, 0) / n);
  const mean = means.reduce((a, b) => a + b, 0) / n;
  let centred = squares.map((row, i) =>
    row.map((square, j) => -(square - means[i]! - means[j]! + mean) / 2),
  );
  const axes = [0, 1].map((which) => {
    let vector = Array.from({ length: n }, (_, i) => Math.sin(1 + i * (which + 1.3)));
    let value = 0;
    for (let turn = 0; turn < 200; turn += 1) {
      const next = centred.map((row) => row.reduce((sum, entry, j) => sum + entry * vector[j]!, 0));
      value = Math.hypot(...next);
      if (!(value > 0)) break;
      const before = vector;
      vector = next.map((entry) => entry / value);
      if (vector.every((entry, i) => Math.abs(entry - before[i]!) < 1e-10)) break;
    }
    centred = centred.map((row, i) =>
      row.map((entry, j) => entry - value * vector[i]! * vector[j]!),
    );
    return vector.map((entry) => entry * Math.sqrt(Math.max(value, 0)));
  });
  return Array.from({ length: n }, (_, i) => ({ x: axes[0]![i]!, y: axes[1]![i]! }));
}

/** Turned and moved so that hole 1 lies at 0 0, hole 2 on +X and hole 3 on the side of +Y. */
function inFrame(places: readonly Place[]): Place[] {
  const [origin, second, third] = places as readonly [Place, Place, Place?];
  const length = Math.hypot(second.x - origin.x, second.y - origin.y);
  const [cos, sin] = [(second.x - origin.x) / length, (second.y - origin.y) / length];
  const up = (place: Place): number => -(place.x - origin.x) * sin + (place.y - origin.y) * cos;
  const side = third !== undefined && up(third) < 0 ? -1 : 1;
  return places.map((place, i) => ({
    x: i === 0 ? 0 : (place.x - origin.x) * cos + (place.y - origin.y) * sin,
    y: i < 2 ? 0 : side * up(place),
  }));
}

/** The coordinates that are not 0 by the choice of axes, and the places they stand for. */
const toUnknowns = (places: readonly Place[]): number[] => [
  places[1]!.x,
  ...places.slice(2).flatMap(({ x, y }) => [x, y]),
];
const column = (hole: number): number => 2 * hole - 3;
const toPlaces = (unknowns: readonly number[]): Place[] => [
  { x: 0, y: 0 },
  { x: unknowns[0]!, y: 0 },
  ...Array.from({ length: (unknowns.length - 1) / 2 }, (_, i) => ({
    x: unknowns[1 + 2 * i]!,
    y: unknowns[2 + 2 * i]!,
  })),
];

const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);

/** How each distance changes with each unknown. */
function slopesOf(places: readonly Place[], pairs: readonly Pair[]): number[][] {
  return pairs.map(([a, b]) => {
    const row = new Array<number>(2 * places.length - 3).fill(0);
    const length = apart(places[a]!, places[b]!) || 1e-12;
    const way = [
      (places[a]!.x - places[b]!.x) / length,
      (places[a]!.y - places[b]!.y) / length,
    ] as const;
    for (const [hole, sign] of [
      [a, 1],
      [b, -1],
    ] as const) {
      if (hole === 0) continue;
      if (hole === 1) row[0] = sign * way[0];
      else {
        row[column(hole)] = sign * way[0];
        row[column(hole) + 1] = sign * way[1];
      }
    }
    return row;
  });
}

export interface Net {
  readonly pairs: readonly Pair[];
  readonly lengths: readonly number[];
}

const misfitsOf = ({ pairs, lengths }: Net, places: readonly Place[]): number[] =>
  pairs.map(([a, b], k) => lengths[k]! - apart(places[a]!, places[b]!));

const sumOfSquares = (figures: readonly number[]): number =>
  figures.reduce((sum, figure) => sum + figure * figure, 0);

/** The nearest least squares to some places. */
function settled(net: Net, start: readonly Place[]): Place[] {
  const found = leastSquares(
    (unknowns) => {
      const places = toPlaces(unknowns);
      return { residuals: misfitsOf(net, places), slopes: slopesOf(places, net.pairs) };
    },
    toUnknowns(inFrame(start)),
  );
  return inFrame(toPlaces(found));
}

/** A step below this share of the pattern's size changes nothing. */
const SETTLED = 1e-13;

/**
 * The same from places of nearly the same readings, from where the slopes of the start serve all the
 * way: each step costs a tenth of a whole one. Where the steps do not grow shorter by half and more,
 * the whole way is gone.
 */
function settledBeside({ pairs, lengths }: Net, start: readonly Place[]): Place[] {
  const from = inFrame(start);
  const lower = cholesky(normal(slopesOf(from, pairs), lengths)[0]);
  // A coordinate of every hole, so that none asks which of them are held.
  const at = from.flatMap(({ x, y }) => [x, y]);
  const size = Math.max(...at.map(Math.abs));
  for (let last = Infinity; lower;) {
    const pull = at.map(() => 0);
    pairs.forEach(([a, b], k) => {
      const [dx, dy] = [at[2 * a]! - at[2 * b]!, at[2 * a + 1]! - at[2 * b + 1]!];
      const share = lengths[k]! / Math.sqrt(dx * dx + dy * dy) - 1;
      pull[2 * a]! += share * dx;
      pull[2 * a + 1]! += share * dy;
      pull[2 * b]! -= share * dx;
      pull[2 * b + 1]! -= share * dy;
    });
    const by = solveBy(lower, [pull[2]!, ...pull.slice(4)]);
    const moved = Math.max(...by.map(Math.abs));
    if (!(moved < last)) break;
    by.forEach((step, i) => {
      at[i === 0 ? 2 : i + 3]! += step;
    });
    if (moved < SETTLED * size) {
      return inFrame(from.map((_, i) => ({ x: at[2 * i]!, y: at[2 * i + 1]! })));
    }
    last = moved / 2;
  }
  return settled({ pairs, lengths }, start);
}

/** The distances of one hole, and where they go. */
const spokesOf = ({ pairs, lengths }: Net, hole: number, places: readonly Place[]) =>
  pairs.flatMap((pair, k) =>
    pair.includes(hole)
      ? [{ to: places[pair[0] === hole ? pair[1] : pair[0]]!, length: lengths[k]! }]
      : [],
  );

/** Steps that bring one hole near enough to its best place to judge it by. */
const STEPS_OF_ONE = 6;

interface Turned {
  readonly place: Place;
  /** Sum of squares of this hole's misfits, there and where it lies now. */
  readonly there: number;
  readonly here: number;
  readonly count: number;
}

/** A hole on the other side of the line that runs best through those it is measured to. */
function turnedOver(net: Net, places: readonly Place[], hole: number): Turned {
  const spokes = spokesOf(net, hole, places);
  const count = spokes.length;
  const [mx, my] = (['x', 'y'] as const).map(
    (axis) => spokes.reduce((sum, { to }) => sum + to[axis], 0) / count,
  ) as [number, number];
  let [xx, xy, yy] = [0, 0, 0];
  for (const { to } of spokes) {
    xx += (to.x - mx) ** 2;
    xy += (to.x - mx) * (to.y - my);
    yy += (to.y - my) ** 2;
  }
  const direction = Math.atan2(2 * xy, xx - yy) / 2;
  const [cos, sin] = [Math.cos(direction), Math.sin(direction)];
  const at = places[hole]!;
  const up = -(at.x - mx) * sin + (at.y - my) * cos;
  const squares = (x: number, y: number): number =>
    sumOfSquares(spokes.map(({ to, length }) => length - Math.hypot(x - to.x, y - to.y)));
  const [x, y] = leastSquares(
    ([u, v]) => ({
      residuals: spokes.map(({ to, length }) => length - Math.hypot(u! - to.x, v! - to.y)),
      slopes: spokes.map(({ to }) => {
        const length = Math.hypot(u! - to.x, v! - to.y) || 1e-12;
        return [(u! - to.x) / length, (v! - to.y) / length];
      }),
    }),
    [at.x + 2 * up * sin, at.y - 2 * up * cos],
    STEPS_OF_ONE,
  ) as [number, number];
  return { place: { x, y }, there: squares(x, y), here: squares(at.x, at.y), count };
}

interface Laid {
  readonly places: readonly Place[];
  /** Each hole turned over, as the others lie. */
  readonly turned: readonly Turned[];
}

const laid = (net: Net, places: readonly Place[]): Laid => ({
  places,
  turned: places.map((_, hole) => turnedOver(net, places, hole)),
});

/** Unfolds what a start has put on the wrong side: each hole that fits better turned over is. */
function unfolded(net: Net, start: readonly Place[]): Laid {
  let now = laid(net, settled(net, start));
  for (const _ of start) {
    const sum = sumOfSquares(misfitsOf(net, now.places));
    const better = now.turned
      .map((one, hole) => ({ ...one, hole }))
      .filter(({ there, here }) => there < here * (1 - 1e-6) - 1e-9)
      .sort((a, b) => a.there - a.here - (b.there - b.here))[0];
    if (!better) break;
    const next = settled(net, now.places.with(better.hole, better.place));
    if (!(sumOfSquares(misfitsOf(net, next)) < sum * (1 - 1e-9))) break;
    now = laid(net, next);
  }
  return now;
}

/** Below this misfit nobody with a caliper tells one place of a hole from the other, mm. */
const SAME_TO_A_CALIPER = 0.15;

/** The places that fit best; refused where others fit as well. */
function soundPlaces(holes: number, net: Net): readonly Place[] {
  const best = bestPlaces(holes, net);
  assertSides(net, best);
  return best.places;
}

/** The places that fit best of all that both starts lead to. */
function bestPlaces(holes: number, net: Net): Laid {
  const off = ({ places }: Laid): number => sumOfSquares(misfitsOf(net, places));
  const rough = unfolded(net, roughPlaces(allWays(holes, net.pairs, net.lengths)));
  if (Math.sqrt(off(rough) / net.pairs.length) <= SAME_TO_A_CALIPER) return rough;
  const built = builtUp(holes, net);
  const other = built && unfolded(net, built);
  return other && off(other) < off(rough) * (1 - 1e-9) ? other : rough;
}

/** A hole turned over by less has not moved, mm. */
const UNMOVED = 0.5;

/** Refuses holes in one line, which may lie on either side of it. */
function assertSides(net: Net, { places, turned }: Laid): void {
  if (places.length >= 3) {
    const reach = Math.max(
      ...places.slice(0, 3).flatMap((a, i) => places.slice(0, i).map((b) => apart(a, b))),
    );
    if (places[2]!.y < 1e-3 * reach) {
      const misfit = Math.max(...misfitsOf(net, places).map(Math.abs));
      const [ab, ac, bc] = [
        apart(places[0]!, places[1]!),
        apart(places[0]!, places[2]!),
        apart(places[1]!, places[2]!),
      ];
      throw places.length === 3 && misfit > SAME_TO_A_CALIPER
        ? new MathsError(
            'no-triangle',
            ['read'],
            `The three distances make no triangle: fitted as near as may be, with ${sayNumber(Number(ab.toFixed(2)))}, ${sayNumber(Number(ac.toFixed(2)))} and ${sayNumber(Number(bc.toFixed(2)))} mm, they lie in one line and a reading is still ${sayNumber(Number(misfit.toFixed(2)))} mm out. One of them is misread: measure all three again.`,
          )
        : new MathsError(
            'in-line',
            ['distances'],
            'Holes 1, 2 and 3 lie in one line, so nothing says which side is up. Number the holes so that the third lies well off the line of the first two.',
          );
    }
  }
  if (places.length < 4) return;
  places.forEach((at, hole) => {
    const { place, there, here, count } = turned[hole]!;
    if (apart(place, at) < UNMOVED) return;
    const [rms, now] = [Math.sqrt(there / count), Math.sqrt(here / count)];
    if (rms > 1.2 * now + SAME_TO_A_CALIPER) return;
    const measured = net.pairs.flatMap((pair) =>
      pair.includes(hole) ? [pair[0] === hole ? pair[1] : pair[0]] : [],
    );
    const tells = (other: number): number =>
      Math.abs(apart(places[other]!, at) - apart(places[other]!, place));
    const next = places
      .map((_, other) => other)
      .filter((other) => other !== hole && !measured.includes(other))
      .sort((a, b) => tells(b) - tells(a))[0];
    // Where no distance would tell them apart, the two are one part, seen from its two sides.
    if (next === undefined || tells(next) < UNMOVED) return;
    const holes = [...new Set(measured)].sort((a, b) => a - b);
    throw new MathsError(
      'either-side',
      ['distances'],
      `${capital(numbers([hole]))} may lie on either side of the line through ${numbers(holes)}, which lie all but in line as seen from it: the distances say nearly the same for both. Measure also ${fromTo([[hole, next].sort((a, b) => a - b) as unknown as Pair])}.`,
    );
  });
  if (rank(slopesOf(places, net.pairs), 1e-6) < 2 * places.length - 3) {
    throw new MathsError(
      'in-line',
      ['distances'],
      'The holes lie so that the distances say nothing of one direction: measure one across, to a hole well off the line of the others.',
    );
  }
}

const netOf = (pattern: Pattern): Net => ({
  pairs: pattern.distances.map(({ from, to }): Pair => [from - 1, to - 1]),
  lengths: pattern.distances.map((distance) => betweenCentres(pattern, distance)),
});

/**
 * Places of holes from distances between them, by least squares of the distances between centres,
 * all with the same weight.
 *
 * Source: C. D. Ghilani, Adjustment Computations: Spatial Data Analysis, 5th ed., Wiley, 2010,
 * chapter 14 (adjustment of horizontal surveys: trilateration); the share of a reading's own error
 * that is left in its misfit is its redundancy number, as in chapter 21 (blunder detection).
 * Chapters named from memory.
 *
 * @param beside Places of nearly the same readings: each hole stays on the side on which it lies there.
 * @throws MathsError `out-of-range`, `no-such-hole`, `same-hole`, `no-distance` for figures that are
 *   none; `hanging`, `loose`, `mirrored`, `twofold` where the distances leave places open, with the
 *   distances to measure next; `in-line`, `no-triangle`, `either-side` where the places themselves do.
 */
export function fitHoles(pattern: Pattern, beside?: readonly Place[]): Fitted {
  assertSound(pattern);
  const holes = pattern.diameters.length;
  const net = netOf(pattern);
  if (!beside) assertNetwork(pattern);
  const places = beside ? settledBeside(net, beside) : soundPlaces(holes, net);
  const misfits = misfitsOf(net, places);
  return {
    places,
    misfits,
    // Not asked for while a ± moves the readings.
    get checked() {
      const slopes = slopesOf(places, net.pairs);
      const spread = inverseNormal(slopes)!;
      return slopes.map((row) => Math.max(0, 1 - leverage(row, spread)));
    },
    rms: Math.sqrt(sumOfSquares(misfits) / misfits.length),
    spare: misfits.length - fewestDistances(holes),
  };
}

/** A distance not yet measured that would hold the least held hole best. */
export interface Next {
  readonly from: number;
  readonly to: number;
  /** The hole that is held least, by its number. */
  readonly hole: number;
  /** How far the error of that hole’s place is that of one distance: now, and with one more. */
  readonly now: number;
  readonly then: number;
}

/**
 * Which distance to measure next: of those not yet measured, the one that takes most off the error
 * of the hole that is held least. Nothing where all are measured.
 *
 * Errors as `fitHoles`.
 */
export function nextDistance(
  pattern: Pattern,
  { places }: Pick<Fitted, 'places'>,
): Next | undefined {
  const pairs = netOf(pattern).pairs;
  const spread = inverseNormal(slopesOf(places, pairs))!;
  const varianceOf = (hole: number, of: Rows): number => {
    if (hole === 0) return 0;
    if (hole === 1) return of[0]![0]!;
    return of[column(hole)]![column(hole)]! + of[column(hole) + 1]![column(hole) + 1]!;
  };
  const least = places
    .map((_, hole) => hole)
    .reduce((a, b) => (varianceOf(b, spread) > varianceOf(a, spread) * (1 + 1e-9) ? b : a));
  const open = unmeasured(places.length, pairs);
  const after = open.map((pair) => {
    const [row] = slopesOf(places, [pair]);
    const moved = spread.map((line) => line.reduce((sum, entry, j) => sum + entry * row![j]!, 0));
    const whole = 1 + leverage(row!, spread);
    const less = spread.map((line, i) =>
      line.map((entry, j) => entry - (moved[i]! * moved[j]!) / whole),
    );
    return { pair, then: varianceOf(least, less) };
  });
  if (after.length === 0) return undefined;
  const best = after.reduce((a, b) => (b.then < a.then * (1 - 1e-9) ? b : a));
  return {
    from: best.pair[0] + 1,
    to: best.pair[1] + 1,
    hole: least + 1,
    now: Math.sqrt(varianceOf(least, spread)),
    then: Math.sqrt(best.then),
  };
}

/** Pairs that nobody has measured. */
const unmeasured = (holes: number, pairs: readonly Pair[]): Pair[] =>
  Array.from({ length: holes }, (_, b) => Array.from({ length: b }, (__, a): Pair => [a, b]))
    .flat()
    .filter(([a, b]) => !pairs.some((pair) => pair.includes(a) && pair.includes(b)));

/**
 * What the other distances say of one of them, as it would be read, mm; nothing where they no longer
 * place the holes without it.
 *
 * @param index Which distance, from 0.
 */
export function withoutDistance(
  pattern: Pattern,
  index: number,
): { readonly read: number; readonly rms: number } | undefined {
  const distances = pattern.distances.filter((_, k) => k !== index);
  try {
    const { places, rms } = fitHoles({ ...pattern, distances });
    const left = pattern.distances[index]!;
    const centres = apart(places[left.from - 1]!, places[left.to - 1]!);
    return { read: asRead(pattern, left, centres), rms };
  } catch (problem) {
    if (problem instanceof MathsError) return undefined;
    throw problem;
  }
}
