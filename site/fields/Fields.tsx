import type { Field } from '../../calculators/frame/fields.ts';
import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { memo } from '../../calculators/picture/memo.ts';
import { ChoiceInput } from './ChoiceInput.tsx';
import { FieldRows, inRows } from './FieldRows.tsx';
import { FigureInput } from './FigureInput.tsx';
import { Group } from './Group.tsx';
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

interface Props extends FieldHandlers {
  readonly fields: readonly Field[];
}

const groupOf = (field: Field): string | undefined =>
  field.kind === 'choice' ? field.group : field.spec.group;

interface Members {
  readonly heading: string | undefined;
  readonly fields: Field[];
}

function inGroups(fields: readonly Field[]): Members[] {
  const groups: Members[] = [];
  for (const field of fields) {
    const heading = groupOf(field);
    const last = groups.at(-1);
    if (last && last.heading === heading) last.fields.push(field);
    else groups.push({ heading, fields: [field] });
  }
  return groups;
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
export function Fields({ fields, ...handlers }: Props) {
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

/** Fields whose neighbours with the same heading are folded together. */
export function Groups({
  fields,
  side,
  ...handlers
}: Props & { readonly side: readonly string[] | undefined }) {
  return (
    <>
      {inGroups(fields).map(({ heading, fields: members }) => {
        const inside = <Fields key={members[0]!.key} fields={members} {...handlers} />;
        if (heading === undefined) return inside;
        const { lengths, marked = false } = handlers;
        return (
          <Group
            key={heading}
            {...{ heading, fields: members, lengths, marked }}
            side={side?.includes(heading) ?? false}
          >
            {inside}
          </Group>
        );
      })}
    </>
  );
}
