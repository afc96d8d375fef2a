import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Field } from '../../calculators/frame/fields.ts';
import { isAssumed, isExample } from '../../calculators/frame/whose.ts';
import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { ChoiceInput } from './ChoiceInput.tsx';
import { FigureInput } from './FigureInput.tsx';
import { ListInput } from './ListInput.tsx';
import { memo } from '../../calculators/picture/memo.ts';

export interface FieldHandlers {
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  /** Name of the engine whose sheet fills some of the fields. */
  readonly sheet?: string | undefined;
  /** Whether a figure that nobody gave is marked as the example's. */
  readonly marked?: boolean;
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

/** A word for a figure that nobody gave. */
function markOf(field: Field): string | undefined {
  if (field.problem !== undefined) return undefined;
  if (isExample(field)) return 'example';
  return isAssumed(field) ? 'assumed' : undefined;
}

type OneProps = FieldHandlers & { readonly field: Field };

function FieldOfAnyKind({ field, sheet, marked = false, ...handlers }: OneProps) {
  const mark = marked ? markOf(field) : undefined;
  if (field.kind === 'choice') return <ChoiceInput {...{ field, mark, ...handlers }} />;
  const origin =
    field.origin === 'sheet' && sheet !== undefined ? `From your sheet: ${sheet}` : undefined;
  const shared = { mark, origin, ...handlers };
  if (field.kind === 'list') return <ListInput field={field} {...shared} />;
  return <FigureInput field={field} {...shared} />;
}

/** Drawn anew only when something in it has changed: most edits touch one field of many. */
const OneField = memo(FieldOfAnyKind, 3);

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
