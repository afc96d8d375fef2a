import type { ChoiceField } from '../../calculators/frame/fields.ts';
import { FieldNotes, describedBy, fieldId } from './FieldNotes.tsx';

interface Props {
  readonly field: ChoiceField;
  readonly idPrefix: string;
  readonly onText: (key: string, text: string) => void;
  readonly onCommit: () => void;
}

export function ChoiceInput({ field, idPrefix, onText, onCommit }: Props) {
  const id = fieldId(idPrefix, field.key);
  return (
    <fieldset
      class={`field field-choice${field.problem === undefined ? '' : ' field-wrong'}`}
      id={id}
      aria-describedby={describedBy(id, field)}
    >
      <legend>{field.label}</legend>
      <p class="field-help" id={`${id}-help`}>
        {field.help}
      </p>
      <div class="options">
        {Object.entries(field.options).map(([value, label]) => (
          <label class="option" key={value}>
            <input
              type="radio"
              name={`${idPrefix}${field.key}`}
              value={value}
              checked={field.value === value}
              onChange={() => {
                onText(field.key, value);
                onCommit();
              }}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
      <FieldNotes id={id} field={field} measure={field.measure} />
    </fieldset>
  );
}
