import type { ListField } from '../../calculators/frame/field/fields.ts';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import { inputDigits, showIn } from '../../calculators/frame/text/format.ts';
import { units, type LengthDisplay } from '../../calculators/frame/text/units.ts';
import { useState } from 'preact/hooks';
import { inSentence } from '../../calculators/frame/text/sentence.ts';
import { bringsUnit, listToKeep, textInList } from './field-text.ts';
import { Help } from './Help.tsx';
import { toNextBox } from './next-box.ts';
import { FieldNotes, Mark, describedBy, fieldId } from './FieldNotes.tsx';

interface Props {
  readonly field: ListField;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  /** The word that says whose figures they are. */
  readonly mark?: string | undefined;
  readonly onText: (key: string, text: string) => void;
  readonly onCommit: () => void;
}

/** A box on a phone may cut more figures than these at its edge: all of them stand below it too. */
const IN_SIGHT = 3;

export function ListInput({ field, lengths, idPrefix, mark, onText, onCommit }: Props) {
  const id = fieldId(idPrefix, field.key);
  const { unit } = field.spec;
  const shown = fieldUnit(field.spec, lengths);
  const [draft, setDraft] = useState<{ typed: string; kept: string; lengths: LengthDisplay }>();
  const live = draft?.kept === field.text && draft.lengths === lengths ? draft : undefined;
  const text = live ? live.typed : textInList(field, lengths);
  const figures = field.problem === undefined ? field.value : [];
  const note =
    shown !== unit && figures.length > 0
      ? `= ${figures.map((value) => showIn(value, unit)).join(', ')}`
      : figures.length > IN_SIGHT
        ? `${String(figures.length)} figures: ${figures.map((value) => inputDigits(value, unit)).join(', ')}`
        : undefined;
  const type = (typed: string): void => {
    const kept = listToKeep(typed, field, lengths);
    setDraft({ typed, kept, lengths });
    onText(field.key, kept);
  };
  return (
    <div class={`field field-list${field.problem === undefined ? '' : ' field-wrong'}`}>
      <span class="field-name">
        <label for={id}>{field.spec.label}</label>
        <Mark id={id} mark={mark} />
      </span>
      <span class="field-row">
        <span class={text === '' ? 'field-box field-empty' : 'field-box'}>
          <input
            id={id}
            name={field.key}
            type="text"
            autocomplete="off"
            enterkeyhint="next"
            spellcheck={false}
            value={text}
            aria-invalid={field.problem === undefined ? undefined : 'true'}
            aria-describedby={describedBy(id, field, mark)}
            onInput={(event) => type(event.currentTarget.value)}
            onChange={onCommit}
            onKeyDown={(event) => {
              if (event.key !== 'Enter') return;
              event.preventDefault();
              const isConfirmed = field.origin === 'example';
              if (isConfirmed) onText(field.key, field.text);
              onCommit();
              if (!isConfirmed && field.problem === undefined) toNextBox(event.currentTarget);
            }}
          />
          {units[shown].label === '' || bringsUnit(text) ? null : (
            <span class="field-unit">{units[shown].label}</span>
          )}
        </span>
      </span>
      <Help
        id={id}
        about={inSentence(field.spec.label)}
        help={field.spec.help}
        measure={field.spec.measure}
        lengths={lengths}
      />
      <FieldNotes id={id} field={field} note={note} />
    </div>
  );
}
