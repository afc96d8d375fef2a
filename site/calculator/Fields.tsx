import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Field } from '../../calculators/frame/fields.ts';
import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { ChoiceInput } from './ChoiceInput.tsx';
import { FigureInput } from './FigureInput.tsx';
import { ListInput } from './ListInput.tsx';
import { steady } from '../../calculators/picture/steady.ts';

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
  /** Headings of groups that stay folded unless one of their fields needs attention. */
  readonly folded?: readonly string[] | undefined;
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

type OneProps = FieldHandlers & { readonly field: Field };

function FieldOfAnyKind({ field, fromSheet, ...handlers }: OneProps) {
  if (field.kind === 'choice') return <ChoiceInput field={field} {...handlers} />;
  if (field.kind === 'list') return <ListInput field={field} {...handlers} />;
  const origin = fromSheet?.keys.includes(field.key)
    ? `From your sheet: ${fromSheet.name}`
    : undefined;
  return <FigureInput field={field} origin={origin} {...handlers} />;
}

/** Drawn anew only when something in it has changed: most edits touch one field of many. */
const OneField = steady(FieldOfAnyKind, 3);

interface FoldedProps {
  readonly heading: string;
  /** Whether a field inside needs attention, which opens it. */
  readonly wrong: boolean;
  readonly children: ComponentChildren;
}

/** A group that stays folded until it is asked for. What has been opened is never shut again. */
function Folded({ heading, wrong, children }: FoldedProps) {
  const [open, setOpen] = useState(wrong);
  useEffect(() => {
    if (wrong) setOpen(true);
  }, [wrong]);
  return (
    <details class="folded" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{heading}</summary>
      {children}
    </details>
  );
}

/** The fields, neighbours with the same heading set together. */
export function Fields({ fields, folded = [], ...handlers }: Props) {
  return (
    <>
      {inGroups(fields).map(({ heading, fields: members }) => {
        const inside = members.map((field) => (
          <OneField key={field.key} field={field} {...handlers} />
        ));
        if (heading === undefined) return inside;
        const wrong = members.some(({ problem }) => problem !== undefined);
        return folded.includes(heading) ? (
          <Folded key={heading} heading={heading} wrong={wrong}>
            {inside}
          </Folded>
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
