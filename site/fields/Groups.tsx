import type { Field } from '../../calculators/frame/field/fields.ts';
import { memo } from '../../calculators/picture/redraw/memo.ts';
import { Fields, type FieldsProps } from './Fields.tsx';
import { Group } from './Group.tsx';

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

interface GroupProps extends FieldsProps {
  readonly heading: string;
  readonly side: boolean;
}

/** Drawn anew only when one of its fields has changed: most edits touch one group of several. */
const OneGroup = memo(({ heading, side, ...inside }: GroupProps) => {
  const { fields, lengths, marked = false } = inside;
  return (
    <Group {...{ heading, side, fields, lengths, marked }}>
      <Fields {...inside} />
    </Group>
  );
}, 5);

/** Fields whose neighbours with the same heading are folded together. */
export function Groups({
  fields,
  side,
  ...handlers
}: FieldsProps & { readonly side: readonly string[] | undefined }) {
  return (
    <>
      {inGroups(fields).map(({ heading, fields: members }) =>
        heading === undefined ? (
          <Fields key={members[0]!.key} fields={members} {...handlers} />
        ) : (
          <OneGroup
            key={heading}
            {...{ heading, fields: members, ...handlers }}
            side={side?.includes(heading) ?? false}
          />
        ),
      )}
    </>
  );
}
