import type { Net } from './hole-distances.ts';
import type { Pair } from './hole-network.ts';
import type { Place } from './place.ts';

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
export function roughPlaces(holes: number, { pairs, lengths }: Net): Place[] {
  const ways = allWays(holes, pairs, lengths);
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
