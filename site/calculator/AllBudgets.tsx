import { uncertaintyBudgets } from '../../calculators/frame/uncertainty-budget.ts';
import { percent } from '../../calculators/frame/budget-line.ts';
import { FieldName } from '../fields/FieldName.tsx';
import type { BudgetProps } from './UncertaintyBudget.tsx';

/** For each result the readings that make up its ±, the worst first, and what a better one would do. */
export function AllBudgets({ calculator, evaluation, lengths }: BudgetProps) {
  return (
    <>
      <p>
        Each per cent is a share of the variance, the square of the ±. Read the first of a list anew
        before any other.
      </p>
      {uncertaintyBudgets(calculator, evaluation, lengths).map(
        ({ name, label, text, shares, better }) => (
          <section class="budget" key={name}>
            <h3>{`${label}: ${text}`}</h3>
            <ol>
              {shares.map((part) => (
                <li key={part.label}>
                  <span>
                    <FieldName label={part.label} />
                  </span>
                  <svg viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
                    <rect width={part.share * 100} height="8" />
                  </svg>
                  <span>{percent(part.share)}</span>
                </li>
              ))}
            </ol>
            {better === undefined ? null : (
              <p>{`${better.label} read twice as well, ± ${better.error}: ${better.text}.`}</p>
            )}
          </section>
        ),
      )}
    </>
  );
}
