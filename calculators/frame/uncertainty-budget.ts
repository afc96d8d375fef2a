import type { Evaluation } from './evaluate.ts';
import { withUnit } from './text/format.ts';
import { plainDecimal } from '../maths/numeric/rounding.ts';
import { fieldUnit } from './field/field-unit.ts';
import { showResult } from './show-result.ts';
import { flatten } from './spreads.ts';
import { figureText, resultLines } from './summary.ts';
import type { AnyCalculator } from './types.ts';
import { toShown, type LengthDisplay, type UnitName } from './text/units.ts';
import { joined, sharesOf, type Share } from './budget-line.ts';

/** What the ± of one result is made of. */
export interface UncertaintyBudget {
  readonly name: string;
  readonly label: string;
  /** The figure with its ±. */
  readonly text: string;
  /** The largest first, those below a hundredth left out. */
  readonly shares: readonly Share[];
  /** What the ± would be if the worst reading were read twice as well; nothing where it has no field, or where no figure shown would differ. */
  readonly better?: { readonly label: string; readonly error: string; readonly text: string };
}

/** Half of a ±, which is known to no more than two digits. */
const half = (error: number, unit: UnitName): string =>
  withUnit(plainDecimal(Number(toShown(error / 2, unit).toPrecision(2))), unit);

/**
 * Where the ± of each result comes from: the shares of the variance, in order, and what it would be
 * if the worst reading were read twice as well. That reading's part is then half of what it is, and
 * the parts combine as the root of the sum of their squares.
 */
export function uncertaintyBudgets(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
): readonly UncertaintyBudget[] {
  const figures = flatten(evaluation.results);
  return resultLines(calculator, evaluation, lengths).flatMap(({ name, flat, label, text }) => {
    const parts = evaluation.parts[flat] ?? [];
    const [worst, ...others] = parts;
    if (!worst) return [];
    const spec = calculator.results[name]!;
    const spread = Math.hypot(worst.contribution / 2, joined(others));
    const shown = showResult(figures.get(flat)!, spec, spread, lengths);
    const found = { name: flat, label, text, shares: sharesOf(calculator, evaluation, parts) };
    const base = worst.key.replace(/-\d+$/, '');
    const error = evaluation.errorFields.find(
      ({ key }) => key === `${worst.key}-error` || key === `${base}-error`,
    );
    if (error?.kind !== 'figure' || error.value === undefined || shown.spread === undefined) {
      return [found];
    }
    const betterText = figureText(figures.get(flat)!, spec, spread, lengths, evaluation.values);
    if (betterText === text) return [found];
    const better = {
      label: found.shares[0]!.label,
      error: half(error.value, fieldUnit(error.spec, lengths)),
      text: betterText,
    };
    return [{ ...found, better }];
  });
}
