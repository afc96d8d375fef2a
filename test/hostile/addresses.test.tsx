import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it, vi } from 'vitest';
import { fromQuery, toQuery } from '../../calculators/frame/address.ts';
import { evaluate, type Evaluation } from '../../calculators/frame/evaluate.ts';
import { markdownLink, plainSummary } from '../../calculators/frame/copies.ts';
import { uncertaintyBudgets } from '../../calculators/frame/uncertainty-budget.ts';
import { percent, budgetLine } from '../../calculators/frame/budget-line.ts';
import { Absent, type ResultValue } from '../../calculators/frame/types.ts';
import { calculators } from '../../site/all-calculators.ts';
import { Live } from '../../site/calculator/Live.tsx';
import { expectSame } from '../same.ts';
import { addresses } from './addresses.ts';
import { nonFigures, unsound } from './unsound.ts';

/** Over all calculators together. The seed is fixed, so that every run tries the same ones. */
const ADDRESSES = 10_000;
const runs = { numRuns: Math.ceil(ADDRESSES / calculators.length), seed: 51_104 };

vi.setConfig({ testTimeout: 300_000 });

const figures = (value: ResultValue): number[] =>
  value instanceof Absent ? [] : [value].flat(2).map(Number);

function expectSound(evaluation: Evaluation, texts: Record<string, string>): void {
  for (const value of Object.values(evaluation.results)) {
    if (!figures(value).every(Number.isFinite)) expect(value).toBe('finite');
    if (value instanceof Absent) expect(value.why).toMatch(/\S.+\./);
  }
  for (const spread of Object.values(evaluation.spreads)) {
    if (!(spread >= 0 && Number.isFinite(spread))) expect(spread).toBe('a ±');
  }
  for (const { sentence } of evaluation.problems) expect(sentence).toMatch(/\S.+\./);
  for (const { key, text } of [...evaluation.fields, ...evaluation.errorFields]) {
    if (texts[key] !== undefined) expectSame(text, texts[key]);
  }
  const none = Object.values(evaluation.results).some((value) => value instanceof Absent);
  const every = [...evaluation.fields, ...evaluation.errorFields];
  const unread = every.some((field) => field.unread);
  if (!evaluation.computed) {
    expect((none || unread) && evaluation.problems.length > 0).toBe(true);
  }
}

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s',
  (_, calculator) => {
    it('makes sense of any address, or says why not', () => {
      fc.assert(
        fc.property(addresses(calculator), (query) => {
          const texts = fromQuery(query);
          const evaluation = evaluate(calculator, texts, { lengths: 'mm' });
          expectSound(evaluation, texts);

          const link = 'https://here.test/';
          const words = plainSummary(calculator, evaluation, 'in', link);
          expectSame(nonFigures(words), []);
          expectSame(nonFigures(markdownLink(calculator, evaluation, 'mm', link)), []);

          expectSame(nonFigures(budgetLine(calculator, evaluation) ?? ''), []);
          for (const { shares, better } of uncertaintyBudgets(calculator, evaluation, 'in')) {
            for (const { share } of shares) expectSame(nonFigures(percent(share)), []);
            expectSame(nonFigures(better?.text ?? ''), []);
          }

          const again = evaluate(calculator, fromQuery(toQuery(evaluation)), {
            lengths: 'in',
          });
          if (evaluation.computed && evaluation.problems.length === 0) {
            expectSame(
              Object.values(again.results).flatMap(figures),
              Object.values(evaluation.results).flatMap(figures),
            );
          }
        }),
        runs,
      );
    });

    it('draws any address as a page that runs nothing from it', () => {
      fc.assert(
        fc.property(addresses(calculator), (query) => {
          const html = renderToString(
            <Live calculator={calculator} set={fromQuery(query)} idPrefix="" />,
          );
          expect(unsound(html)).toEqual([]);
        }),
        { ...runs, numRuns: Math.ceil(runs.numRuns / 4) },
      );
    });
  },
);

it.each([
  '<p onclick="x()">x</p>',
  '<p style="top:0">x</p>',
  '<script>x()</script>',
  '<data value="NaN">x</data>',
  '<data value="1e-7">x</data>',
  '<p>NaN mm</p>',
  '<path d="M0 NaN"></path>',
])('these checks see %s', (html) => {
  expect(unsound(html)).not.toEqual([]);
});

it('these checks pass what is quoted or escaped', () => {
  const typed = '&lt;img onerror=x>NaN';
  expect(unsound(`<input value="${typed}"/><p>“${typed}” cannot be read.</p>`)).toEqual([]);
});
