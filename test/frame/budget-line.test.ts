import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import type { Part } from '../../calculators/frame/spreads.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { uncertaintyBudgets } from '../../calculators/frame/uncertainty-budget.ts';
import { joined, percent, sharesOf, budgetLine } from '../../calculators/frame/budget-line.ts';
import { run, sample } from './sample.ts';

const calculator: AnyCalculator = sample;

const part = (key: string, contribution: number): Part => ({ key, contribution }) as Part;

const withParts = (
  parts: Readonly<Record<string, readonly Part[]>>,
  texts = { shape: 'square', width: '50', depth: '10' },
): Evaluation => {
  const spreads = Object.fromEntries(
    Object.entries(parts).map(([name, of]) => [name, joined(of)] as const),
  );
  return { ...run(texts), parts, spreads } as Evaluation;
};

describe('the shares of a ±', () => {
  it('bear the label of the field, or of the result, that each part comes from', () => {
    const parts = [part('depth', 3), part('gap-2', 4), part('play', 12)];
    // 3, 4 and 12 are the legs of 13, since 9 + 16 + 144 = 169.
    expect(sharesOf(calculator, withParts({}), parts)).toEqual([
      { label: 'Depth', share: expect.closeTo(9 / 169, 12) as number },
      { label: 'Gap 2', share: expect.closeTo(16 / 169, 12) as number },
      { label: 'Play', share: expect.closeTo(144 / 169, 12) as number },
    ]);
    expect(sharesOf(calculator, withParts({}), [part('other', 1)])).toEqual([
      { label: 'other', share: 1 },
    ]);
  });

  it('leave out what is less than half a hundredth', () => {
    const labels = (small: number): string[] =>
      sharesOf(calculator, withParts({}), [part('width', 1), part('depth', small)]).map(
        ({ label }) => label,
      );
    expect(labels(0.06)).toEqual(['Width']);
    expect(labels(0.08)).toEqual(['Width', 'Depth']);
  });

  it('are told in whole hundredths', () => {
    expect([0.005, 0.364, 0.996, 1].map(percent)).toEqual(['1%', '36%', '100%', '100%']);
  });
});

describe('the line of where a ± comes from', () => {
  it('is of the result that leads, or else of the first that a reading bears on', () => {
    const rest = [part('depth', 3), part('width', 4)];
    expect(budgetLine(calculator, withParts({ rest, area: [part('width', 2)] }))).toBe(
      'Area: width 100%',
    );
    expect(budgetLine(calculator, withParts({ rest, area: [] }))).toBe(
      'Width left: depth 36% · width 64%',
    );
    expect(budgetLine(calculator, withParts({ rest }))).toBe('Width left: depth 36% · width 64%');
    expect(budgetLine(calculator, withParts({ rest: [part('play', 1), part('depth', 1)] }))).toBe(
      'Width left: play 50% · depth 50%',
    );
    const led: AnyCalculator = {
      ...calculator,
      results: { ...calculator.results, loose: { ...calculator.results['loose']!, lead: true } },
    };
    const { area: _, ...others } = led.results;
    const last = { ...led, results: others };
    expect(budgetLine(last, withParts({ rest, loose: [part('sizes', 1)] }))).toBe(
      'Loose ones: sizes in the drawer 100%',
    );
  });

  it('is none where no reading bears on any, or only another result does', () => {
    expect(budgetLine(calculator, withParts({}))).toBeUndefined();
    expect(budgetLine(calculator, withParts({ rest: [part('play', 1)] }))).toBeUndefined();
  });
});

describe('the whole of where they come from', () => {
  const found = (parts: readonly Part[], name = 'rest') =>
    uncertaintyBudgets(calculator, withParts({ [name]: parts }), 'mm');

  it('tells the ± with the worst reading twice as good', () => {
    // √(0.3² + 0.4²) = 0.5, and √(0.3² + 0.2²) = 0.36
    const [first, ...others] = found([part('width', 0.4), part('depth', 0.3)]);
    expect(others).toEqual([]);
    expect(first).toMatchObject({ name: 'rest', label: 'Width left' });
    expect(first!.text).toContain('± 0.5');
    expect(first!.better).toMatchObject({ label: 'Width', error: '0.05 mm' });
    expect(first!.better!.text).toContain('± 0.4');
  });

  it('finds the ± of a member of a series under the name of the series', () => {
    const [first] = found([part('gap-2', 0.4)]);
    expect(first!.better).toMatchObject({ label: 'Gap 2', error: '0.01 mm' });
  });

  it('tells nothing better of what has no ± of its own', () => {
    expect(found([part('play', 0.4)])[0]).not.toHaveProperty('better');
    expect(found([part('count', 0.4)])[0]).not.toHaveProperty('better');
  });

  it('is nothing for a result without a part', () => {
    expect(found([])).toEqual([]);
  });
});
