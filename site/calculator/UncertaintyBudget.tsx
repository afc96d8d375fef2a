import type { ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import { budgetLine } from '../../calculators/frame/budget-line.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { failureWords } from '../opening/load-failure.ts';
import type { State } from './state.ts';

export interface BudgetProps extends State {
  readonly calculator: AnyCalculator;
}

/** Says of the first result where its ± comes from; of all of them once somebody asks. */
export function UncertaintyBudget(props: BudgetProps) {
  const [list, setList] = useState<{ readonly All: ComponentType<BudgetProps> }>();
  const [said, say] = useState('Working it out …');
  const line = budgetLine(props.calculator, props.evaluation);
  if (line === undefined) return null;
  const fetch = async (): Promise<void> => {
    try {
      const { AllBudgets } = await import('./AllBudgets.tsx');
      setList({ All: AllBudgets });
    } catch (error) {
      say(failureWords(error));
    }
  };
  return (
    <details
      class="fold budget-fold"
      onToggle={(event) => event.currentTarget.open && !list && void fetch()}
    >
      <summary>
        <span class="fold-name">Where the ± comes from</span>
        <span class="fold-holds">{line}</span>
      </summary>
      {list ? (
        <list.All {...props} />
      ) : (
        <p>
          {line}. <span role="status">{said}</span>
        </p>
      )}
    </details>
  );
}
