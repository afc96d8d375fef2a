import { expect, it, vi } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { withSpreadsOf } from '../../calculators/frame/with-spreads.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';

const calculator = calculatorBySlug('slide-balance');

it('the ± of before stands with the figures of now, and none is worked out', () => {
  const counted = { ...calculator, compute: vi.fn(calculator.compute) };
  const state = (texts: Record<string, string>) => evaluate(counted, texts, { lengths: 'mm' });
  const before = state({ 'opening-1': '3' });
  expect(Object.keys(before.spreads).length).toBeGreaterThan(0);
  const now = state({ 'opening-1': '3.1' });
  counted.compute.mockClear();
  const shown = withSpreadsOf(before, now);
  expect(shown.results).toBe(now.results);
  expect(shown.spreads).toBe(before.spreads);
  expect(counted.compute).not.toHaveBeenCalled();
  // The state itself keeps its own.
  expect(now.spreads).not.toBe(before.spreads);
});

it('where other figures stand than before, they bring their own ±', () => {
  const before = evaluate(calculator, { slides: '2' }, { lengths: 'mm' });
  const now = evaluate(calculator, { slides: '4' }, { lengths: 'mm' });
  expect(withSpreadsOf(before, now)).toBe(now);
  const none = evaluate(
    calculator,
    { slides: 'two' },
    { lengths: 'mm', origins: { slides: 'yours' } },
  );
  expect(withSpreadsOf(none, before).spreads).toEqual(before.spreads);
  expect(withSpreadsOf(before, before)).toBe(before);
});
