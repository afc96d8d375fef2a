import { leadLines } from '../../calculators/frame/summary.ts';
import { Errors } from '../fields/PlusMinus.tsx';
import { Fields, type FieldHandlers } from '../fields/Fields.tsx';
import { LengthsChoice } from '../fields/LengthsChoice.tsx';
import { showsLengths } from '../../calculators/frame/lengths.ts';
import { Problems, problemLines } from '../fields/Problems.tsx';
import { Leads } from './Results.tsx';
import { Spoken } from '../browser/Spoken.tsx';
import type { State } from './state.ts';
import { whoseAnswer } from '../../calculators/frame/whose.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';

interface Props extends State, FieldHandlers {
  readonly calculator: AnyCalculator;
  readonly onDefaults: () => void;
}

/** The answer, what stands in its way, and the form: all that comes before the picture. */
export function Figures({ calculator, evaluation, onDefaults, ...handlers }: Props) {
  const { lengths, idPrefix, sheet } = handlers;
  const filled = evaluation.fields.filter(({ origin }) => origin === 'sheet').length;
  const invented = evaluation.fields.some(({ given, origin }) => given && origin === 'example');
  const marked = !evaluation.demonstration;
  const whose = whoseAnswer(calculator, evaluation);
  const problems = problemLines(evaluation);
  return (
    <>
      <div class="calc-answer" data-part="answer">
        <Leads {...{ calculator, evaluation, lengths }} />
        <Spoken
          lines={problems.length > 0 ? problems : leadLines(calculator, evaluation, lengths)}
        />
      </div>
      <div class="calc-notes">
        {whose === undefined ? null : <p class="whose">{whose}</p>}
        <Problems evaluation={evaluation} idPrefix={idPrefix} />
      </div>
      <form
        class="calc-form"
        data-part="form"
        aria-label={`Figures for: ${calculator.title}`}
        onSubmit={(event) => event.preventDefault()}
      >
        {showsLengths(calculator) ? <LengthsChoice lengths={lengths} idPrefix={idPrefix} /> : null}
        {sheet !== undefined && (filled > 0 || invented) ? (
          <div class="from-sheet">
            {filled > 0 ? (
              <p>
                {filled === 1 ? 'One figure is' : `${filled} figures are`} from your sheet: {sheet}.
                Type over any of them; the sheet stays as it is.
              </p>
            ) : (
              <p>The figures are those of the invented engine of your sheet: {sheet}.</p>
            )}
            <button type="button" onClick={onDefaults}>
              Use the defaults instead
            </button>
          </div>
        ) : null}
        <Fields
          {...{ marked, ...handlers }}
          fields={evaluation.fields}
          folded={calculator.folded}
        />
        {evaluation.errorFields.length === 0 ? null : (
          <Errors fields={evaluation.errorFields} {...handlers} />
        )}
      </form>
    </>
  );
}
