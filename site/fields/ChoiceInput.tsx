import type { ChoiceField } from '../../calculators/frame/field/fields.ts';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { FieldNotes, Mark, describedBy, fieldId } from './FieldNotes.tsx';
import { inSentence } from '../../calculators/frame/text/sentence.ts';
import { Help } from './Help.tsx';

interface Props {
  readonly field: ChoiceField;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  /** The word that says whose choice it is. */
  readonly mark?: string | undefined;
  readonly onText: (key: string, text: string) => void;
  readonly onCommit: () => void;
}

export function ChoiceInput({ field, lengths, idPrefix, mark, onText, onCommit }: Props) {
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
            <span>{proseIn(label, lengths)}</span>
          </label>
        ))}
      </div>
      <Help
        id={id}
        about={inSentence(field.label)}
        help={field.help}
        measure={field.measure}
        lengths={lengths}
      />
      <FieldNotes id={id} field={field} />
    </fieldset>
  );
}
