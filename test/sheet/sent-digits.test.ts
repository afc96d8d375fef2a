import { expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import pistonPosition from '../../calculators/position/piston-position/calculator.tsx';
import { newEngine } from '../../calculators/sheet/model.ts';
import { offersOf } from '../../site/sheet/for-calculator.ts';

it('a result is sent with the digits that its ± leaves it', () => {
  const texts = { from: 'angle', angle: '23.16', stroke: '59.9948', rod: '115.0112', offset: '0' };
  const evaluation = evaluate(pistonPosition, texts, { lengths: 'in' });
  expect(evaluation.spreads['travel']).toBeGreaterThan(0.001);
  const { places } = offersOf(pistonPosition, evaluation, 'in', '');
  const target = places.map(({ send }) => send(newEngine('e-1', 'Twin')).figures.target);
  const sent = target.find((value) => value !== undefined)!;
  expect(String(sent)).toMatch(/^\d\.\d{1,2}$/);
  expect(Math.abs(sent - (evaluation.results['travel'] as number))).toBeLessThan(0.006);
});
