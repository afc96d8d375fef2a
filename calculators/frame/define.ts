import type { Calculator, ChoiceInput, Inputs, Results } from './types.ts';

/** Declares a calculator; its input and result names are inferred and checked. */
export function defineCalculator<const I extends Inputs, const R extends Results>(
  calculator: Calculator<I, R>,
): Calculator<I, R> {
  return calculator;
}

/** A choice between named options. */
export function choice<const O extends string>(
  input: Omit<ChoiceInput<O>, 'kind'>,
): ChoiceInput<O> {
  return { kind: 'choice', ...input };
}
