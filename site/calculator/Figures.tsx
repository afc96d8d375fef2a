import { Errors } from './Errors.tsx';
import { Fields, type FieldHandlers } from './Fields.tsx';
import { LengthsChoice } from './LengthsChoice.tsx';
import { showsLengths } from '../../calculators/frame/lengths.ts';
import { Problems } from './Problems.tsx';
import { Leads } from './Results.tsx';
import type { State } from './state.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';

interface Props extends State, FieldHandlers {
  readonly calculator: AnyCalculator;
  readonly onDefaults: () => void;
}

/** The answer, what stands in its way, and the form: all that comes before the picture. */
export function Figures({ calculator, evaluation, onDefaults, ...handlers }: Props) {
  const { lengths, idPrefix, fromSheet } = handlers;
  return (
    <>
      <div class="calc-answer">
        <Leads {...{ calculator, evaluation, lengths }} />
      </div>
      <Problems evaluation={evaluation} idPrefix={idPrefix} />
      <form
        class="calc-form"
        aria-label={`Figures for: ${calculator.title}`}
        onSubmit={(event) => event.preventDefault()}
      >
        {showsLengths(calculator) ? <LengthsChoice lengths={lengths} idPrefix={idPrefix} /> : null}
        {fromSheet && fromSheet.keys.length > 0 ? (
          <div class="from-sheet">
            <p>
              {fromSheet.keys.length === 1
                ? 'One figure is'
                : `${fromSheet.keys.length} figures are`}{' '}
              from your sheet: {fromSheet.name}. Type over any of them; the sheet stays as it is.
            </p>
            <button type="button" onClick={onDefaults}>
              Use the defaults instead
            </button>
          </div>
        ) : null}
        <Fields fields={evaluation.fields} folded={calculator.folded} {...handlers} />
        {evaluation.errorFields.length === 0 ? null : (
          <Errors fields={evaluation.errorFields} {...handlers} />
        )}
      </form>
    </>
  );
}
