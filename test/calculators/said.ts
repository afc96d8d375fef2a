import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { leadingRemarks, remarksOf, verdictOf } from '../../calculators/frame/whose.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { allGiven, reading } from './states.ts';

const given = (slug: string, texts: Texts) => {
  const calculator = calculatorBySlug(slug);
  return { calculator, state: allGiven(calculator, evaluate(calculator, texts, reading)) };
};

/** What a calculator says of figures that are all given, a line for each remark. */
export function said(slug: string, texts: Texts): string {
  const { calculator, state } = given(slug, texts);
  return remarksOf(calculator, state).join('\n');
}

/** What stands under its answer before all else. */
export function lookHere(slug: string, texts: Texts): readonly string[] {
  const { calculator, state } = given(slug, texts);
  return leadingRemarks(calculator, state, 'mm');
}

/** What it says of the first rows of a table. */
export function verdicts(slug: string, table: string, rows: number, texts: Texts): string[] {
  const { calculator, state } = given(slug, texts);
  return Array.from({ length: rows }, (_, i) => verdictOf(calculator, state, table, 'mm', i + 1));
}
