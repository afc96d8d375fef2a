import type { ChoiceField } from '../../calculators/frame/fields.ts';
import { FieldNotes, Mark, describedBy, fieldId } from './FieldNotes.tsx';

interface Props {
  readonly field: ChoiceField;
  readonly idPrefix: string;
  /** The word that marks a choice which nobody made. */
  readonly mark?: string | undefined;
  readonly onText: (key: string, text: string) => void;
  readonly onCommit: () => void;
}

export function ChoiceInput({ field, idPrefix, mark, onText, onCommit }: Props) {
  const id = fieldId(idPrefix, field.key);
  const choose = (value: string): void => {
    onText(field.key, value);
    onCommit();
  };
  return (
    <fieldset
      class={`field field-choice${field.problem === undefined ? '' : ' field-wrong'}`}
      id={id}
      aria-describedby={describedBy(id, field, mark)}
    >
      <legend>{field.label}</legend>
      <Mark id={id} mark={mark} />
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
              checked={!field.unread && field.value === value}
              onChange={() => choose(value)}
              onClick={() => {
                // Pressed as it stands, the example's choice becomes the reader's.
                if (field.value === value && field.origin === 'example') choose(value);
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
