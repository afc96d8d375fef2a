import { inv, matrix, multiply, transpose, type Matrix } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { type Pattern } from '../../calculators/maths/plate/hole-distances.ts';
import { fitHoles } from '../../calculators/maths/plate/hole-pattern.ts';
import { nextDistance, withoutDistance } from '../../calculators/maths/plate/next-distance.ts';
import { type Place } from '../../calculators/maths/plate/place.ts';
import { spreader } from '../calculators/states.ts';
import { exactly } from './caliper.ts';
import { everyPair } from './every-pair.ts';

type Pair = readonly [number, number];

const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);

const measured = (places: readonly Place[], pairs: readonly Pair[]): Pattern =>
  exactly(
    places.map(({ x, y }) => [x, y]),
    pairs,
  );

/** The coordinates that are free: X of hole 2, then X and Y of each further one. */
const free = (places: readonly Place[]): number[] => [
  places[1]!.x,
  ...places.slice(2).flatMap(({ x, y }) => [x, y]),
];
const placed = (figures: readonly number[]): Place[] => [
  { x: 0, y: 0 },
  { x: figures[0]!, y: 0 },
  ...Array.from({ length: (figures.length - 1) / 2 }, (_, i) => ({
    x: figures[1 + 2 * i]!,
    y: figures[2 + 2 * i]!,
  })),
];

/** How a distance follows each free coordinate, by moving each a little either way. */
function slope(places: readonly Place[], [a, b]: Pair): number[] {
  const STEP = 1e-5;
  const at = free(places);
  return at.map((figure, i) => {
    const [more, less] = [STEP, -STEP].map((by) => {
      const moved = placed(at.with(i, figure + by));
      return apart(moved[a]!, moved[b]!);
    });
    return (more! - less!) / (2 * STEP);
  });
}

/** Variance of the place of each hole for distances of variance 1, by mathjs 15.2.0. */
function variances(places: readonly Place[], pairs: readonly Pair[]): number[] {
  const slopes = matrix(pairs.map((pair) => slope(places, pair)));
  const spread = inv(multiply(transpose(slopes), slopes)) as Matrix;
  const of = (i: number): number => spread.get([i, i]) as number;
  return places.map((_, hole) =>
    hole === 0 ? 0 : hole === 1 ? of(0) : of(2 * hole - 3) + of(2 * hole - 2),
  );
}

describe('which distance to measure next, by trying each', () => {
  it.each([5, 6, 7, 8])('of %d holes', (count) => {
    const next = spreader(300 + count);
    let tried = 0;
    for (let i = 0; i < 60 && tried < 6; i += 1) {
      const places: Place[] = [
        { x: 0, y: 0 },
        { x: 70 + 20 * next(), y: 0 },
        { x: 20 + 30 * next(), y: 40 + 30 * next() },
        ...Array.from({ length: count - 3 }, () => ({
          x: 160 * next() - 40,
          y: 160 * next() - 40,
        })),
      ];
      const pairs = everyPair(count).filter((_, k) => k < 3 || next() < 0.8);
      const open = everyPair(count).filter(
        ([a, b]) => !pairs.some((pair) => pair.includes(a) && pair.includes(b)),
      );
      const pattern = measured(places, pairs);
      let fit: ReturnType<typeof fitHoles>;
      try {
        fit = fitHoles(pattern);
      } catch {
        continue;
      }
      if (open.length === 0) continue;
      tried += 1;
      const now = variances(places, pairs);
      const least = now.indexOf(Math.max(...now));
      const then = open.map((pair) => variances(places, [...pairs, pair])[least]!);
      const best = open[then.indexOf(Math.min(...then))]!;
      const found = nextDistance(pattern, fit)!;
      expect([found.hole, found.from, found.to]).toEqual([least + 1, best[0] + 1, best[1] + 1]);
      expect(found.now / Math.sqrt(now[least]!)).toBeCloseTo(1, 5);
      expect(found.then / Math.sqrt(Math.min(...then))).toBeCloseTo(1, 5);
    }
    expect(tried).toBeGreaterThan(2);
  });
});

describe('one distance left out', () => {
  it('is nothing where the others do not place the holes without it', () => {
    const three = measured(
      [
        { x: 0, y: 0 },
        { x: 40, y: 0 },
        { x: 10, y: 30 },
      ],
      [
        [0, 1],
        [0, 2],
        [1, 2],
      ],
    );
    expect(withoutDistance(three, 1)).toBeUndefined();
  });

  it('lets an error through that is no refusal', () => {
    const broken = { diameters: [6, 6], distances: [{ from: 1, to: 2, read: 9, span: 'centres' }] };
    const hidden = new Proxy(broken, {
      get: (of, key) => {
        if (key === 'diameters') throw new RangeError('no such list');
        return Reflect.get(of, key) as unknown;
      },
    });
    expect(() => withoutDistance(hidden as unknown as Pattern, 0)).toThrow(RangeError);
  });
});
