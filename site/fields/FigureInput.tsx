import { useState } from 'preact/hooks';
import { edgeIn } from '../../calculators/frame/format.ts';
import { fieldUnit } from '../../calculators/frame/field-unit.ts';
import { plainText, type FigureField } from '../../calculators/frame/fields.ts';
import { onStep } from '../../calculators/maths/numeric/steps.ts';
import { proseIn } from '../../calculators/frame/prose.ts';
import { toShown, units, type LengthDisplay } from '../../calculators/frame/units.ts';
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

export function FigureInput({ field, lengths, idPrefix, origin, mark, onText, onCommit }: Props) {
  const [draft, setDraft] = useState<Draft>();
  const { key, spec } = field;
  const id = fieldId(idPrefix, key);
  const shown = fieldUnit(spec, lengths);
  const live = draft?.kept === field.text && draft.lengths === lengths ? draft : undefined;

  const type = (typed: string): void => {
    const kept = textToKeep(typed, field, lengths);
    setDraft({ typed, kept, lengths });
    onText(key, kept);
  };
  const step = (by: number): void => {
    // A round figure in the unit shown: 0.05 mm steps as 2 thou.
    const size = Number(toShown(spec.step, shown).toPrecision(1));
    const next = onStep(toShown(field.value ?? spec.min, shown) + by * size, size);
    const low = edgeIn(spec.min, shown, 1, spec.step);
    const high = edgeIn(spec.max, shown, -1, spec.step);
    type(plainText(Math.min(high, Math.max(low, next))));
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
        {proseIn(spec.help, lengths)}
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
      <FieldNotes
        id={id}
        field={field}
        note={readAs(field, lengths)}
        measure={spec.measure}
        lengths={lengths}
      />
    </div>
  );
}
