import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import type { Field, FigureField } from '../../calculators/frame/field/fields.ts';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import { units } from '../../calculators/frame/text/units.ts';
import { memo } from '../../calculators/picture/redraw/memo.ts';
import { fieldId, FieldNotes } from './FieldNotes.tsx';
import type { FieldHandlers } from './Fields.tsx';
import { FigureInRow } from './FigureInput.tsx';
import { readAs } from './field-text.ts';

type InRow = NonNullable<FigureField['spec']['inRow']>;
type RowField = FigureField & { readonly spec: { readonly inRow: InRow } };

const isInRow = (field: Field): field is RowField =>
  field.kind === 'figure' && field.spec.inRow !== undefined;

/** Fields in order, neighbours of the same rows gathered into one list. */
export function inRows(fields: readonly Field[]): (Field | RowField[])[] {
  const parts: (Field | RowField[])[] = [];
  for (const field of fields) {
    const last = parts.at(-1);
    if (!isInRow(field)) parts.push(field);
    else if (Array.isArray(last) && last[0]!.spec.inRow.of === field.spec.inRow.of) {
      last.push(field);
    } else parts.push([field]);
  }
  return parts;
}

interface Props extends FieldHandlers {
  readonly fields: readonly RowField[];
  readonly markOf: (field: Field) => string | undefined;
}

const helpOf = (idPrefix: string, { key }: RowField): string =>
  `${idPrefix}${key.replace(/-\d+$/, '')}-help`;

function Row({ fields: row, markOf, marked = false, ...handlers }: Props) {
  const { lengths, idPrefix } = handlers;
  const { of, index } = row[0]!.spec.inRow;
  const markIn = (field: RowField): string | undefined => (marked ? markOf(field) : undefined);
  const wrong = row.some(({ problem }) => problem !== undefined);
  const example = row.some((field) => markIn(field) === 'example');
  return (
    <div
      class={`field field-in-row${wrong ? ' field-wrong' : ''}`}
      role="group"
      aria-label={`${of} ${String(index)}`}
    >
      <div class="field-line">
        <span class="field-number" aria-hidden="true">
          {index}
          {example ? <span class="whose-figure whose-example">example</span> : null}
        </span>
        {row.map((field) => (
          <FigureInRow
            key={field.key}
            {...handlers}
            field={field}
            mark={markIn(field)}
            help={helpOf(idPrefix, field)}
          />
        ))}
      </div>
      {row.map((field) => (
        <FieldNotes
          key={field.key}
          id={fieldId(idPrefix, field.key)}
          field={field}
          note={readAs(field, lengths)}
        />
      ))}
    </div>
  );
}

/** Drawn anew only when one of its fields has changed: there may be forty rows. */
const OneRow = memo(Row, 5);

/** Several series side by side, a row for each index: short boxes under headings said once. */
export function FieldRows({ fields, ...shared }: Props) {
  const { lengths, idPrefix } = shared;
  const heads = [...new Map(fields.map((field) => [field.spec.inRow.heading, field])).values()];
  const indices = [...new Set(fields.map(({ spec }) => spec.inRow.index))];
  return (
    <div class="field-rows">
      <div class="field-line field-heads" aria-hidden="true">
        <span class="field-number">No.</span>
        {heads.map(({ key, spec }) => {
          const { label } = units[fieldUnit(spec, lengths)];
          return (
            <span key={key} class={spec.whole ? 'field-short' : undefined}>
              {label === '' ? spec.inRow.heading : `${spec.inRow.heading}, ${label}`}
            </span>
          );
        })}
      </div>
      {indices.map((index) => (
        <OneRow
          key={index}
          fields={fields.filter(({ spec }) => spec.inRow.index === index)}
          {...shared}
        />
      ))}
      {heads.map((field) => (
        <p class="field-help" id={helpOf(idPrefix, field)} key={field.key}>
          <b>{field.spec.inRow.heading}:</b> {proseIn(field.spec.help, lengths)}
        </p>
      ))}
      {heads.map(({ key, spec }) =>
        spec.measure === undefined ? null : (
          <details class="field-measure" key={key}>
            <summary>How to measure it</summary>
            <p>{proseIn(spec.measure, lengths)}</p>
          </details>
        ),
      )}
    </div>
  );
}
