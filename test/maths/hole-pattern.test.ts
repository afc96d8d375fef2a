import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heldBy, type Pair } from '../../calculators/maths/plate/hole-network.ts';
import {
  type Distance,
  type Pattern,
  type Span,
} from '../../calculators/maths/plate/hole-distances.ts';
import { fitHoles } from '../../calculators/maths/plate/hole-pattern.ts';
import { nextDistance, withoutDistance } from '../../calculators/maths/plate/next-distance.ts';
import { type Place } from '../../calculators/maths/plate/place.ts';
import { setsAbout } from '../../calculators/maths/plate/hole-sets.ts';
import { pitchCircle } from '../../calculators/maths/plate/pitch-circle.ts';
import { thrown } from './thrown.ts';
import { everyPair } from './every-pair.ts';

const corners: readonly Place[] = [
  { x: 0, y: 0 },
  { x: 66, y: 0 },
  { x: 72, y: 48 },
  { x: -4, y: 52 },
  { x: 33, y: 29 },
  { x: 60, y: 76 },
];
const DIAMETERS = [6.5, 6, 8, 6.5, 30, 4.2];

const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);
/** Distances between some of the holes, read without error unless said. */
function pattern(
  places: readonly Place[],
  pairs: readonly Pair[] = everyPair(places.length),
  span: Span = 'centres',
  error: (k: number) => number = () => 0,
): Pattern {
  const diameters = DIAMETERS.slice(0, places.length);
  return {
    diameters,
    distances: pairs.map(([a, b], k): Distance => {
      const radii = (diameters[a]! + diameters[b]!) / 2;
      const add = { centres: 0, inside: -radii, outside: radii }[span];
      return {
        from: a + 1,
        to: b + 1,
        read: apart(places[a]!, places[b]!) + add + error(k),
        span,
      };
    }),
  };
}

const without = (holes: number, ...gone: readonly Pair[]): Pair[] =>
  everyPair(holes).filter(([a, b]) => !gone.some(([c, d]) => a === c && b === d));

const isAt = (found: readonly Place[], wanted: readonly Place[]): void => {
  wanted.forEach(({ x, y }, i) => {
    expect(found[i]!.x, `x of hole ${i + 1}`).toBeCloseTo(x, 7);
    expect(found[i]!.y, `y of hole ${i + 1}`).toBeCloseTo(y, 7);
  });
};

describe('places of holes', () => {
  it.each(['centres', 'inside', 'outside'] as const)(
    'come back from distances taken %s',
    (span) => {
      for (const holes of [2, 3, 4, 5, 6]) {
        const places = corners.slice(0, holes);
        const { places: found, misfits, rms, spare } = fitHoles(pattern(places, undefined, span));
        isAt(found, places);
        for (const misfit of misfits) expect(Math.abs(misfit)).toBeLessThan(1e-9);
        expect(rms).toBeLessThan(1e-9);
        expect(spare).toBe((holes * (holes - 1)) / 2 - (2 * holes - 3));
      }
    },
  );

  it('go by no order, no direction, and by any way of measuring within one pattern', () => {
    const spans: readonly Span[] = ['inside', 'outside', 'centres'];
    const mixed = everyPair(5).map(([a, b], k) => {
      const [one] = pattern(corners, [[a, b]], spans[k % 3]).distances;
      return k % 2 === 0 ? one! : { ...one!, from: one!.to, to: one!.from };
    });
    const { places } = fitHoles({ diameters: DIAMETERS.slice(0, 5), distances: mixed.reverse() });
    isAt(places, corners.slice(0, 5));
  });

  it('have hole 1 at 0 0, hole 2 on +X and hole 3 above, wherever the part lay', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 120 }), fc.integer({ min: 0, max: 120 })), {
          minLength: 4,
          maxLength: 7,
        }),
        (raw) => {
          const places = raw.map(([x, y]) => ({ x, y }));
          const tight = everyPair(places.length).some(
            ([a, b]) => apart(places[a]!, places[b]!) < 15,
          );
          if (tight) return;
          let fit;
          try {
            fit = fitHoles({ ...pattern(places), diameters: places.map(() => 5) });
          } catch (problem) {
            expect((problem as { code: string }).code).toMatch(/^(in-line|either-side)$/);
            return;
          }
          expect([fit.places[0]!.x, fit.places[0]!.y, fit.places[1]!.y]).toEqual([0, 0, 0]);
          expect(fit.places[1]!.x).toBeGreaterThan(0);
          expect(fit.places[2]!.y).toBeGreaterThan(0);
          for (const [a, b] of everyPair(places.length)) {
            const [found, wanted] = [fit.places, places].map((all) => apart(all[a]!, all[b]!));
            expect(found).toBeCloseTo(wanted!, 6);
          }
        },
      ),
      { seed: 5, numRuns: 60 },
    );
  });

  it('are those at which no step in any direction makes the squares less', () => {
    const errors = [0.05, -0.03, 0.04, 0.02, -0.06, 0.01, 0.03, -0.02, 0.05, -0.04];
    const read = pattern(corners.slice(0, 5), undefined, 'centres', (k) => errors[k]!);
    const { places, rms } = fitHoles(read);
    const squares = (at: readonly Place[]): number =>
      read.distances.reduce(
        (sum, { from, to, read: length }) =>
          sum + (length - apart(at[from - 1]!, at[to - 1]!)) ** 2,
        0,
      );
    expect(Math.sqrt(squares(places) / 10)).toBeCloseTo(rms, 12);
    places.forEach((place, i) => {
      for (const [dx, dy] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ] as const) {
        const moved = { x: place.x + dx * 1e-3, y: place.y + dy * 1e-3 };
        expect(squares(places.with(i, moved))).toBeGreaterThan(squares(places));
      }
    });
  });

  it('say of each distance how much of its own misreading is left over there', () => {
    const exact = pattern(corners);
    const { checked } = fitHoles(exact);
    exact.distances.forEach((_, k) => {
      const off = pattern(corners, undefined, 'centres', (i) => (i === k ? 1e-4 : 0));
      expect(fitHoles(off).misfits[k]! / 1e-4).toBeCloseTo(checked[k]!, 3);
    });
    expect(checked.reduce((a, b) => a + b, 0)).toBeCloseTo(15 - 9, 9);
  });

  it('leave a misread distance to the others, which say what it is', () => {
    const k = 7;
    const off = pattern(corners, undefined, 'centres', (i) => (i === k ? 2.5 : 0));
    const { misfits, checked } = fitHoles(off);
    const standing = misfits.map((misfit, i) => Math.abs(misfit) / Math.sqrt(checked[i]!));
    expect(standing.indexOf(Math.max(...standing))).toBe(k);
    const others = withoutDistance(off, k)!;
    expect(others.read).toBeCloseTo(off.distances[k]!.read - 2.5, 7);
    expect(others.rms).toBeLessThan(1e-9);
  });

  it('name what to measure next for the hole that is held least', () => {
    const thin = pattern(corners, without(6, [0, 5], [1, 5], [4, 5]).concat([[0, 5]]));
    const next = nextDistance(thin, fitHoles(thin))!;
    expect(next.hole).toBe(6);
    expect([next.from, next.to]).toContain(6);
    expect(next.then).toBeLessThan(next.now);
    expect(nextDistance(pattern(corners), fitHoles(pattern(corners)))).toBeUndefined();
  });
});

describe('places beside known ones', () => {
  const read = (error: number): Pattern =>
    pattern(corners.slice(0, 5), undefined, 'inside', (k) => error * Math.sin(1 + k));

  it('are those that are found without', () => {
    const { places } = fitHoles(read(0));
    for (const error of [-0.3, 0.02, 0.3, 6, 15]) {
      isAt(fitHoles(read(error), places).places, fitHoles(read(error)).places);
    }
  });

  it('are where the squares are least, also where one reading is far out', () => {
    const exact = read(0);
    const { places } = fitHoles(exact);
    const out = {
      ...exact,
      distances: exact.distances.map((one, k) => (k === 4 ? { ...one, read: one.read + 7 } : one)),
    };
    const found = fitHoles(out, places).places;
    const squares = (at: readonly Place[]): number =>
      out.distances.reduce((sum, { from, to, read: edges }) => {
        const [a, b] = [at[from - 1]!, at[to - 1]!];
        const radii = (out.diameters[from - 1]! + out.diameters[to - 1]!) / 2;
        return sum + (edges + radii - Math.hypot(a.x - b.x, a.y - b.y)) ** 2;
      }, 0);
    found.forEach(({ x, y }, hole) => {
      for (const by of [1e-4, -1e-4]) {
        expect(squares(found.with(hole, { x: x + by, y }))).toBeGreaterThan(squares(found));
        expect(squares(found.with(hole, { x, y: y + by }))).toBeGreaterThan(squares(found));
      }
    });
  });

  it('leave each hole on its side, also where no distance tells', () => {
    const open = pattern(corners.slice(0, 4), without(4, [2, 3]));
    expect(thrown(() => fitHoles(open)).code).toBe('mirrored');
    const [first, second, third, { x, y }] = corners as readonly [Place, Place, Place, Place];
    for (const side of [1, -1]) {
      const beside = [first, second, third, { x: x + 0.2, y: side * y }];
      isAt(fitHoles(open, beside).places, beside.with(3, { x, y: side * y }));
    }
  });
});

describe('a network that leaves something open says what to measure', () => {
  const refuse = (pairs: readonly Pair[], places: readonly Place[] = corners.slice(0, 4)) =>
    thrown(() => fitHoles(pattern(places, pairs)));

  it.each([
    [
      'no distance',
      without(4, [0, 3], [1, 3], [2, 3]),
      'hanging',
      /^Hole 4 has no distance to any other\. Measure also from hole \d to \d/,
    ],
    [
      'one distance',
      without(4, [0, 3], [1, 3]),
      'hanging',
      /^Hole 4 hangs on one distance only, that to hole 3.*Measure also from hole 1 to 4 and from 2 to 4\.$/,
    ],
    [
      'two',
      without(4, [1, 3]),
      'mirrored',
      /either side of the line through holes 1 and 3.*Measure also from hole 2 to 4\.$/,
    ],
  ] as const)('a hole with %s', (_, pairs, code, words) => {
    const error = refuse(pairs);
    expect(error.code).toBe(code);
    expect(error.quantities).toEqual(['distances']);
    expect(error.message).toMatch(words);
  });

  it('two halves that can turn against each other', () => {
    const error = refuse(
      [
        [0, 1],
        [0, 2],
        [1, 2],
        [2, 3],
        [2, 4],
        [3, 4],
      ],
      corners.slice(0, 5),
    );
    expect(error.code).toBe('loose');
    expect(error.message).toMatch(/can still move apart or together\. Measure also/);
  });

  it('a part of several holes that may lie folded over', () => {
    const error = refuse(without(6, [0, 4], [1, 4], [0, 5], [1, 5]), corners);
    // Holes 5 and 6 go to 3 and 4 only.
    expect(error.code).toBe('mirrored');
    expect(error.message).toMatch(/either side of the line through holes 3 and 4/);
  });

  it('two triangles joined by three distances, stiff and yet put together in more ways than one', () => {
    const prism: Pair[] = [
      [0, 1],
      [1, 2],
      [0, 2],
      [3, 4],
      [4, 5],
      [3, 5],
      [0, 3],
      [1, 4],
      [2, 5],
    ];
    const held = heldBy(6, prism);
    expect(held.kind).toBe('twofold');
    expect(heldBy(6, [...prism, ...held.measure]).kind).toBe('held');
    expect(refuse(prism, corners).message).toMatch(/more ways than one/);
  });

  it.each([3, 4, 5, 6, 9, 12])(
    'what it asks for is enough, and asked of %d holes it ends',
    (holes) => {
      const next = (
        (state) => () =>
          (state = (state * 48271) % 2147483647) / 2147483647
      )(holes);
      for (let i = 0; i < 10; i += 1) {
        const some = everyPair(holes).filter(() => next() < i / 10);
        const { measure } = heldBy(holes, some);
        expect(heldBy(holes, [...some, ...measure]).kind).toBe('held');
      }
    },
  );

  it('a network so barely stiff that the squares of its slopes are lost in rounding', () => {
    // Eight holes by thirteen distances, as few as can be: nothing checks any of them.
    const pairs = '01 05 62 03 13 23 14 24 57 67 45 06 17'
      .split(' ')
      .map((pair): Pair => [Number(pair[0]), Number(pair[1])]);
    const held = heldBy(8, pairs);
    expect(held.kind).toBe('twofold');
    expect(heldBy(8, [...pairs, ...held.measure]).kind).toBe('held');
  });

  it('a hole seen only from holes in one line', () => {
    const row = [
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 30, y: 35 },
      { x: 80, y: 0 },
      { x: 52, y: -30 },
    ];
    // Holes 3 and 5 are both measured to 1, 2 and 4, which lie in line, and not to each other.
    const error = refuse(without(5, [2, 4]), row);
    expect(error.code).toBe('either-side');
    expect(error.message).toMatch(
      /^Hole [35] may lie on either side.*Measure also from hole 3 to 5\.$/,
    );
  });

  it('three holes in one line', () => {
    const line = [0, 40, 80, 30].map((x, i) => ({ x, y: i === 3 ? 25 : 0 }));
    expect(refuse(everyPair(4), line).code).toBe('in-line');
    const long = pattern(line.slice(0, 3), undefined, 'centres', (k) => (k === 1 ? 3 : 0));
    const error = thrown(() => fitHoles(long));
    expect(error.code).toBe('no-triangle');
    expect(error.message).toMatch(/measure all three again/);
  });
});

describe('a distance that is none', () => {
  const good = pattern(corners.slice(0, 3));
  const bad = (k: number, change: Partial<Distance>) =>
    thrown(() =>
      fitHoles({
        ...good,
        distances: good.distances.map((one, i) => (i === k ? { ...one, ...change } : one)),
      }),
    );

  it.each([
    [{ from: 4 }, 'no-such-hole', 'from-2', /goes to hole 4, and there are 3 holes/],
    [{ to: 0 }, 'no-such-hole', 'to-2', /from 1 to 3/],
    [{ to: 1.5 }, 'no-such-hole', 'to-2', /hole 1\.5/],
    [{ to: 1 }, 'same-hole', 'to-2', /from hole 1 to itself/],
    [{ read: 0 }, 'no-distance', 'read-2', /leaves nothing between the centres/],
    [{ read: 5, span: 'outside' }, 'no-distance', 'read-2', /over the furthest edges/],
    [{ read: Number.NaN }, 'no-distance', 'read-2', /Check it/],
  ] as const)('%j', (change, code, of, words) => {
    const error = bad(1, change);
    expect([error.code, ...error.quantities]).toEqual([code, of]);
    expect(error.message).toMatch(words);
  });

  it('takes 2 to 12 holes, diameters of 0 and more, and 40 distances', () => {
    const of = (holes: number) => () =>
      fitHoles({ diameters: Array.from({ length: holes }, () => 5), distances: [] });
    expect(thrown(of(1)).message).toMatch(/from 2 to 12 holes, not 1/);
    expect(thrown(of(13)).code).toBe('out-of-range');
    expect(thrown(of(12)).code).toBe('hanging');
    expect(thrown(() => fitHoles({ ...good, diameters: [5, -1, 5] })).quantities).toEqual([
      'hole-2',
    ]);
    const many = Array.from({ length: 41 }, () => good.distances[0]!);
    expect(thrown(() => fitHoles({ ...good, distances: many })).message).toMatch(/more than 40/);
    expect(() => fitHoles({ ...good, diameters: [0, 0, 0] })).not.toThrow();
  });
});

describe('the circle through holes', () => {
  it('refuses two holes, and three in a line', () => {
    expect(thrown(() => pitchCircle(corners.slice(0, 2))).code).toBe('too-few-places');
    expect(thrown(() => pitchCircle([0, 1, 2].map((x) => ({ x, y: 2 * x })))).code).toBe(
      'places-in-line',
    );
  });

  it('finds the circle that they lie on', () => {
    const on = [10, 95, 200].map((degrees) => ({
      x: 5 + 31 * Math.cos((degrees * Math.PI) / 180),
      y: 9 + 31 * Math.sin((degrees * Math.PI) / 180),
    }));
    const { x, y, radius, rms } = pitchCircle(on);
    expect([x, y, radius].map((figure) => Number(figure.toFixed(8)))).toEqual([5, 9, 31]);
    expect(rms).toBeLessThan(1e-9);
  });
});

describe('like sets about a centre', () => {
  const set = [
    { radius: 31.5, angle: 0, diameter: 3.3 },
    { radius: 25, angle: -24, diameter: 4.2 },
  ];
  const turned = (angles: readonly number[]) =>
    angles.flatMap((by) => set.map((hole) => ({ ...hole, angle: hole.angle + by })));

  it.each([[[0, 120, 240]], [[10, 128, 251.5]], [[0, 90, 180, 270]]])(
    'are found at %j',
    (angles) => {
      const found = setsAbout(turned(angles), angles.length)!;
      expect(found.worst).toBeLessThan(1e-9);
      expect(found.holes.map(({ radius }) => radius).sort()).toEqual([25, 31.5]);
      const steps = found.directions.map((direction, i) => {
        const next = found.directions[(i + 1) % angles.length]!;
        return Number(((((next - direction) % 360) + 360) % 360).toFixed(6));
      });
      const wanted = angles.map(
        (angle, i) => (((angles[(i + 1) % angles.length]! - angle) % 360) + 360) % 360,
      );
      expect([...steps].sort()).toEqual([...wanted].sort());
    },
  );

  it('are none where the holes cannot be shared out', () => {
    expect(setsAbout(turned([0, 120]), 3)).toBeUndefined();
    expect(setsAbout([], 1)).toBeUndefined();
    expect(setsAbout(turned([0, 120]), 0)).toBeUndefined();
  });

  it('say how far they are from alike', () => {
    const holes = turned([0, 120, 240]);
    const off = holes.with(2, { ...holes[2]!, radius: 32.5 });
    const { worst } = setsAbout(off, 3)!;
    expect(worst).toBeGreaterThan(0.5);
    expect(worst).toBeLessThan(1);
  });
});
