import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { leadingRemarks } from '../../calculators/frame/whose.ts';
import { useFrozen } from '../../calculators/picture/redraw/frozen.ts';
import type { State } from './state.ts';

interface Props extends State {
  readonly calculator: AnyCalculator;
  readonly idPrefix: string;
}

/** Id of the list of all remarks. */
export const remarksId = (idPrefix: string): string => `${idPrefix}remarks`;

/** What nobody is to go by the answer without: how each such remark begins, and a way to the rest of it. */
export function LookHere({ calculator, evaluation: latest, lengths, idPrefix }: Props) {
  const evaluation = useFrozen(latest);
  return (
    <>
      {leadingRemarks(calculator, evaluation, lengths).map((remark) => (
        <p class="look-here" key={remark}>
          <b>Look here.</b> <a href={`#${remarksId(idPrefix)}`}>{remark}</a>
        </p>
      ))}
    </>
  );
}
