import type { Field } from '../../calculators/frame/field/fields.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { memo } from '../../calculators/picture/redraw/memo.ts';
import { ChoiceInput } from './ChoiceInput.tsx';
import { FieldRows, inRows } from './FieldRows.tsx';
import { FigureInput } from './FigureInput.tsx';
import { ListInput } from './ListInput.tsx';
import { markOf } from './whose-mark.ts';

export interface FieldHandlers {
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  /** Whether it is said beside each figure whose it is. */
  readonly marked?: boolean;
  readonly onText: (key: string, text: string) => void;
  readonly onCommit: () => void;
}

export interface FieldsProps extends FieldHandlers {
  readonly fields: readonly Field[];
}

type OneProps = FieldHandlers & { readonly field: Field };

function FieldOfAnyKind({ field, marked = false, ...handlers }: OneProps) {
  const mark = marked ? markOf(field) : undefined;
  if (field.kind === 'choice') return <ChoiceInput {...{ field, mark, ...handlers }} />;
  if (field.kind === 'list') return <ListInput {...{ field, mark, ...handlers }} />;
  return <FigureInput {...{ field, mark, ...handlers }} />;
}

/** Drawn anew only when something in it has changed: most edits touch one field of many. */
const OneField = memo(FieldOfAnyKind, 3);

/** Fields one below the other. */
export function Fields({ fields, ...handlers }: FieldsProps) {
  return (
    <>
      {inRows(fields).map((part) =>
        Array.isArray(part) ? (
          <FieldRows key={part[0]!.key} fields={part} markOf={markOf} {...handlers} />
        ) : (
          <OneField key={part.key} field={part} {...handlers} />
        ),
      )}
    </>
  );
}
