import type { Field } from '../../calculators/frame/fields.ts';
import { proseIn } from '../../calculators/frame/prose.ts';
import type { LengthDisplay } from '../../calculators/frame/units.ts';

export const fieldId = (idPrefix: string, key: string): string => `${idPrefix}${key}`;

/** Ids of what describes a field: its help always, its mark and its problem when it has one. */
export function describedBy(id: string, field: Field, mark?: string): string {
  const marked = mark === undefined ? '' : ` ${id}-mark`;
  return `${id}-help${marked}${field.problem === undefined ? '' : ` ${id}-problem`}`;
}

/** Says beside a field's name that nobody gave its figure. */
export function Mark({ id, mark }: { readonly id: string; readonly mark: string | undefined }) {
  return mark === undefined ? null : (
    <span class="whose-figure" id={`${id}-mark`}>
      {mark}
    </span>
  );
}

interface Props {
  readonly id: string;
  readonly field: Field;
  readonly note?: string | undefined;
  readonly measure?: string | undefined;
  readonly lengths: LengthDisplay;
}

/** What stands under a field: how it was read, what is wrong, how to measure it. */
export function FieldNotes({ id, field, note, measure, lengths }: Props) {
  return (
    <>
      {note === undefined ? null : <p class="field-note">{note}</p>}
      {field.problem === undefined ? null : (
        <p class="field-problem" id={`${id}-problem`}>
          <span aria-hidden="true">▲ </span>
          {field.problem}
          {field.heldOver ? ' Until then the last good value is used.' : null}
          {field.unread ? ' Until then there is no result that rests on it.' : null}
        </p>
      )}
      {measure === undefined ? null : (
        <details class="field-measure">
          <summary>How to measure it</summary>
          <p>{proseIn(measure, lengths)}</p>
        </details>
      )}
    </>
  );
}
