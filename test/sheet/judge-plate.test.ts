import { expect, it } from 'vitest';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { judge, targetWords, type Judgement } from '../../calculators/sheet/judge.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';

/** Sets at these directions from set 1, in a firing order of their own. */
const plate = (firingOrder: readonly number[], ...directions: number[]): Engine => ({
  ...newEngine('e-1', 'Plate'),
  firingOrder,
  figures: Object.fromEntries<number>([
    ['cylinders', directions.length + 1],
    ['plate-tolerance', 0.8],
    ...directions.map((angle, i): [FigureKey, number] => [`set-${i + 2}` as FigureKey, angle]),
  ]),
});
const even = plate([1, 2, 3], 120, 240);
const judged = (engine: Engine, ...angles: number[]): Judgement =>
  judge(
    angles.reduce((so, angle, i) => setEntry(so, 'plate', 'found', i, angle), engine),
    'plate',
    'mm',
  );

it('each set is told its own angle as soon as one is another', () => {
  // From the last to the first 360 − 240, then 121, then 240 − 121.
  expect(targetWords(plate([1, 2, 3], 121, 240), 'plate', 'mm')).toBe(
    'sets 1 to 3: 120°, 121°, 119° ± 0.8°',
  );
});

it('what is told of all sets: what does not close, how near a place is, and no other way round', () => {
  const fit = expect.stringMatching(/one angle may be off by up to 1\.6° while both its sets pass/);
  expect(judged(even, 120, 119.9, 119.9).whole).toEqual([
    expect.stringContaining('add up to 359.8°, and once round is 360°: the 0.2° too little'),
    fit,
  ]);
  expect(judged(even, 120, 120, 120).whole).toEqual([fit]);
  // One set has no other to stand to.
  expect(judged(plate([1]), 360).whole).toEqual([]);
  // 270° from each set to the next by number are three turns.
  expect(judged(plate([1, 4, 3, 2], 270, 180, 90), 270, 270, 270, 269.7).whole[0]).toContain(
    'add up to 1079.7°, and 3 times round is 1080°',
  );
});

it('two sets within a degree of each other are on one spot, either side of it', () => {
  for (const near of [0.5, 359.5]) {
    expect(judge(plate([], near), 'plate', 'mm').whole.join()).toMatch(/belong on one spot/);
  }
  expect(judge(plate([], 2), 'plate', 'mm').whole).toEqual([]);
});

it('a set that is far out is not doubted as a slip of its unit: it comes of several readings', () => {
  const { rows } = judged(even, 120, 132, 108);
  expect(rows[1]).toEqual({
    result: 'fail',
    words: 'Move this set in its slot, against the way the cam turns (earlier), by 12°.',
  });
});
