import type { ListField } from '../../calculators/frame/fields.ts';
import { fieldUnit } from '../../calculators/frame/field-unit.ts';
import { showIn } from '../../calculators/frame/format.ts';
import { proseIn } from '../../calculators/frame/prose.ts';
import { units, type LengthDisplay } from '../../calculators/frame/units.ts';
import { useState } from 'preact/hooks';
import { listToKeep, textInList } from './field-text.ts';
import { FieldNotes, Mark, describedBy, fieldId } from './FieldNotes.tsx';

interface Props {
  readonly field: ListField;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  /** Where the figures come from, when they are not typed and not the default. */
  readonly origin?: string | undefined;
  /** The word that marks figures which nobody gave. */
  readonly mark?: string | undefined;
  readonly onText: (key: string, text: string) => void;
  readonly onCommit: () => void;
}

export function ListInput({ field, lengths, idPrefix, origin, mark, onText, onCommit }: Props) {
  const id = fieldId(idPrefix, field.key);
  const { unit } = field.spec;
  const shown = fieldUnit(field.spec, lengths);
  const [draft, setDraft] = useState<{ typed: string; kept: string; lengths: LengthDisplay }>();
  const live = draft?.kept === field.text && draft.lengths === lengths ? draft : undefined;
  const note =
    shown !== unit && field.problem === undefined && field.value.length > 0
      ? `= ${field.value.map((value) => showIn(value, unit)).join(', ')}`
      : undefined;
  const type = (typed: string): void => {
    const kept = listToKeep(typed, field, lengths);
    setDraft({ typed, kept, lengths });
    onText(field.key, kept);
  };
  return (
    <div class={`field${field.problem === undefined ? '' : ' field-wrong'}`}>
      <label for={id}>{field.spec.label}</label>
      <Mark id={id} mark={mark} />
      <p class="field-help" id={`${id}-help`}>
        {proseIn(field.spec.help, lengths)}
      </p>
      <div class="field-row">
        <span class="field-box">
          <input
            id={id}
            name={field.key}
            type="text"
            autocomplete="off"
            spellcheck={false}
            value={live ? live.typed : textInList(field, lengths)}
            aria-invalid={field.problem === undefined ? undefined : 'true'}
            aria-describedby={describedBy(id, field, mark)}
            onInput={(event) => type(event.currentTarget.value)}
            onChange={onCommit}
            onKeyDown={(event) => {
              if (event.key !== 'Enter') return;
              event.preventDefault();
              if (field.origin === 'example') onText(field.key, field.text);
              onCommit();
            }}
          />
          {units[shown].label === '' ? null : <span class="field-unit">{units[shown].label}</span>}
        </span>
      </div>
      {origin === undefined ? null : <p class="field-note">{origin}</p>}
      <FieldNotes
        id={id}
        field={field}
        note={note}
        measure={field.spec.measure}
        lengths={lengths}
      />
    </div>
  );
}
