import { remarksOf, whyNotShared } from '../../calculators/frame/whose.ts';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { LaterPart } from './LaterPart.tsx';
import { remarksId } from './LookHere.tsx';
import { Onwards } from './Onwards.tsx';
import { Others } from './Others.tsx';
import type { Now, State } from './state.ts';
import { Tables } from './Tables.tsx';
import { Downloads } from './take-away/Downloads.tsx';
import { SendToSheet } from './take-away/SendToSheet.tsx';
import { Share } from './take-away/Share.tsx';
import { TitleBlock } from './take-away/TitleBlock.tsx';
import { UncertaintyBudget } from './UncertaintyBudget.tsx';

interface Props extends State {
  readonly calculator: AnyCalculator;
  readonly now: Now;
  readonly idPrefix: string;
}

function Parts({ calculator, evaluation, lengths, now, idPrefix }: Props) {
  const shared = { calculator, evaluation, lengths };
  const { cautions = [] } = calculator;
  const remarks = remarksOf(calculator, evaluation, lengths);
  const refused = whyNotShared(evaluation);
  return (
    <>
      {remarks.length === 0 ? null : (
        <ul class="remarks" id={remarksId(idPrefix)}>
          {remarks.map((remark) => (
            <li key={remark}>{remark}</li>
          ))}
        </ul>
      )}
      <Others {...shared} idPrefix={idPrefix} />
      <Tables {...shared} />
      <UncertaintyBudget {...shared} />
      <Onwards calculator={calculator} evaluation={evaluation} />
      {cautions.length === 0 ? null : (
        <div class="caution">
          <p class="caution-title">Take care</p>
          <ul>
            {(cautions as readonly string[]).map((caution) => (
              <li key={caution}>{proseIn(caution, lengths)}</li>
            ))}
          </ul>
        </div>
      )}
      <div class="acts">
        <Share calculator={calculator} idPrefix={idPrefix} now={now} />
        <Downloads calculator={calculator} refused={refused} now={now} />
        <SendToSheet calculator={calculator} refused={refused} now={now} />
      </div>
      <TitleBlock {...shared} now={now} />
    </>
  );
}

/** What follows the form: remarks, the other results, tables, cautions, and ways to keep them. */
export const More = (props: Props) => (
  <LaterPart class="calc-more">
    <Parts {...props} />
  </LaterPart>
);
