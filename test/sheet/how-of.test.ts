import { expect, it } from 'vitest';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { boxTitle, firedByBox, readAtWords } from '../../calculators/sheet/firing-order.ts';
import { howOf } from '../../calculators/sheet/how-of.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';

const of = (figures: Partial<Record<FigureKey, number>>): Engine => ({
  ...newEngine('e-1', 'Shared'),
  figures,
});

it.each([
  ['one coil for two cylinders', { cylinders: 2, 'fed-coils': 1 }, true],
  ['one set for two cylinders, and no coils said', { cylinders: 2, sets: 1 }, true],
  [
    'one set for two cylinders, and a coil for each',
    { cylinders: 2, sets: 1, 'fed-coils': 2 },
    false,
  ],
  ['a coil for each', { cylinders: 2, 'fed-coils': 2 }, false],
  ['nothing said', { cylinders: 2 }, false],
] as const)('of a coil with two leads one plug is always positive: %s', (_, figures, said) => {
  const how = howOf(of(figures), 'polarity').join(' ');
  expect(how.includes('one plug is always positive')).toBe(said);
  expect(how).toContain(steps.polarity.how.join(' '));
});

it('timing by one set for several cylinders says at which it is read, and asks for the others', () => {
  const twin = of({ cylinders: 2, sets: 1 });
  const timing = steps.timing.reading!;
  expect(howOf(twin, 'timing').join(' ')).toMatch(
    /read at the lowest-numbered of them\. Then prove each other one: turn forwards until the points open again at its top/,
  );
  expect(howOf(twin, 'timing').join(' ')).toMatch(/let none of them be earlier than the figure/);
  // One set fires them all, also where nobody gave an order.
  expect(boxTitle(timing, 0, twin)).toBe('Set 1 (cylinders 1, 2)');
  expect(readAtWords(timing, firedByBox(timing, 0, twin)!)).toBe(', read at cylinder 1');
  const four = { ...of({ cylinders: 4, sets: 2 }), firingOrder: [1, 4, 3, 2] };
  expect(readAtWords(timing, firedByBox(timing, 1, four)!)).toBe(', read at cylinder 2');
  // The gap of a set is of no cylinder.
  expect(readAtWords(steps.gap.reading!, firedByBox(steps.gap.reading!, 1, four)!)).toBe('');
});

it('an engine with a set and a coil to each cylinder is told what the steps say', () => {
  const three = setFigure(of({ cylinders: 3 }), 'fed-coils', 3);
  for (const id of order) expect(howOf(three, id)).toBe(steps[id].how);
});

it('a single set is not told of others, and a magneto of what a battery feeds', () => {
  const single = of({ cylinders: 1, 'fed-coils': 0 });
  const timing = howOf(single, 'timing').join(' ');
  expect(timing).toMatch(/Turn the plate, or move the set in its slot, by the amount given/);
  expect(timing).not.toMatch(/each set/);
  expect(timing).toMatch(/Against the way the cam turns is earlier\./);
  expect(timing).toMatch(/on a magneto the points must open close to the magnet’s pull/);
  expect(howOf(single, 'coil')[0]).toMatch(
    /one end of a magneto’s coil is earthed at its core\. Take the points’ wire off, and measure from it to the core/,
  );
  const fed = of({ cylinders: 1, 'fed-coils': 1 });
  expect(howOf(fed, 'timing').join(' ')).not.toMatch(/magneto|each set/);
  expect(howOf(fed, 'coil')).toBe(steps.coil.how);
});
