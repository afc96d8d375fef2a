import type { ComponentChildren } from 'preact';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { whoseBrief } from '../../calculators/frame/whose.ts';
import { useFrozen } from '../../calculators/picture/redraw/frozen.ts';
import { OwnEngine, type OwnEngineProps } from './OwnEngine.tsx';
import type { State } from './state.ts';

interface Props extends State, Omit<OwnEngineProps, 'evaluation' | 'whose'> {
  readonly calculator: AnyCalculator;
  /** What comes before all else. */
  readonly children: ComponentChildren;
}

/**
 * What is to be known of the answer at once: whose it is, and what can hurt. Nothing here comes and
 * goes while the picture is dragged, which would take it from under the finger.
 */
export function Notes({ calculator, evaluation: latest, children, ...engine }: Props) {
  const evaluation = useFrozen(latest);
  const whose = whoseBrief(calculator, evaluation);
  const { care } = calculator;
  return (
    <div class="calc-notes">
      {children}
      <OwnEngine evaluation={evaluation} whose={whose} {...engine} />
      <p class="care">
        <b>Take care.</b> {care}
      </p>
    </div>
  );
}
