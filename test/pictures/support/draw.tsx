import { renderToString } from 'preact-render-to-string';
import { expect } from 'vitest';
import { evaluate } from '../../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../../calculators/frame/types.ts';
import { calculatorBySlug } from '../../../site/all-calculators.ts';
import { sheetsOf, type Sheet } from './marks.ts';
import type { State } from './states.ts';

const nothing = (): void => undefined;

/** The picture of a state, as the server draws it. */
export function drawn(calculator: AnyCalculator, { evaluation, lengths }: State): string {
  const { picture: Picture } = calculator;
  const { values, results, spreads } = evaluation;
  return renderToString(
    <Picture
      values={values}
      results={results}
      spreads={() => spreads}
      lengths={lengths}
      idPrefix=""
      set={nothing}
      commit={nothing}
    />,
  );
}

/** The sheets of a calculator's picture in a state without a fault. */
export function picture(slug: string, texts: Record<string, string>): Sheet[] {
  const calculator = calculatorBySlug(slug);
  const evaluation = evaluate(calculator, texts, { lengths: 'mm' });
  expect(evaluation.problems).toEqual([]);
  return sheetsOf(drawn(calculator, { texts, lengths: 'mm', evaluation }));
}
