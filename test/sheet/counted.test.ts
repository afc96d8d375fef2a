import { expect, it } from 'vitest';
import { enter } from '../../calculators/sheet/enter.ts';
import { boxesOf, newEngine } from '../../calculators/sheet/model.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';

const twin = setFigure(newEngine('e-1', 'Twin'), 'cylinders', 2);
const read = setEntry(setEntry(twin, 'gap', 'found', 0, 0.4), 'gap', 'found', 1, 0.35);
const cylinders = { kind: 'figure', key: 'cylinders' } as const;

it('what was read of each cylinder stays in sight while their number is refused or wiped out', () => {
  for (const text of ['20', '']) {
    const without = enter(read, cylinders, text, { lengths: 'mm' }, undefined, '2026-11-27');
    expect(without.figures.cylinders, text).toBeUndefined();
    expect(boxesOf(without, 'gap'), text).toBe(2);
  }
});

it('an engine of which nothing is known has one box, and may have any number of sets', () => {
  const bare = newEngine('e-2', 'Bare');
  expect(boxesOf(bare, 'gap')).toBe(1);
  const sets = (engine: typeof bare) =>
    readNumber(engine, { kind: 'figure', key: 'sets' }, '3', { lengths: 'mm' }).problem;
  expect(sets(bare)).toBeUndefined();
  expect(sets(twin)).toContain('by the sheet it has 2 cylinders');
});

it('two readings of a rod that are too far apart for one rod are asked about', () => {
  const doubt = (text: string) =>
    readNumber(twin, { kind: 'figure', key: 'rod' }, text, { lengths: 'mm' }).doubt;
  expect(doubt('118; 121')).toMatch(/2 readings of one part, which are 3 mm apart/);
  expect(doubt('118; 118.2')).toBeUndefined();
});

it('a share of the highest compression is told in its unit once it is read', () => {
  const said = (engine: typeof twin) =>
    readNumber(engine, { kind: 'figure', key: 'compression-tolerance' }, '10%', { lengths: 'mm' })
      .problem;
  expect(said(twin)).toContain('Read them first');
  const compressed = setEntry(
    setEntry(twin, 'compression', 'found', 0, 850),
    'compression',
    'found',
    1,
    900,
  );
  // A tenth of 900.
  expect(said(compressed)).toContain('“10%” of 900 kPa is 90 kPa. Type “90 kPa”.');
});
