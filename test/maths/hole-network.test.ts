import { describe, expect, it } from 'vitest';
import { asRead, type Pattern } from '../../calculators/maths/plate/hole-distances.ts';
import { fitHoles } from '../../calculators/maths/plate/hole-pattern.ts';
import { spreader, type Next } from '../calculators/states.ts';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
import { apart, exactly } from './caliper.ts';
import { thrown } from './thrown.ts';

type Point = readonly [x: number, y: number];

const expectAt = (places: readonly { x: number; y: number }[], points: readonly Point[]): void =>
  places.forEach(({ x, y }, i) => {
    expect(x).toBeCloseTo(points[i]![0], 6);
    expect(y).toBeCloseTo(points[i]![1], 6);
  });

/** Holes put down at random, none within 15 mm of another, the first three well off a line. */
function somePlaces(count: number, next: Next): Point[] {
  const places: Point[] = [
    [0, 0],
    [60 + 40 * next(), 0],
    [20 + 30 * next(), 40 + 40 * next()],
  ];
  while (places.length < count) {
    const place: Point = [-60 + 200 * next(), -60 + 200 * next()];
    if (places.every((other) => apart(place, other) > 15)) places.push(place);
  }
  return places;
}

/** Each hole to three before it, at random: few distances, and most of them checked by hardly any. */
function somePairs(count: number, next: Next): (readonly [number, number])[] {
  const pairs: (readonly [number, number])[] = [
    [0, 1],
    [0, 2],
    [1, 2],
  ];
  for (let hole = 3; hole < count; hole += 1) {
    const before = Array.from({ length: hole }, (_, i) => i).sort(() => next() - 0.5);
    for (const other of before.slice(0, 3)) pairs.push([other, hole]);
  }
  return pairs;
}

const UNSURE = /^(either-side|mirrored|twofold)$/;

describe('a pattern made up at random and measured without error', () => {
  it.each([5, 7, 9, 12])(
    'of %d holes is found again, or refused as open to two readings',
    (count) => {
      const next = spreader(101 + count);
      let found = 0;
      for (let tries = 0; tries < 12; tries += 1) {
        const places = somePlaces(count, next);
        const pattern = exactly(places, somePairs(count, next));
        let fit: ReturnType<typeof fitHoles>;
        try {
          fit = fitHoles(pattern);
        } catch {
          expect(thrown(() => fitHoles(pattern)).code).toMatch(UNSURE);
          continue;
        }
        found += 1;
        expect(fit.rms).toBeLessThan(1e-6);
        fit.places.forEach(({ x, y }, i) => {
          expect(x).toBeCloseTo(places[i]![0], 4);
          expect(y).toBeCloseTo(places[i]![1], 4);
        });
      }
      expect(found).toBeGreaterThan(6);
    },
  );

  it.each([6, 8, 10])(
    'of %d holes with one misread fits no worse than the holes as they are',
    (count) => {
      const next = spreader(211 + count);
      let found = 0;
      for (let tries = 0; tries < 12; tries += 1) {
        const places = somePlaces(count, next);
        const pairs = somePairs(count, next);
        const off = 1 + 4 * next();
        const misread = Math.floor(next() * pairs.length);
        const { distances, diameters } = exactly(places, pairs);
        const pattern: Pattern = {
          diameters,
          distances: distances.map((one, k) =>
            k === misread ? { ...one, read: one.read + off } : one,
          ),
        };
        try {
          // The holes as they are have one misfit, and least squares must come at least as low.
          expect(fitHoles(pattern).rms).toBeLessThanOrEqual(off / Math.sqrt(pairs.length) + 1e-6);
          found += 1;
        } catch (error) {
          if (!(error instanceof MathsError)) throw error;
          expect(error.code).toMatch(UNSURE);
        }
      }
      expect(found).toBeGreaterThan(5);
    },
  );

  it('wherever its first two holes lie, is told from hole 1 along hole 2', () => {
    const places: readonly Point[] = [
      [50, 20],
      [10, -30],
      [90, -10],
      [40, 70],
    ];
    const pairs = [0, 1, 2, 3].flatMap((b) => Array.from({ length: b }, (_, a) => [a, b] as const));
    const { places: fit } = fitHoles(exactly(places, pairs));
    expect(fit[0]).toEqual({ x: 0, y: 0 });
    expect(fit[1]!.y).toBe(0);
    expect(fit[1]!.x).toBeCloseTo(Math.hypot(40, 50), 6);
    expect(fit[2]!.y).toBeGreaterThan(0);
    for (const [a, b] of pairs) {
      const other = Math.hypot(fit[a]!.x - fit[b]!.x, fit[a]!.y - fit[b]!.y);
      expect(other).toBeCloseTo(apart(places[a]!, places[b]!), 6);
    }
  });
});

describe('what a caliper would read', () => {
  const pattern: Pattern = {
    diameters: [6, 10],
    distances: [{ from: 1, to: 2, read: 42, span: 'inside' }],
  };
  // Centres 50 apart, holes of 3 and 5 mm radius: 42 between the nearest edges, 58 over the furthest.
  it.each([
    ['inside', 42],
    ['outside', 58],
    ['centres', 50],
  ] as const)('%s: %d', (span, read) => {
    expect(asRead(pattern, { from: 1, to: 2, read: 0, span }, 50)).toBe(read);
  });
});

describe('a network that does not hold says what it lacks, in words and by name', () => {
  const square: readonly Point[] = [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
    [70, 15],
  ];
  const refusal = (holes: number, pairs: readonly (readonly [number, number])[]) =>
    thrown(() => fitHoles(exactly(square.slice(0, holes), pairs)));

  it('a hole without any distance', () => {
    const { code, quantities, message } = refusal(4, [
      [0, 1],
      [0, 2],
      [1, 2],
    ]);
    expect(code).toBe('hanging');
    expect(quantities).toEqual(['distances']);
    expect(message).toMatch(
      /^Hole 4 has no distance to any other\. Measure also from hole \d to \d/,
    );
  });

  it('a hole on one distance, by the number of the other', () => {
    for (const last of [
      [0, 3],
      [3, 0],
    ] as const) {
      const { message } = refusal(4, [[0, 1], [0, 2], [1, 2], last]);
      expect(message).toMatch(/^Hole 4 hangs on one distance only, that to hole 1: /);
    }
  });

  it('two halves that turn on one hole', () => {
    const { code, message } = refusal(5, [
      [0, 1],
      [0, 3],
      [1, 3],
      [1, 2],
      [1, 4],
      [2, 4],
    ]);
    expect(code).toBe('loose');
    expect(message).toMatch(/: holes \d(?:, \d)* and \d can still move .* Measure also from hole /);
  });

  it('one that may stand on either side of a line, by the numbers of all', () => {
    const { code, message } = refusal(4, [
      [0, 1],
      [0, 2],
      [1, 2],
      [0, 3],
      [1, 3],
    ]);
    expect(code).toBe('mirrored');
    expect(message).toMatch(
      /^Hole [34] may lie on either side of the line through holes 1 and 2: /,
    );
  });

  it('one that may stand on either side of a row, and the distance that tells most', () => {
    // Holes 1, 2 and 4 in a row, hole 3 measured to them alone; hole 5 lies near the row, 6 far off.
    const row: readonly Point[] = [
      [0, 0],
      [40, 0],
      [30, 35],
      [80, 0],
      [60, 6],
      [52, -30],
    ];
    const of = (text: string) =>
      text.split(' ').map((pair) => [Number(pair[0]) - 1, Number(pair[1]) - 1] as const);
    const pairs = of('34 13 32 31 12 14 24 15 25 45 16 26 46 56');
    const { code, quantities, message } = thrown(() => fitHoles(exactly(row, pairs)));
    expect([code, ...quantities]).toEqual(['either-side', 'distances']);
    expect(message).toBe(
      'Hole 3 may lie on either side of the line through holes 1, 2 and 4, which lie all but in line as seen from it: the distances say nearly the same for both. Measure also from hole 3 to 6.',
    );
    // With that distance, or the other, all is said.
    for (const more of ['36', '35']) {
      const { places } = fitHoles(exactly(row, [...pairs, ...of(more)]));
      expectAt(places, row);
    }
  });

  it.each([4, 5, 7])(
    'but not %d holes of which all lie in a row except the third: there is one such part',
    (count) => {
      const row = Array.from({ length: count }, (_, i): Point =>
        i === 2 ? [30, 35] : [20 * i, 0],
      );
      const pairs = row.flatMap((_, b) => Array.from({ length: b }, (__, a) => [a, b] as const));
      const { places } = fitHoles(exactly(row, pairs));
      expectAt(places, row);
    },
  );

  it('a hole on the very line of the only holes that it is measured to', () => {
    // A small step of hole 5 across the line changes none of its three distances.
    const row: readonly Point[] = [
      [0, 0],
      [60, 0],
      [30, 40],
      [20, 0],
      [45, 0],
    ];
    const pairs = [
      [0, 1],
      [0, 2],
      [1, 2],
      [0, 3],
      [1, 3],
      [2, 3],
      [0, 4],
      [1, 4],
      [3, 4],
    ] as const;
    const { code, quantities, message } = thrown(() => fitHoles(exactly(row, pairs)));
    expect([code, ...quantities]).toEqual(['in-line', 'distances']);
    expect(message).toContain('say nothing of one direction: measure one across');
    const { places } = fitHoles(exactly(row, [...pairs, [2, 4]]));
    expectAt(places, row);
  });

  it('three in one line, and three whose readings make no triangle', () => {
    const all = [
      [0, 1],
      [0, 2],
      [1, 2],
    ] as const;
    const inLine: readonly Point[] = [
      [0, 0],
      [40, 0],
      [90, 0],
    ];
    expect(thrown(() => fitHoles(exactly(inLine, all))).quantities).toEqual(['distances']);
    const good = exactly(inLine, all);
    const long = {
      ...good,
      distances: good.distances.map((one, k) => (k === 1 ? { ...one, read: 96 } : one)),
    };
    const { code, quantities, message } = thrown(() => fitHoles(long));
    expect([code, ...quantities]).toEqual(['no-triangle', 'read']);
    // In one line the 6 mm too much are shared out evenly: 42 and 52 make 94, each 2 mm out.
    expect(message).toContain(
      'with 42, 94 and 52 mm, they lie in one line and a reading is still 2 mm out',
    );
    // A tenth of a millimetre too much is a caliper's error, and no misreading.
    const nearly = {
      ...good,
      distances: good.distances.map((one, k) => (k === 1 ? { ...one, read: 90.1 } : one)),
    };
    expect(thrown(() => fitHoles(nearly)).code).toBe('in-line');
  });

  it('three that lie off one line by a little more than nothing are placed', () => {
    // A thousandth of the reach of 90 mm is 0.09 mm: below it they count as in line.
    const bow = (up: number) =>
      exactly(
        [
          [0, 0],
          [90, 0],
          [40, up],
        ],
        [
          [0, 1],
          [0, 2],
          [1, 2],
        ],
      );
    expect(fitHoles(bow(0.12)).places[2]!.y).toBeCloseTo(0.12, 4);
    expect(thrown(() => fitHoles(bow(0.06))).code).toBe('in-line');
  });

  it('is told of by the numbers of holes and distances, from 1, in its sentence', () => {
    const good = exactly(square.slice(0, 3), [
      [0, 1],
      [0, 2],
      [1, 2],
    ]);
    const bad = (change: object, k = 1): Pattern => ({
      ...good,
      distances: good.distances.map((one, i) => (i === k ? { ...one, ...change } : one)),
    });
    const said = (pattern: Pattern): string => thrown(() => fitHoles(pattern)).message;
    expect(said({ ...good, diameters: [6, -1, 6] })).toMatch(/^The diameter of hole 2 must/);
    expect(thrown(() => fitHoles({ ...good, diameters: [6, -1, 6] })).code).toBe('out-of-range');
    expect(said(bad({ to: 5 }))).toMatch(/^Distance 2 goes to hole 5, /);
    expect(said(bad({ to: 1 }))).toMatch(/^Distance 2 goes from hole 1 to itself/);
    expect(said(bad({ read: 0 }))).toMatch(/^Distance 2 of 0 mm /);
    const prism = '12 23 13 45 56 46 14 25 36'
      .split(' ')
      .map((pair) => [Number(pair[0]) - 1, Number(pair[1]) - 1] as const);
    const places: readonly Point[] = [...square, [20, 70]];
    expect(thrown(() => fitHoles(exactly(places, prism))).message).toMatch(
      /since nothing checks the one from hole \d to \d\. Measure also from hole \d to \d/,
    );
  });

  it.each([
    ['the holes', { diameters: [6], distances: [] }, ['holes']],
    ['a diameter', { diameters: [6, -1], distances: [] }, ['hole-2']],
    [
      'the hole that a distance goes to',
      { diameters: [6, 6], distances: [{ from: 1, to: 5, read: 9, span: 'centres' }] },
      ['to-1'],
    ],
    [
      'a hole that is its own other',
      { diameters: [6, 6], distances: [{ from: 2, to: 2, read: 9, span: 'centres' }] },
      ['to-1'],
    ],
    [
      'a distance',
      { diameters: [6, 6], distances: [{ from: 1, to: 2, read: 5, span: 'outside' }] },
      ['read-1'],
    ],
  ] as const)('names %s', (_, pattern, names) => {
    expect(thrown(() => fitHoles(pattern as unknown as Pattern)).quantities).toEqual(names);
  });

  it('takes forty distances and no more', () => {
    const places = square.slice(0, 4);
    const all = [
      [0, 1],
      [0, 2],
      [1, 2],
      [0, 3],
      [1, 3],
      [2, 3],
    ] as const;
    const many = (count: number) =>
      exactly(
        places,
        Array.from({ length: count }, (_, i) => all[i % 6]!),
      );
    expect(fitHoles(many(40)).rms).toBeLessThan(1e-6);
    const { code, quantities } = thrown(() => fitHoles(many(41)));
    expect([code, quantities]).toEqual(['out-of-range', ['distances']]);
  });
});
