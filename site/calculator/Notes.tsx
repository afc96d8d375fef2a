import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { whoseAnswer } from '../../calculators/frame/whose.ts';
import { Problems } from '../fields/Problems.tsx';
import { OwnEngine, type OwnEngineProps } from './OwnEngine.tsx';
import type { State } from './state.ts';

interface Props extends State, Omit<OwnEngineProps, 'evaluation'> {
  readonly calculator: AnyCalculator;
  readonly idPrefix: string;
  readonly ownsAddress: boolean;
}

/** What is to be known of the answer at once: whose it is, what stands in its way, what can hurt. */
export function Notes({ calculator, evaluation, idPrefix, ownsAddress, ...engine }: Props) {
  const whose = whoseAnswer(calculator, evaluation);
  const { care } = calculator;
  return (
    <div class="calc-notes">
      <div class="whose-line">
        {whose === undefined ? null : <p class="whose">{whose}</p>}
        {ownsAddress ? <OwnEngine evaluation={evaluation} {...engine} /> : null}
      </div>
      <Problems evaluation={evaluation} idPrefix={idPrefix} />
      {care === undefined ? null : (
        <p class="care">
          <b>Take care.</b> {care}
        </p>
      )}
    </div>
  );
}
