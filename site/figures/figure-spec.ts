import { allFrom, evaluate, knownKeys, type Texts } from '../../calculators/frame/evaluate.ts';
import { toQuery } from '../../calculators/frame/address.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { pageAddress } from '../calculator/page-address.ts';

/** A figure of an article, as its text names it. */
export interface FigureSpec {
  /** The calculator that it is a part of. */
  readonly slug: string;
  /** Unique on the page. */
  readonly id: string;
  /** The case that the text argues: inputs other than the defaults, as in an address. */
  readonly set?: Readonly<Record<string, string | number>>;
  /** Keys of the one to three inputs that it is about; the name of a series stands for its members. */
  readonly inputs?: readonly string[];
  /** Names of the one to three results that answer it, the first of them large. */
  readonly results?: readonly string[];
  /** Which of the calculator's pictures, counted from 1; all of them unless given. */
  readonly picture?: number;
}

/** Texts by key. A key that the calculator does not know stops the build. */
export function textsOf(
  calculator: AnyCalculator,
  values: Readonly<Record<string, string | number>> = {},
): Texts {
  const known = knownKeys(calculator);
  return Object.fromEntries(
    Object.entries(values).map(([key, value]) => {
      if (!known.has(key)) throw new Error(`${calculator.slug} has no input ${key}`);
      // Without the dust that a sum of figures leaves.
      return [key, typeof value === 'number' ? String(Number(value.toFixed(6))) : value];
    }),
  );
}

/** Stops the build at a name that the calculator does not know. */
export function assertKnown(
  calculator: AnyCalculator,
  { inputs = [], results = [] }: FigureSpec,
): void {
  const known = [...knownKeys(calculator)];
  const wrong = [
    ...inputs.filter((key) => !known.some((each) => each === key || each.startsWith(`${key}-`))),
    ...results.filter((name) => calculator.results[name] === undefined),
  ];
  if (wrong.length > 0) throw new Error(`${calculator.slug} has no ${wrong.join(', ')}`);
}

/** The page of a calculator in the state of a figure. */
export function wholeAddress(calculator: AnyCalculator, texts: Texts): string {
  const origins = allFrom(texts, 'example');
  const evaluation = evaluate(calculator, texts, { lengths: 'mm', origins, demonstration: true });
  const wrong = evaluation.problems[0];
  if (wrong) throw new Error(`${calculator.slug}: ${wrong.sentence}`);
  return pageAddress(calculator.slug, toQuery(evaluation));
}
