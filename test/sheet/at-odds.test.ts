import { expect, it } from 'vitest';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { judge } from '../../calculators/sheet/judge.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { stepLine } from '../../calculators/sheet/summary.ts';
import type { StepId } from '../../calculators/sheet/steps.ts';

type Figures = Partial<Record<FigureKey, number>>;

const engine = (figures: Figures): Engine => ({ ...newEngine('e-1', 'Odd'), figures });
const read = (figures: Figures, id: StepId, value: number): Engine =>
  setEntry(engine(figures), id, 'found', 0, value);

/** The doubt beside a figure that stands in a sheet. */
const besides = (figures: Figures, key: FigureKey): string | undefined =>
  readNumber(engine(figures), { kind: 'figure', key }, String(figures[key]), { lengths: 'mm' })
    .doubt;

it('a figure of the sheet that another one speaks against is doubted where it stands', () => {
  // Two lobes are 180° apart.
  const dwell = { 'dwell-angle': 190, lobes: 2 };
  expect(besides(dwell, 'dwell-angle')).toMatch(/below 180 cam degrees/);
  expect(besides(dwell, 'lobes')).toMatch(/below 180 cam degrees/);
  expect(besides({ ...dwell, 'dwell-angle': 170 }, 'dwell-angle')).toBeUndefined();
  const gap = { gap: 0.6, lift: 0.4 };
  expect(besides(gap, 'gap')).toMatch(/not less than the lift of 0\.4 mm/);
  expect(besides(gap, 'lift')).toMatch(/not less than the lift of 0\.4 mm/);
  expect(besides({ gap: 0.35, lift: 0.4 }, 'gap')).toBeUndefined();
  expect(besides({ gap: 0.6 }, 'gap')).toBeUndefined();
  const bored = { 'plate-bore': 127, 'plate-outside': 101.6 };
  expect(besides(bored, 'plate-bore')).toMatch(/leaves nothing of a plate of 101\.6 mm/);
  expect(besides(bored, 'plate-outside')).toMatch(/leaves nothing/);
  expect(besides({ 'slot-radius': 30, 'plate-outside': 60 }, 'slot-radius')).toMatch(/the rim/);
  expect(besides({ 'slot-radius': 9, 'plate-bore': 18 }, 'plate-bore')).toMatch(/within the bore/);
  const sound = { 'slot-radius': 29, 'plate-outside': 60, 'plate-bore': 18 };
  for (const key of Object.keys(sound) as FigureKey[]) expect(besides(sound, key)).toBeUndefined();
});

/** Each within its own figure, and against another one of the sheet. */
const within: readonly (readonly [string, StepId, Figures, number, string, RegExp])[] = [
  [
    'a gap as large as the lift',
    'gap',
    { gap: 0.39, 'gap-tolerance': 0.05, lift: 0.4 },
    0.4,
    'unjudged',
    /within its limits, but another figure of the sheet speaks against it\. A gap of 0\.4 mm is not less than the lift of 0\.4 mm, so the points never shut/,
  ],
  [
    'more volts lost than the battery has',
    'wiring',
    { 'feed-drop': 7, volts: 6 },
    6,
    'unjudged',
    /battery of 6 V, and with 6 V lost on the way nothing is left for the coil/,
  ],
  [
    // 0.1 of 54 mm is 0.19 per cent.
    'a narrow ring gap',
    'ring-gap',
    { bore: 54, 'ring-gap': 0.1, 'ring-gap-tolerance': 0.05 },
    0.1,
    'pass',
    /^within its limits, but doubted\. The ring gap is narrow: 0\.3 to 0\.5% of the bore/,
  ],
  [
    // 0.02 of 50 mm is 0.4 thousandths.
    'a tight piston',
    'clearance',
    { bore: 50, 'piston-clearance': 0.02, 'piston-clearance-tolerance': 0.01 },
    0.02,
    'pass',
    /that is 0\.4‰: tight against 1\.0 to 1\.5‰/,
  ],
  [
    // 12 V through 1.5 ohm are 8 A.
    'a coil for another voltage',
    'coil',
    { volts: 12, resistance: 1.5, 'resistance-tolerance': 0.2 },
    1.5,
    'pass',
    /it draws 8\.0 A on the 12 V of the sheet/,
  ],
  [
    'less squish than the crown stands below the deck',
    'squish',
    { squish: 1, 'squish-tolerance': 0.2, deck: 1.5 },
    1,
    'pass',
    /1\.5 mm below the deck in the sheet, and 1 mm is less/,
  ],
];

it.each(within)('%s is said beside the reading', (_, id, figures, value, result, words) => {
  const [row] = judge(read(figures, id, value), id, 'mm').rows;
  expect(row!.words).toMatch(words);
  expect(row!.result).toBe(result);
});

it('what is said of the figure is not said of its reading again', () => {
  const { rows, whole } = judge(
    read({ gap: 0.42, 'gap-tolerance': 0.05, lift: 0.4 }, 'gap', 0.41),
    'gap',
    'mm',
  );
  expect(whole.join()).toMatch(/A gap of 0\.42 mm is not less than the lift of 0\.4 mm/);
  expect(rows[0]!.words).toMatch(/speaks against it\. Like its figure it is not below the lift\.$/);
});

it('what is to be corrected is told its correction alone', () => {
  const wide = read({ gap: 0.3, 'gap-tolerance': 0.05, lift: 0.4 }, 'gap', 0.45);
  expect(judge(wide, 'gap', 'mm').rows[0]!.words).toBe(
    'Close the gap, which makes it fire later, by 0.15 mm.',
  );
});

it('the other side, and what lies on the limit, are told apart', () => {
  const words = (figures: Figures, id: StepId, value: number): string =>
    judge(read(figures, id, value), id, 'mm').rows[0]!.words;
  const piston = { bore: 50, 'piston-clearance-tolerance': 0.01 };
  // 0.06 of 50 mm is 1.2 thousandths, 0.08 of it 1.6.
  expect(words({ ...piston, 'piston-clearance': 0.06 }, 'clearance', 0.06)).toBe(
    'within its limits',
  );
  // 0.0751 of it is 1.502, which is no 1.5.
  expect(words({ ...piston, 'piston-clearance': 0.0751 }, 'clearance', 0.0751)).toMatch(
    /that is 1\.502‰: wide against 1\.0 to 1\.5‰/,
  );
  expect(words({ ...piston, 'piston-clearance': 0.08 }, 'clearance', 0.08)).toMatch(
    /that is 1\.6‰: wide against 1\.0 to 1\.5‰/,
  );
  // 12 V through 3 ohm are 4 A, which contacts stand.
  const coil = { volts: 12, resistance: 3, 'resistance-tolerance': 0.3 };
  expect(words(coil, 'coil', 3)).toBe('within its limits');
  const flush = { squish: 1.5, 'squish-tolerance': 0.2, deck: 1.5 };
  expect(words(flush, 'squish', 1.5)).toBe('within its limits');
});

it('what goes together is passed without a word', () => {
  const sound = { gap: 0.35, 'gap-tolerance': 0.05, lift: 0.7, lobes: 1, rise: 60, top: 20 };
  const gap = read({ ...sound, 'dwell-angle': 230 }, 'gap', 0.35);
  expect(judge(gap, 'gap', 'mm')).toEqual({
    rows: [{ result: 'pass', words: 'within its limits' }],
    whole: [],
    missing: [],
  });
  const ring = read({ bore: 50, 'ring-gap': 0.2, 'ring-gap-tolerance': 0.05 }, 'ring-gap', 0.2);
  expect(judge(ring, 'ring-gap', 'mm').rows[0]!.words).toBe('within its limits');
});

it('a gap is held against the lift also where the sheet has no gap yet, and counts as no pass', () => {
  const bare = read({ lift: 0.3 }, 'gap', 0.35);
  expect(judge(bare, 'gap', 'mm').rows[0]!.words).toMatch(/never shut/);
  const inches = judge(read({ lift: 0.3556 }, 'gap', 0.3556), 'gap', 'in').rows[0]!.words;
  expect(inches).toMatch(/14 thou is not less than the lift of 14 thou/);
  expect(progressOf(read(within[0]![2], 'gap', 0.4)).gap.state).toBe('unjudged');
});

it('a reading is not passed against a figure that is itself refused', () => {
  // 0.4 mm of gap on 0.38 mm of lift: 0.37 lies within 0.05 of the gap, and below the lift.
  const odd = read({ gap: 0.4, 'gap-tolerance': 0.05, lift: 0.38 }, 'gap', 0.37);
  const { rows, whole } = judge(odd, 'gap', 'mm');
  expect(whole.join(' ')).toMatch(/do not go together/);
  expect(rows[0]).toMatchObject({ result: 'unjudged' });
  expect(rows[0]!.words).toMatch(/^not judged: the figure that it would be held against/);
  expect(judge(setFigure(odd, 'gap', 0.35), 'gap', 'mm').rows[0]!.result).toBe('pass');
});

it('figures that the calculator refuses together are told of before anything is read', () => {
  const whole = (figures: Figures, id: StepId): string =>
    judge(engine(figures), id, 'mm').whole.join(' ');
  expect(whole({ gap: 0.5, lift: 0.4 }, 'gap')).toMatch(/do not go together.*never shut/);
  expect(whole({ 'dwell-angle': 200, lobes: 2 }, 'gap')).toMatch(/below 180 cam degrees/);
  const cam = { lift: 0.7, lobes: 2, rise: 60, top: 20 };
  // 180 less twice 60 less 20 is 40, and 180 less 20 is 160.
  expect(whole({ ...cam, 'dwell-angle': 30 }, 'gap')).toMatch(/between 40°.*and 160°/);
  expect(whole({ ...cam, top: 90 }, 'gap')).toMatch(/run into the next/);
  // A cam that is none, or a dwell beyond the lobe, is told once, and no gap is sought on it.
  for (const odd of [
    { ...cam, top: 90, 'dwell-angle': 100 },
    { ...cam, 'dwell-angle': 200 },
  ]) {
    expect(whole(odd, 'gap').match(/do not go together/g)).toHaveLength(1);
  }
  expect(whole({ 'needle-diameter': 2.6, 'needle-jet': 2.5 }, 'clip')).toMatch(/does not go into/);
  expect(whole({ ...cam, 'dwell-angle': 100 }, 'gap')).toBe('');
});

it('the reading stays as it was read', () => {
  const odd = read(within[0]![2], 'gap', 0.4);
  expect(setFigure(odd, 'lift', 0.8).readings).toEqual(odd.readings);
  expect(judge(setFigure(odd, 'lift', 0.8), 'gap', 'mm').rows[0]!.result).toBe('pass');
});

it('a reading that no engine has is doubted also where the sheet has nothing to judge it by', () => {
  const words = (figures: Figures, id: StepId, value: number): string => {
    const { rows } = judge(read(figures, id, value), id, 'mm');
    expect(rows[0]!.result).toBe('unjudged');
    return rows[0]!.words;
  };
  const crank = { cylinders: 1, stroke: 38.5, rod: 80 };
  // 30 (1 − cos φ) + 118 − √(118² − (30 sin φ)²): 10 mm at 43°, and 2.7 mm at 22°, which is usual.
  const single = { cylinders: 1, stroke: 60, rod: 118 };
  expect(words(single, 'timing', 10)).toMatch(/that is 43° before the top, earlier than such/);
  expect(words(single, 'timing', 2.7)).not.toMatch(/earlier|later/);
  // 19.25 (1 − cos 72°) + 80 − √(80² − (19.25 sin 72°)²) = 15.40 mm.
  expect(words(crank, 'timing', 15.4)).toMatch(
    /^On the stroke and rod in the sheet that is 72° before the top, earlier than such engines are set/,
  );
  // At 25° the same is 2.22 mm.
  expect(words(crank, 'timing', 2.22)).toBe('');
  expect(words({ cylinders: 1 }, 'timing', 15.4)).toBe('');
  expect(words({ cylinders: 1 }, 'gap', 3)).toMatch(
    /of 3 mm is far from common practice, which is 0\.3 mm to 0\.4 mm/,
  );
  expect(words({ cylinders: 1 }, 'gap', 0.4)).toBe('');
  // 0.3 of 58 mm is 0.52 per cent, 0.9 of them 1.55.
  expect(words({ cylinders: 1, bore: 58 }, 'squish', 0.3)).toMatch(
    /^The squish is 0\.5% of the bore, and 1\.5 to 2\.0% is common practice/,
  );
  expect(words({ cylinders: 1, bore: 58 }, 'squish', 0.9)).toBe('');
});

it.each<readonly [FigureKey, StepId, number, string]>([
  ['leak-drop', 'leak', 40, '40 kPa is far from common practice, which is 7 kPa at most'],
  ['insulation', 'insulation', 0.02, '0.02 MΩ is far from common practice, which is 1 MΩ or more'],
  ['feed-drop', 'wiring', 5, '5 V is far from common practice, which is 0.5 V at most'],
  ['gap', 'gap', 0.85, '0.85 mm is far from common practice, which is 0.3 mm to 0.4 mm'],
  ['squish', 'squish', 7, '7 mm is far from common practice, which is 0.8 mm to 1.2 mm'],
])(
  'a figure of %s far from common practice is doubted, and what passes by it says so',
  (key, id, value, words) => {
    const figures = { cylinders: 1, [key]: value, [`${key}-tolerance`]: 0.05 };
    expect(besides(figures, key)).toContain(words);
    const [row] = judge(read(figures, id, value), id, 'mm').rows;
    expect(row!.result).toBe('pass');
    expect(row!.words).toContain(`, but doubted. “`);
    expect(row!.words).toContain(words);
  },
);

it('a figure within twice of common practice is left alone', () => {
  expect(besides({ gap: 0.5 }, 'gap')).toBeUndefined();
  expect(besides({ 'leak-drop': 10 }, 'leak-drop')).toBeUndefined();
  expect(besides({ insulation: 20 }, 'insulation')).toBeUndefined();
});

/** Figures just outside and just inside of half the least and of twice the most that common practice has. */
const ends: readonly (readonly [
  key: FigureKey,
  practice: string,
  inside: readonly number[],
  outside: readonly number[],
])[] = [
  ['gap', '0.3 mm to 0.4 mm', [0.15, 0.8], [0.14, 0.81]],
  ['plug-gap', '0.4 mm to 0.6 mm', [0.2, 1.2], [0.19, 1.21]],
  ['condenser', '0.15 µF to 0.3 µF', [0.075, 0.6], [0.07, 0.61]],
  ['feed-drop', '0.5 V at most', [0.05, 1], [1.1]],
  ['insulation', '1 MΩ or more', [0.5, 400], [0.4]],
  ['leak-drop', '7 kPa at most', [1, 14], [15]],
  ['reed-gap', '0.2 mm at most', [0.05, 0.4], [0.41]],
  ['squish', '0.8 mm to 1.2 mm', [0.4, 2.4], [0.39, 2.41]],
  ['shaft-run-out', '0.03 mm at most', [0.01, 0.06], [0.07]],
  ['plate-run-out', '0.05 mm at most', [0.02, 0.1], [0.11]],
  ['end-float', '0.3 mm at most', [0.1, 0.6], [0.61]],
  ['side-play', '0.2 mm to 0.5 mm', [0.1, 1], [0.09, 1.01]],
];

it.each(ends)(
  '%s: common practice is %s, and twice of it is not far',
  (key, practice, near, far) => {
    for (const value of near) {
      expect(besides({ [key]: value }, key) ?? '', String(value)).not.toMatch(/far from/);
    }
    for (const value of far) {
      expect(besides({ [key]: value }, key), String(value)).toContain(`which is ${practice}:`);
    }
  },
);

it('what passes and is doubted says so where its readings are copied, and nothing else does', () => {
  const figures = { bore: 54, cylinders: 1, 'ring-gap': 0.1, 'ring-gap-tolerance': 0.05 };
  const narrow = setEntry({ ...newEngine('e-1', 'T'), figures }, 'ring-gap', 'found', 0, 0.1);
  expect(stepLine(narrow, 'ring-gap', 'mm')).toMatch(/: done, but doubted$/);
  const wide = { ...figures, 'ring-gap': 0.2 };
  const right = setEntry({ ...newEngine('e-1', 'T'), figures: wide }, 'ring-gap', 'found', 0, 0.2);
  expect(stepLine(right, 'ring-gap', 'mm')).toMatch(/: done$/);
});

it('a dwell told per cent is told what to type', () => {
  const { problem } = readNumber(
    newEngine('e-1', 'T'),
    { kind: 'figure', key: 'dwell-angle' },
    '60%',
    { lengths: 'mm' },
  );
  // 60 hundredths of 360 degrees.
  expect(problem).toMatch(/of one lobe type “216 deg”, of two type “108 deg”/);
});
