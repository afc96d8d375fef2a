import { expect } from 'vitest';
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

/** As much as three lines of a phone hold beside “Look here.”: with two of them the picture is in sight. */
const LONGEST_LEAD = 140;

/** What stands under its answer before all else: short, no caution twice over, and first among the remarks. */
export function lookHere(slug: string, texts: Texts): readonly string[] {
  const { calculator, state } = given(slug, texts);
  const lines = leadingRemarks(calculator, state, 'mm');
  const all = remarksOf(calculator, state);
  lines.forEach((line, i) => {
    expect(line.length, line).toBeLessThanOrEqual(LONGEST_LEAD);
    expect(line).not.toMatch(/^Take care/);
    expect(all[i]!.startsWith(line), `before: ${all[i]!}`).toBe(true);
  });
  return lines;
}

/** What it says of the first rows of a table. */
export function verdicts(slug: string, table: string, rows: number, texts: Texts): string[] {
  const { calculator, state } = given(slug, texts);
  return Array.from({ length: rows }, (_, i) => verdictOf(calculator, state, table, 'mm', i + 1));
}
