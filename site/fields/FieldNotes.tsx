import type { Field } from '../../calculators/frame/field/fields.ts';
import { Offers } from './Offers.tsx';

export const fieldId = (idPrefix: string, key: string): string => `${idPrefix}${key}`;

/** Ids of what describes a field: its help always, its mark and its problem when it has one. */
export function describedBy(id: string, field: Field, mark?: string, help = `${id}-help`): string {
  const marked = mark === undefined ? '' : ` ${id}-mark`;
  const doubt = field.kind === 'figure' && field.doubt !== undefined ? ` ${id}-doubt` : '';
  return `${help}${marked}${doubt}${field.problem === undefined ? '' : ` ${id}-problem`}`;
}

/** Says beside a field's name whose its figure is. */
export function Mark({ id, mark }: { readonly id: string; readonly mark: string | undefined }) {
  return mark === undefined ? null : (
    <span class={`whose-figure whose-${mark}`} id={`${id}-mark`}>
      {mark}
    </span>
  );
}

interface DoubtProps {
  readonly id: string;
  readonly doubt: string | undefined;
  readonly onType?: ((text: string) => void) | undefined;
}

/** What speaks against a figure that is taken all the same. */
export const Doubt = ({ id, doubt, onType }: DoubtProps) =>
  doubt === undefined ? null : (
    <>
      <p class="field-note field-doubt" id={`${id}-doubt`}>
        <span aria-hidden="true">▲ </span>
        {doubt}
      </p>
      <Offers sentence={doubt} onType={onType} />
    </>
  );

interface Props {
  readonly id: string;
  readonly field: Field;
  readonly note?: string | undefined;
  /** Types a text into the field, as a hand would. */
  readonly onType?: ((text: string) => void) | undefined;
}

/** What stands under a field: how it was read and what is wrong. */
export function FieldNotes({ id, field, note, onType }: Props) {
  return (
    <>
      {note === undefined ? null : <p class="field-note">{note}</p>}
      <Doubt id={id} doubt={field.kind === 'figure' ? field.doubt : undefined} onType={onType} />
      {field.problem === undefined ? null : (
        <p class="field-problem" id={`${id}-problem`}>
          <span aria-hidden="true">▲ </span>
          {field.problem}
          {field.heldOver ? ' Until then what stood here before is used.' : null}
          {field.unread ? ' Until then there is no result that rests on it.' : null}
        </p>
      )}
      <Offers sentence={field.problem} onType={onType} />
    </>
  );
}
