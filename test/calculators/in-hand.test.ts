import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { calculators } from '../../site/all-calculators.ts';

const choices = calculators
  .filter(({ inHand }) => inHand !== undefined)
  .flatMap((calculator) =>
    Object.entries(calculator.inputs).flatMap(([key, input]) =>
      input.kind === 'choice'
        ? Object.keys(input.options).map((option) => [calculator, key, option] as const)
        : [],
    ),
  );

describe('what a page is about stands in hand', () => {
  it.each(choices.map(([calculator, key, option]) => [calculator.slug, key, option, calculator]))(
    '%s with %s=%s',
    (_, key, option, calculator) => {
      const { values } = evaluate(calculator, { [key]: option }, { lengths: 'mm' });
      const figures = calculator.inHand!.filter((name) => {
        const input = (calculator.inputs[name] ?? calculator.inputs[name.replace(/-\d+$/, '')])!;
        return input.kind !== 'choice' && (input.when?.(values) ?? true);
      });
      expect(figures).not.toEqual([]);
    },
  );
});
