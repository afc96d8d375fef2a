import type { Field } from '../../calculators/frame/fields.ts';
import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { ChoiceInput } from './ChoiceInput.tsx';
import { FigureInput } from './FigureInput.tsx';
import { ListInput } from './ListInput.tsx';

export interface FieldHandlers {
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  /** The fields that hold figures of the reader's own engine. */
  readonly fromSheet?: { readonly name: string; readonly keys: readonly string[] } | undefined;
  readonly onText: (key: string, text: string) => void;
  readonly onCommit: () => void;
}

interface Props extends FieldHandlers {
  readonly fields: readonly Field[];
}

interface Group {
  readonly heading: string | undefined;
  readonly fields: Field[];
}

const groupOf = (field: Field): string | undefined =>
  field.kind === 'choice' ? field.group : field.spec.group;

function inGroups(fields: readonly Field[]): Group[] {
  const groups: Group[] = [];
  for (const field of fields) {
    const heading = groupOf(field);
    const last = groups.at(-1);
    if (last && last.heading === heading) last.fields.push(field);
    else groups.push({ heading, fields: [field] });
  }
  return groups;
}

function OneField({ field, fromSheet, ...handlers }: FieldHandlers & { readonly field: Field }) {
  if (field.kind === 'choice') return <ChoiceInput field={field} {...handlers} />;
  if (field.kind === 'list') return <ListInput field={field} {...handlers} />;
  const origin = fromSheet?.keys.includes(field.key)
    ? `From your sheet: ${fromSheet.name}`
    : undefined;
  return <FigureInput field={field} origin={origin} {...handlers} />;
}

/** The fields, neighbours with the same heading set together. */
export function Fields({ fields, ...handlers }: Props) {
  return (
    <>
      {inGroups(fields).map(({ heading, fields: members }) => {
        const inside = members.map((field) => (
          <OneField key={field.key} field={field} {...handlers} />
        ));
        return heading === undefined ? (
          inside
        ) : (
          <fieldset class="group" key={heading}>
            <legend>{heading}</legend>
            {inside}
          </fieldset>
        );
      })}
    </>
  );
}
