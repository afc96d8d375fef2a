import { expect, it } from 'vitest';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { fillFrom } from '../../calculators/sheet/fill.ts';
import { boxesOf, newEngine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';

const four = setFigure(newEngine('e-1', 'Four'), 'cylinders', 4);
const byCarburettor = order.filter((id) => steps[id].reading?.per === 'Carburettor');

it('one carburettor that feeds two cylinders has one box, and no other slide to open with', () => {
  const twin = setFigure(setFigure(newEngine('e-2', 'Twin'), 'cylinders', 2), 'carburettors', 1);
  expect(byCarburettor.length).toBeGreaterThan(5);
  for (const id of byCarburettor) expect(boxesOf(twin, id), id).toBe(1);
  expect(boxesOf(twin, 'compression')).toBe(2);
  expect(progressOf(twin).slides.state).toBe('pass');
  const float = setFigure(setFigure(twin, 'height', 20), 'height-tolerance', 0.5);
  expect(progressOf(setEntry(float, 'float', 'found', 0, 20)).float.state).toBe('pass');
});

it('two that feed four are asked for as two, here and in the calculators', () => {
  const paired = setFigure(four, 'carburettors', 2);
  for (const id of byCarburettor) expect(boxesOf(paired, id), id).toBe(2);
  expect(progressOf(paired).slides.state).toBe('open');
  expect(fillFrom(paired, 'slide-balance', ['slides']).slides).toBe('2');
  expect(fillFrom(paired, 'float-level', ['carburettors']).carburettors).toBe('2');
  expect(fillFrom(paired, 'jet-set', ['wanted']).wanted).toBe('2');
  expect(fillFrom(four, 'jet-set', ['wanted']).wanted).toBe('4');
});

it('more than cylinders are refused with the reason, and count for no more boxes', () => {
  const read = readNumber(four, { kind: 'figure', key: 'carburettors' }, '5', { lengths: 'mm' });
  expect(read.problem).toContain('by the sheet it has 4 cylinders');
  expect(boxesOf(setFigure(setFigure(four, 'carburettors', 4), 'cylinders', 2), 'float')).toBe(2);
});
