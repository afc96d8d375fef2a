import { describe, expect, it } from 'vitest';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import { remarksOf, verdictOf, whyNotShared } from '../../calculators/frame/whose.ts';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
import holePattern from '../../calculators/plate/hole-pattern/calculator.tsx';
import plateLayout from '../../calculators/plate/plate-layout/calculator.tsx';
import { reading, spreader, whole } from './states.ts';
import { COVER } from '../drawing/cover.ts';

const pairsOf = (holes: number): [number, number][] =>
  Array.from({ length: holes }, (_, b) =>
    Array.from({ length: b }, (__, a): [number, number] => [a + 1, b + 1]),
  ).flat();

/** Every distance between places, read between centres. */
function textsOf(places: readonly (readonly [number, number])[], more: Texts = {}): Texts {
  const pairs = pairsOf(places.length);
  return {
    holes: String(places.length),
    distances: String(pairs.length),
    span: 'centres',
    outline: 'none',
    ...Object.fromEntries(places.map((_, i) => [`hole-${i + 1}`, '4'])),
    ...Object.fromEntries(
      pairs.flatMap(([a, b], k) => {
        const [from, to] = [places[a - 1]!, places[b - 1]!];
        return [
          [`a-${k + 1}`, String(a)],
          [`b-${k + 1}`, String(b)],
          [`distance-${k + 1}`, String(Math.hypot(from[0] - to[0], from[1] - to[1]))],
        ];
      }),
    ),
    ...more,
  };
}

const stateOf = (texts: Texts) => {
  const state = evaluate(holePattern, texts, reading);
  return evaluate(holePattern, whole(state), reading);
};

const polar = (radius: number, degrees: number): [number, number] => [
  radius * Math.cos((degrees * Math.PI) / 180),
  radius * Math.sin((degrees * Math.PI) / 180),
];

/** A breaker plate: its bore as hole 1, then three sets of two holes, 118° and 124° on. */
const plate: [number, number][] = [
  [0, 0],
  ...[20, 138, 262].flatMap((set) => [polar(31.5, set), polar(25, set - 24)]),
];

describe('a plate copied by caliper', () => {
  const texts = textsOf(plate, { about: 'hole', 'centre-hole': '1', sets: '3', 'hole-1': '28' });
  const state = stateOf(texts);

  it('has its radii and angles from the bore', () => {
    const found = flatten(state.results);
    for (const [hole, radius] of [
      [2, 31.5],
      [3, 25],
      [6, 31.5],
    ] as const) {
      expect(found.get(`radius-${hole}`)).toBeCloseTo(radius, 7);
    }
    expect(found.get('angle-2')).toBeCloseTo(0, 9);
    // Hole 3 lies before the line of its set, and hole 3 is up: so the next set is 118° back.
    expect(found.get('angle-4')).toBeCloseTo(360 - 118, 6);
  });

  it('goes on to the layout of a plate, which has the same places', () => {
    const [link] = holePattern.onwards!(state.values as never, state.results as never);
    expect(link!.slug).toBe('plate-layout');
    const there = evaluate(
      plateLayout,
      { ...link!.query, outside: '92', bore: '20', slots: '0' },
      reading,
    );
    expect(there.problems).toEqual([]);
    expect(there.values.sets).toBe(3);
    const laid = flatten(there.results);
    const places = [1, 2, 3].flatMap((set) =>
      [1, 2].map((hole) => [laid.get(`x-${set}-${hole}`)!, laid.get(`y-${set}-${hole}`)!] as const),
    );
    const distances = (all: readonly (readonly [number, number])[]): number[] =>
      pairsOf(all.length)
        .map(([a, b]) =>
          Math.hypot(all[a - 1]![0] - all[b - 1]![0], all[a - 1]![1] - all[b - 1]![1]),
        )
        .sort((a, b) => a - b);
    const wanted = distances(plate.slice(1));
    distances(places).forEach((one, i) => expect(one).toBeCloseTo(wanted[i]!, 2));
  });

  it('makes nobody answer for the example’s figures there', () => {
    const untouched = evaluate(holePattern, { about: 'circle' }, reading);
    const [link] = holePattern.onwards!(untouched.values as never, untouched.results as never);
    for (const key of Object.keys(holePattern.inputs)) expect(link!.from).toContain(key);
  });

  it('offers no plate where the holes make no such sets, and says so', () => {
    const other = stateOf({ ...texts, sets: '4' });
    expect(holePattern.onwards!(other.values as never, other.results as never)).toEqual([]);
    expect(remarksOf(holePattern, other).join()).toContain('do not make 4 like sets');
    expect(remarksOf(holePattern, state).join()).toContain('3 like sets of 2');
  });
});

describe('distances that contradict each other alike', () => {
  const square: [number, number][] = [
    [0, 0],
    [60, 0],
    [60, 40],
    [0, 40],
  ];
  const right = textsOf(square);
  const wrong = { ...right, 'distance-5': String(Number(right['distance-5']) + 1) };
  const said = (texts: Texts): string => remarksOf(holePattern, stateOf(texts)).join(' ');

  it('are all told, so that nobody measures the good ones alone', () => {
    expect(said(wrong)).toContain('all 6 of them stand out alike');
    expect(said(right)).toContain('none looks misread');
  });

  it('make the ± of the places as wide as the textbook’s reference deviation has it', () => {
    const [found, agreed] = [stateOf(wrong), stateOf(right)];
    const misfits = found.results.misfit as readonly number[];
    const each = 0.05;
    const spare = 6 - 5;
    const reference = Math.sqrt(misfits.reduce((sum, v) => sum + (v / each) ** 2, 0) / spare);
    const wider = (name: string): number => found.spreads[name]! / agreed.spreads[name]!;
    for (const name of ['x-2', 'x-3', 'y-3', 'y-4']) {
      expect(wider(name) / reference, name).toBeGreaterThan(0.98);
      expect(wider(name) / reference, name).toBeLessThan(1.02);
    }
    // What is still wrong with a place lies within it: 60 mm is the true one.
    const x = (found.results.x as readonly number[])[1]!;
    expect(Math.abs(x - 60)).toBeGreaterThan(agreed.spreads['x-2']!);
    expect(Math.abs(x - 60)).toBeLessThan(found.spreads['x-2']!);
    expect(wider('misfit-1')).toBeCloseTo(1, 1);
  });
});

describe('a misread distance of ten, some inside, some outside, some between centres', () => {
  const pairs = pairsOf(5);
  /** As read, by how far each is off the true one, in. */
  const textsBy = (off: readonly number[]): Texts => ({
    holes: '5',
    distances: '10',
    span: 'inside',
    'at-outside': '2, 5, 8',
    'at-centres': '10',
    outline: 'none',
    ...Object.fromEntries([
      ...COVER.map(([, , hole], i) => [`hole-${i + 1}`, `${hole} in`]),
      ...pairs.flatMap(([a, b], k) => {
        const [from, to] = [COVER[a - 1]!, COVER[b - 1]!];
        const both = (from[2] + to[2]) / 2;
        const edges = [2, 5, 8].includes(k + 1) ? both : k + 1 === 10 ? 0 : -both;
        const read = Math.hypot(from[0] - to[0], from[1] - to[1]) + edges + off[k]!;
        return [
          [`a-${k + 1}`, String(a)],
          [`b-${k + 1}`, String(b)],
          [`distance-${k + 1}`, `${read.toFixed(3)} in`],
        ];
      }),
    ]),
  });
  const off = [1.2, -1.5, 1.8, -0.8, 0.5, -1.9, 1.1, 1.6, -0.4, -1.3].map((thou) => thou / 1000);

  // By a least squares of SciPy, the root of the sum of squares left is 1.5 thou without distance 6,
  // 3.5 without 3, 13.3 without 4 and 13.8 without 1, of readings that are good to 2 thou.
  it('is looked for among those without which the others agree', () => {
    const state = stateOf(textsBy(off.with(5, off[5]! + 0.1)));
    const [said] = remarksOf(holePattern, state);
    expect(said).toContain(
      'distance 3 (hole 2 to 3) and distance 6 (hole 3 to 4) stand out alike. Measure these again',
    );
    expect(said).toContain(
      'Without distance 1 (hole 1 to 2) or distance 4 (hole 1 to 4) the others would not agree.',
    );
    const rows = Array.from({ length: 10 }, (_, k) => k + 1);
    const looked = rows.filter((row) => verdictOf(holePattern, state, 'readings', 'mm', row));
    expect(looked).toEqual([3, 6]);
  });

  it('is never cleared by what is left over, whichever it is', () => {
    const next = spreader(11);
    let cleared = 0;
    for (let tried = 0; tried < 30; tried += 1) {
      const k = tried % 10;
      const chance = off.map(() => 0.004 * next() - 0.002);
      const wrong = 0.03 + 0.1 * next();
      const state = stateOf(textsBy(chance.with(k, next() < 0.5 ? wrong : -wrong)));
      const not = /Without (distance .*?) the others would not/.exec(
        remarksOf(holePattern, state).join(' '),
      );
      if (!not) continue;
      cleared += 1;
      expect(not[1]).not.toContain(`distance ${k + 1} (`);
    }
    expect(cleared).toBeGreaterThan(5);
  });
});

describe('a misread distance', () => {
  const places: [number, number][] = [
    [0, 0],
    [66, 0],
    [72, 48],
    [-4, 52],
    [33, 29],
    [60, 76],
  ];
  const right = textsOf(places);
  const k = pairsOf(6).findIndex(([a, b]) => a === 2 && b === 6) + 1;
  const wrong = { ...right, [`distance-${k}`]: String(Number(right[`distance-${k}`]) + 3) };

  it('is pointed out, with what the others make of it', () => {
    const said = remarksOf(holePattern, stateOf(wrong)).join(' ');
    expect(said).toContain(`Look again at distance ${k} (hole 2 to 6)`);
    expect(said).toContain(`make it ${Number(right[`distance-${k}`]).toFixed(2)} mm where`);
    // Jaws askew read too much; what is too little comes of something else.
    expect(said).toContain('or come of a caliper held askew or over a burr.');
    const short = { ...right, [`distance-${k}`]: String(Number(right[`distance-${k}`]) - 3) };
    expect(remarksOf(holePattern, stateOf(short)).join(' ')).toContain(
      'or come of a slip of the jaw.',
    );
  });

  it('is none where all agree', () => {
    expect(remarksOf(holePattern, stateOf(right)).join(' ')).toContain('none looks misread');
  });

  it('is not guessed at where nothing checks the distances', () => {
    const three = textsOf(places.slice(0, 3));
    expect(remarksOf(holePattern, stateOf(three)).join(' ')).toContain(
      'No distance checks another',
    );
    const four = textsOf(places.slice(0, 4));
    const off = { ...four, 'distance-2': String(Number(four['distance-2']) + 2) };
    expect(remarksOf(holePattern, stateOf(off)).join(' ')).toContain(
      'Nothing tells which is at fault',
    );
  });
});

describe('a hole between two others, held along by one distance alone', () => {
  const places: [number, number][] = [
    [0, 0],
    [60, 0],
    [60, 40],
    [0, 40],
    [62, 20],
  ];
  const all = textsOf(places);
  // All but the seventh, from hole 1 to 5.
  const texts: Record<string, string> = { ...all, distances: '9' };
  for (const k of [7, 8, 9]) {
    for (const part of ['a', 'b', 'distance']) texts[`${part}-${k}`] = all[`${part}-${k + 1}`]!;
  }
  const said = remarksOf(holePattern, stateOf(texts)).join(' ');

  // By the leverages of a least squares of NumPy the other distances hold 1.4 per cent of the ninth, and
  // 7.9 or more of each other.
  it('is told which distance that is', () => {
    expect(said).toContain(
      'Little checks distance 9 (hole 4 to 5): misread there, the places would move and next to nothing would show. Measure it twice',
    );
    expect(remarksOf(holePattern, stateOf(all)).join(' ')).not.toMatch(/Little checks/);
  });

  // By the same the error of its place comes from 1.747 to 1.196 of that of a distance.
  it('is told which to measure next, and what that gains', () => {
    expect(said).toContain(
      'Hole 5 is held least. To measure from hole 1 to 5 as well would make its place surer by 32%.',
    );
  });
});

describe('a gasket with a band', () => {
  // Lands reach 9 mm from holes of 6 mm at the corners of 40 by 30 mm; one of 6 mm lies in the middle.
  const rectangle: [number, number][] = [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
    [20, 15],
  ];
  const texts = textsOf(rectangle, {
    outline: 'lands',
    ...Object.fromEntries(
      [1, 2, 3, 4, 5].flatMap((i) => [
        [`hole-${i}`, '6'],
        [`land-${i}`, '6'],
      ]),
    ),
  });
  const resultsOf = (more: Texts) => flatten(stateOf({ ...texts, ...more }).results);

  it('is open from side to side but for the band', () => {
    for (const band of [9, 4, 12.5]) {
      const found = resultsOf({ band: String(band), 'in-opening': '5' });
      expect(found.get('opening-across')).toBeCloseTo(40 + 18 - 2 * band, 6);
      expect(found.get('opening-upright')).toBeCloseTo(30 + 18 - 2 * band, 6);
      expect(found.get('across')).toBeCloseTo(58, 6);
      expect(found.get('least-metal')).toBeCloseTo(Math.min(band, 6), 6);
    }
  });

  it('is whole where no band is given, and as before where none is drawn', () => {
    const before = resultsOf({});
    expect(before.get('opening-across')).toBe(0);
    expect(before.get('least-metal')).toBeCloseTo(6, 6);
    const none = resultsOf({ outline: 'none', band: '5' });
    expect(none.get('least-metal')).toBeCloseTo(19, 6);
    expect(none.get('opening-across')).toBe(0);
  });

  it('leaves as much land towards the opening as towards the edge, on a round part too', () => {
    // A land 2 mm wide, in a band as wide as hole and land: what is thinnest is the land itself.
    const lands = Object.fromEntries([1, 2, 3, 4].map((i) => [`land-${i}`, '2']));
    const found = resultsOf({
      ...lands,
      outline: 'round',
      outside: '70',
      band: '5',
      'in-opening': '5',
    });
    expect(found.get('least-metal')).toBeCloseTo(2, 6);
    // The opening is a circle of 60 mm, into which the lands stand aslant.
    expect(found.get('opening-across')).toBeCloseTo(60, 6);
  });

  it('takes no notice of a bore that was given before it', () => {
    const found = resultsOf({ band: '9', bore: '20', 'in-opening': '5' });
    expect(found.get('least-metal')).toBeCloseTo(6, 6);
    expect(
      remarksOf(holePattern, stateOf({ ...texts, band: '3', 'in-opening': '5' })).join(),
    ).toContain('thinnest between the edge and the opening: 3.00 mm');
  });
});

describe('a part that is waisted', () => {
  // Lands reach 5 mm from holes of 4 mm at the corners of 60 by 20 mm: the long edges lie 30 mm apart.
  const texts = textsOf(
    [
      [0, 0],
      [60, 0],
      [60, 20],
      [0, 20],
    ],
    {
      outline: 'lands',
      ...Object.fromEntries([1, 2, 3, 4].map((i) => [`land-${i}`, '3'])),
    },
  );
  const told = (more: Texts) => {
    const state = stateOf({ ...texts, ...more });
    return [
      flatten(state.results).get('least-metal'),
      remarksOf(holePattern, state).find((words) => words.includes('thinnest')),
    ] as const;
  };

  it('is thinnest across the neck where that is narrower than its lands', () => {
    const [both, words] = told({ 'bulge-1': '-14', 'bulge-3': '-13.5' });
    expect(both).toBeCloseTo(2.5, 6);
    expect(words).toContain('between the edge on from hole 1 and the edge on from hole 3: 2.50 mm');
    expect(told({ 'bulge-1': '-28' })[0]).toBeCloseTo(2, 6);
    expect(told({ 'bulge-1': '-10' })[0]).toBeCloseTo(3, 6);
  });

  it('is thinnest between two openings that a band all but joins', () => {
    // By hand: a hollow of 10 mm between lands of 5 mm, 60 mm apart, is an arc of 45 mm, since
    // 10 × 2 × 45 = 30². Half the neck is 5 mm, and the tips stand where the arc is 5.01 mm off the
    // middle line: (45 + 5.01)² − (45 + 5)² = 1.0001, on either side.
    const [wall, words] = told({ 'bulge-1': '-10', 'bulge-3': '-10', band: '5.01' });
    expect(wall).toBeCloseTo(2 * Math.sqrt(1.0001), 4);
    expect(words).toContain('between one opening and another: 2.00 mm');
  });
});

describe('what cannot be', () => {
  const problem = (texts: Texts) => evaluate(holePattern, texts, reading).problems[0]!;
  it.each([
    [{ 'a-3': '5', 'b-3': '5' }, 'b-3', 'from hole 5 to itself'],
    [{ 'b-2': '7' }, 'b-2', 'goes to hole 7, and there are 5 holes'],
    [{ holes: '6' }, 'distances', 'Measure also from hole 4 to 6 and from 5 to 6.'],
    [{ about: 'hole', 'centre-hole': '9' }, 'centre-hole', 'There is no hole 9'],
    [{ about: 'circle', 'circle-holes': '1 2' }, 'circle-holes', 'three holes or more'],
    [{ outline: 'round', outside: '60' }, 'outside', 'no metal between'],
    [{ bore: '60' }, 'bore', 'no metal between'],
    [{ 'bulge-2': '60' }, 'bulge-2', 'cannot bulge by 60 mm'],
    [{ band: '60', 'in-opening': '5' }, 'band', 'meets itself across the part'],
    [{ band: '5' }, 'band', 'Hole 5 with its land stands free in the opening'],
    [{ band: '5', 'in-opening': '5 7' }, 'in-opening', 'There is no hole 7'],
    [{ band: '9', 'in-opening': '1 5' }, 'in-opening', 'does not lie wholly in the opening'],
    [{ span: 'outside', 'distance-7': '5' }, 'distance-7', 'over the furthest edges'],
  ] as const)('%j is said at %s', (texts, key, words) => {
    expect(problem(texts as Texts).sentence).toContain(words);
    expect(problem(texts as Texts).key).toBe(key);
  });

  it('comes back by naming the distances that were taken another way', () => {
    const state = evaluate(holePattern, {}, reading);
    const found = flatten(state.results);
    const over = (state.values.distance as readonly number[])[0]! + 2 * 6.5;
    const mixed = evaluate(
      holePattern,
      { ...whole(state), 'distance-1': String(over), 'at-outside': '1' },
      reading,
    );
    for (const [name, figure] of flatten(mixed.results)) {
      expect(figure, name).toBeCloseTo(found.get(name)!, name.startsWith('fitted-1') ? -2 : 7);
    }
  });
});

describe('an outline that is none', () => {
  const places: [number, number][] = [
    [0, 0],
    [60, 0],
    [60, 20],
    [0, 20],
  ];
  const of = (more: Texts): Texts => textsOf(places, { outline: 'lands', ...lands, ...more });
  const lands = Object.fromEntries(places.map((_, i) => [`land-${i + 1}`, '3']));

  it('since two hollow edges cross leaves no result, and nothing to draw, save or send', async () => {
    const state = evaluate(holePattern, of({ 'bulge-1': '-16', 'bulge-3': '-16' }), reading);
    expect(state.computed).toBe(false);
    expect(flatten(state.results).size).toBe(0);
    const said = state.problems.map(({ key, sentence }) => [key, sentence]);
    expect(said[0]![0]).toBe('bulge-1');
    expect(said[0]![1]).toMatch(/holes 1 and 3 are so hollow that they cross/);
    expect(whyNotShared(state)).toBeDefined();
    for (const { make } of holePattern.downloads!) {
      await expect((async () => make(state.values as never, 'mm'))()).rejects.toThrow(MathsError);
    }
    // A little less and it is a part.
    expect(evaluate(holePattern, of({ 'bulge-1': '-9', 'bulge-3': '-9' }), reading).computed).toBe(
      true,
    );
  });

  it('since a hollow edge leaves a hole outside says so', () => {
    // Hole 5 lies in the bend of an edge that comes 20 mm in: right outside of the part.
    const five = textsOf([...places, [30, -2]], {
      outline: 'lands',
      ...lands,
      'land-5': '0.5',
      'hole-5': '1',
    });
    expect(evaluate(holePattern, five, reading).computed).toBe(true);
    const state = evaluate(holePattern, { ...five, 'bulge-1': '-20' }, reading);
    expect(state.computed).toBe(false);
    expect(state.problems.map(({ sentence }) => sentence).join()).toContain('hole 5 and the edge');
  });
});

it('a hole that is the middle of its circle may stand in any direction from it: half a turn either way', () => {
  const corners = [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
    [20, 15],
  ] as const;
  const { spreads, results } = evaluate(
    holePattern,
    textsOf(corners, { about: 'middle' }),
    reading,
  );
  expect((results['radius'] as number[])[4]).toBeCloseTo(0, 6);
  expect(spreads['angle-5']).toBe(180);
  expect(spreads['angle-1']).toBeLessThan(1);
});
