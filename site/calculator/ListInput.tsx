import type { ListField } from '../../calculators/frame/fields.ts';
import { showInput } from '../../calculators/frame/format.ts';
import { units, type LengthDisplay } from '../../calculators/frame/units.ts';
import { FieldNotes, describedBy, fieldId } from './FieldNotes.tsx';

interface Props {
  readonly field: ListField;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  readonly onText: (key: string, text: string) => void;
  readonly onCommit: () => void;
}

export function ListInput({ field, lengths, idPrefix, onText, onCommit }: Props) {
  const id = fieldId(idPrefix, field.key);
  const { unit } = field.spec;
  const note =
    lengths === 'in' && units[unit].quantity === 'length'
      ? `= ${field.value.map((value) => showInput(value, unit, lengths)).join(', ')}`
      : undefined;
  return (
    <div class={`field${field.problem === undefined ? '' : ' field-wrong'}`}>
      <label for={id}>{field.spec.label}</label>
      <p class="field-help" id={`${id}-help`}>
        {field.spec.help}
      </p>
      <div class="field-row">
        <span class="field-box">
          <input
            id={id}
            name={field.key}
            type="text"
            autocomplete="off"
            spellcheck={false}
            value={field.text}
            aria-invalid={field.problem === undefined ? undefined : 'true'}
            aria-describedby={describedBy(id, field)}
            onInput={(event) => onText(field.key, event.currentTarget.value)}
            onChange={onCommit}
          />
          {units[unit].label === '' ? null : <span class="field-unit">{units[unit].label}</span>}
        </span>
      </div>
      <FieldNotes id={id} field={field} note={note} measure={field.spec.measure} />
    </div>
  );
}
