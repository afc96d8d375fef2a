import { useState } from 'preact/hooks';
import { fixed } from '../../calculators/frame/format.ts';
import type { FigureField } from '../../calculators/frame/fields.ts';
import { onStep } from '../../calculators/picture/steps.ts';
import {
  displayUnit,
  toDisplay,
  units,
  type LengthDisplay,
} from '../../calculators/frame/units.ts';
import { FieldNotes, Mark, describedBy, fieldId } from './FieldNotes.tsx';
import { readAs, textInField, textToKeep } from './field-text.ts';

interface Props {
  readonly field: FigureField;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  /** Where the figure comes from, when it is not typed and not the default. */
  readonly origin?: string | undefined;
  /** The word that marks a figure which nobody gave. */
  readonly mark?: string | undefined;
  readonly onText: (key: string, text: string) => void;
  readonly onCommit: () => void;
}

interface Draft {
  readonly typed: string;
  readonly kept: string;
  readonly lengths: LengthDisplay;
}

/** A step that is a round figure in the unit shown: 0.05 mm steps as 0.002 in. */
function shownStep(field: FigureField, lengths: LengthDisplay): number {
  const step = toDisplay(field.spec.step, field.spec.unit, lengths);
  return Number(step.toPrecision(1));
}

export function FigureInput({ field, lengths, idPrefix, origin, mark, onText, onCommit }: Props) {
  const [draft, setDraft] = useState<Draft>();
  const { key, spec } = field;
  const id = fieldId(idPrefix, key);
  const shown = displayUnit(spec.unit, lengths);
  const live = draft?.kept === field.text && draft.lengths === lengths ? draft : undefined;

  const type = (typed: string): void => {
    const kept = textToKeep(typed, field, lengths);
    setDraft({ typed, kept, lengths });
    onText(key, kept);
  };
  const step = (by: number): void => {
    const size = shownStep(field, lengths);
    const from = field.value ?? spec.min;
    const low = toDisplay(spec.min, spec.unit, lengths);
    const high = toDisplay(spec.max, spec.unit, lengths);
    const next = onStep(toDisplay(from, spec.unit, lengths) + by * size, size);
    type(String(Number(fixed(Math.min(high, Math.max(low, next)), 9).replace('−', '-'))));
  };
  const keys = (event: KeyboardEvent): void => {
    if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      step(event.key === 'ArrowUp' ? 1 : -1);
    } else if (event.key === 'Enter') {
      event.preventDefault();
      // Confirmed as it stands, the example's figure becomes the reader's.
      if (field.origin === 'example') onText(key, field.text);
      onCommit();
    }
  };
  const name = spec.label.charAt(0).toLowerCase() + spec.label.slice(1);

  return (
    <div class={`field${field.problem === undefined ? '' : ' field-wrong'}`}>
      <label for={id}>{spec.label}</label>
      <Mark id={id} mark={mark} />
      <p class="field-help" id={`${id}-help`}>
        {spec.help}
      </p>
      <div class="field-row">
        <button type="button" class="step" aria-label={`Less ${name}`} onClick={() => step(-1)}>
          −
        </button>
        <span class="field-box">
          <input
            id={id}
            name={key}
            type="text"
            inputMode="decimal"
            autocomplete="off"
            autocapitalize="off"
            spellcheck={false}
            value={live ? live.typed : textInField(field, lengths)}
            aria-invalid={field.problem === undefined ? undefined : 'true'}
            aria-describedby={describedBy(id, field, mark)}
            onInput={(event) => type(event.currentTarget.value)}
            onChange={onCommit}
            onKeyDown={keys}
          />
          {units[shown].label === '' ? null : <span class="field-unit">{units[shown].label}</span>}
        </span>
        <button type="button" class="step" aria-label={`More ${name}`} onClick={() => step(1)}>
          +
        </button>
      </div>
      {origin === undefined ? null : <p class="field-note">{origin}</p>}
      <FieldNotes id={id} field={field} note={readAs(field, lengths)} measure={spec.measure} />
    </div>
  );
}
