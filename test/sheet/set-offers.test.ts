import { expect, it } from 'vitest';
import { enter } from '../../calculators/sheet/enter.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { newEngine, setsOf, type Engine } from '../../calculators/sheet/model.ts';
import { setOffers } from '../../calculators/sheet/set-offers.ts';
import { directionsOf } from '../../calculators/sheet/sets.ts';
import { hasStep } from '../../calculators/sheet/steps.ts';

const of = (cylinders: number): Engine =>
  setFigure(newEngine('e-1', 'Offered'), 'cylinders', cylinders);
const told = (engine: Engine, order: string): Engine =>
  enter(engine, { kind: 'order' }, order, { lengths: 'mm' });

it('even places are asked for pistons that come to the top in turn, and not only for even firing', () => {
  const [even, together] = setOffers(of(2), 'mm');
  expect(even!.ask).toMatch(/come to the top one after another, evenly/);
  expect(even!.ask).toContain('0°, 180°');
  expect(directionsOf(even!.take(of(2)))).toEqual([0, 180]);
  // Both pistons of an opposed twin may come up together: then it fires evenly too, and by one set.
  expect(together!.ask).toMatch(/to the top together.*one set fires both.*coil of two leads/);
  const one = together!.take(of(2));
  expect(setsOf(one)).toBe(1);
  expect(hasStep(one.figures, 'plate')).toBe(false);
});

it('the order in which the places are offered is asked with them', () => {
  const asked = (engine: Engine): string => setOffers(engine, 'mm')[0]!.ask;
  expect(asked(of(4))).toMatch(/in the order 1-2-3-4, evenly.*0°, 90°, 180°, 270°/);
  expect(asked(told(of(4), '1-3-2-4'))).toMatch(
    /in the order 1-3-2-4, evenly.*0°, 180°, 90°, 270°/,
  );
  const pairs = setFigure(of(6), 'sets', 3);
  expect(asked(told(pairs, '1+6-3+4-2+5'))).toMatch(
    /those of one set together, set after set in the order 1\+6-3\+4-2\+5, evenly.*0°, 240°, 120°/,
  );
});

it('pairs are offered where they are possible and not said already', () => {
  const answers = (engine: Engine): string[] => setOffers(engine, 'mm').map(({ answer }) => answer);
  expect(answers(of(4))).toEqual(['Evenly, in turn: enter these', 'In pairs: 2 sets']);
  expect(setsOf(setOffers(of(4), 'mm')[1]!.take(of(4)))).toBe(2);
  expect(answers(of(3))).toHaveLength(1);
  expect(answers(setFigure(of(4), 'sets', 2))).toHaveLength(1);
});
