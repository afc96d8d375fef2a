import type { Field } from '../../calculators/frame/fields.ts';
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

/** Fields whose neighbours with the same heading are folded together. */
export function Groups({
  fields,
  side,
  ...handlers
}: FieldsProps & { readonly side: readonly string[] | undefined }) {
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
