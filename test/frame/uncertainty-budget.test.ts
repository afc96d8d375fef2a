import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { uncertaintyBudgets } from '../../calculators/frame/uncertainty-budget.ts';
import { budgetLine } from '../../calculators/frame/budget-line.ts';
import { calculatorBySlug, calculators } from '../../site/all-calculators.ts';

const calculator = calculatorBySlug('piston-position');
const found = evaluate(calculator, {}, { lengths: 'mm' });
/** The same with other parts for the leading result. */
const withParts = (contributions: readonly number[]): Evaluation => {
  const keys = ['travel', 'stroke', 'rod'];
  const parts = contributions.map((contribution, i) => ({ key: keys[i]!, contribution }));
  const spread = Math.hypot(...contributions);
  return { ...found, parts: { angle: parts }, spreads: { angle: spread } } as Evaluation;
};

describe('where a ± comes from', () => {
  it('is told in shares of the variance: 3, 4 and 0 are 36, 64 and none of it', () => {
    const [first] = uncertaintyBudgets(calculator, withParts([0.4, 0.3]), 'mm');
    expect(first!.shares.map(({ share }) => share)).toEqual([
      expect.closeTo(0.64, 12),
      expect.closeTo(0.36, 12),
    ]);
  });

  it('says what the ± would be with the worst reading twice as good', () => {
    // √(0.2² + 0.3²) = 0.361
    const [first] = uncertaintyBudgets(calculator, withParts([0.4, 0.3]), 'mm');
    expect(first!.better!.text).toContain('± 0.4');
    expect(budgetLine(calculator, withParts([0.4, 0.3]))).toMatch(/64% · .* 36%$/);
  });

  it('says nothing of a better reading where no figure shown would differ', () => {
    const said = calculators.flatMap((one) =>
      uncertaintyBudgets(one, evaluate(one, {}, { lengths: 'mm' }), 'mm').flatMap(
        ({ name, text, better }) => (better?.text === text ? [`${one.slug}: ${name}`] : []),
      ),
    );
    expect(said).toEqual([]);
  });

  it('keeps the word that follows the figure: so many km and not so many', () => {
    const cam = calculatorBySlug('breaker-cam');
    for (const unit of ['km', 'h']) {
      const state = evaluate(
        cam,
        { 'wear-per': unit === 'km' ? 'km' : 'hours' },
        { lengths: 'mm' },
      );
      const reset = uncertaintyBudgets(cam, state, 'mm').find(
        ({ name }) => name === 'run-to-limit',
      )!;
      expect(reset.better!.text).toMatch(new RegExp(` ${unit}$`));
    }
  });

  it.each([
    ['small', 1e-200],
    ['large', 1e200],
  ])('loses no share where the parts are too %s to be squared', (_, part) => {
    const evaluation = withParts([0.4 * part, 0.3 * part]);
    const [first] = uncertaintyBudgets(calculator, evaluation, 'mm');
    expect(first!.shares.map(({ share }) => share)).toEqual([
      expect.closeTo(0.64, 12),
      expect.closeTo(0.36, 12),
    ]);
    expect(budgetLine(calculator, evaluation)).toContain('64%');
  });

  it.each(calculators.map((each) => [each.slug, each] as const))('adds up: %s', (_, each) => {
    for (const { shares } of uncertaintyBudgets(
      each,
      evaluate(each, {}, { lengths: 'mm' }),
      'in',
    )) {
      const sum = shares.reduce((all, { share }) => all + share, 0);
      expect(sum).toBeGreaterThan(0.9);
      expect(sum).toBeLessThan(1 + 1e-9);
    }
  });
});

it('a reading read twice as well is told to two digits at most, in inches too', () => {
  const long = calculators.flatMap((calculator) =>
    (['mm', 'in'] as const).flatMap((lengths) =>
      uncertaintyBudgets(calculator, evaluate(calculator, {}, { lengths }), lengths).flatMap(
        ({ better }) => {
          const digits = (better?.error ?? '').replace(/^0\.0*|[^\d.].*$|\./gu, '');
          return digits.replace(/0+$/, '').length > 2
            ? [`${calculator.slug}: ${better!.error}`]
            : [];
        },
      ),
    ),
  );
  expect(long).toEqual([]);
});
