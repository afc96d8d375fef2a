import { expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { leadLines, leadSpecs } from '../../calculators/frame/summary.ts';
import { calculatorBySlug, calculators } from '../../site/all-calculators.ts';

const position = calculatorBySlug('piston-position');
const first = (texts: Record<string, string>) => {
  const evaluation = evaluate(position, texts, { lengths: 'mm' });
  return [leadSpecs(position, evaluation.values)[0]![0], leadLines(position, evaluation, 'mm')[0]];
};

it('the answer is what was asked for, and not what was typed', () => {
  expect(first({})[0]).toBe('angle');
  expect(first({ travel: '2.2' })[1]).toMatch(/^Crank angle: /);
  expect(first({ from: 'angle', angle: '24' })[0]).toBe('travel');
  expect(first({ from: 'angle', angle: '24' })[1]).toMatch(/^Piston travel: /);
  expect(first({ given: 'other', travel: '2.7' })[0]).toBe('travel');
});

it.each(calculators.map((one) => [one.slug, one] as const))('%s: it leads', (_, calculator) => {
  const evaluation = evaluate(calculator, {}, { lengths: 'mm' });
  const main = calculator.main?.(evaluation.values);
  if (main === undefined) return;
  expect(calculator.results[main]?.lead).toBe(true);
});
