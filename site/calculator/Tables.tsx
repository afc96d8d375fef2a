import { Fragment, type ComponentChild } from 'preact';
import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import { calledAs, inputLines, rowName } from '../../calculators/frame/summary.ts';
import { isLongTable } from './long-table.ts';
import { inSentence } from '../../calculators/frame/text/sentence.ts';
import { capital } from '../../calculators/maths/numeric/capital.ts';
import {
  Absent,
  type AnyCalculator,
  type ResultSpec,
  type TableSpec,
} from '../../calculators/frame/types.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import {
  assumedLimits,
  judgesExample,
  NOT_YET,
  restsOnExample,
  verdictOf,
  whoseBeside,
} from '../../calculators/frame/whose.ts';
import { Figure } from './Figure.tsx';

interface Props {
  readonly calculator: AnyCalculator;
  readonly evaluation: Evaluation;
  readonly lengths: LengthDisplay;
}

type Named = readonly [name: string, spec: ResultSpec];

const specs = (calculator: AnyCalculator): Named[] =>
  Object.entries<ResultSpec>(calculator.results);

/** With so many columns of figures a row is stacked on a phone, each figure below its label. */
const LEAST_TO_STACK = 3;

interface Row {
  readonly suffix: string;
  readonly index: number;
  readonly inner?: number;
}

function rowsOf(evaluation: Evaluation, columns: readonly Named[]): Row[] {
  for (const [name] of columns) {
    const value = evaluation.results[name];
    if (value === undefined || value instanceof Absent || typeof value === 'number') continue;
    return value.flatMap<Row>((entry, i) =>
      typeof entry === 'number'
        ? [{ suffix: String(i + 1), index: i + 1 }]
        : entry.map((_, j) => ({ suffix: `${i + 1}-${j + 1}`, index: i + 1, inner: j + 1 })),
    );
  }
  return [];
}

function cell(evaluation: Evaluation, name: string, { index, inner }: Row): number | undefined {
  const value = evaluation.results[name];
  if (value === undefined || value instanceof Absent || typeof value === 'number') return undefined;
  const entry = value[index - 1];
  return typeof entry === 'number' || entry === undefined ? entry : entry[(inner ?? 1) - 1];
}

function partsOf(id: string, { calculator, evaluation }: Pick<Props, 'calculator' | 'evaluation'>) {
  const columns = specs(calculator).filter(([, spec]) => spec.table === id);
  return { columns, rows: rowsOf(evaluation, columns) };
}

/** Whose a column is: also where the answer above names the figures, which is out of sight here. */
const besideColumn = (
  calculator: AnyCalculator,
  evaluation: Evaluation,
  name: string,
): string | undefined =>
  whoseBeside(calculator, evaluation, name) ??
  (restsOnExample(calculator, evaluation, name) ? 'with figures of the example' : undefined);

/** Whose the columns of a table are: what holds for several alike is said once, before their names. */
function whoseColumns(
  { calculator, evaluation, lengths }: Props,
  columns: readonly Named[],
): string[] {
  const labels = new Map<string, string[]>();
  for (const [name] of columns) {
    const words = besideColumn(calculator, evaluation, name);
    if (words === undefined) continue;
    const { label } = calledAs(calculator, evaluation, name, lengths);
    labels.set(words, [...(labels.get(words) ?? []), inSentence(label)]);
  }
  return [...labels].map(
    ([words, of]) =>
      `${capital(words)}${of.length === columns.length ? '' : `: ${of.join(', ')}`}.`,
  );
}

/** What a table holds, and by what its verdicts judge that nobody gave. */
function captionOf(
  { calculator, evaluation, lengths }: Props,
  id: string,
  table: TableSpec,
): string {
  const said = proseIn(table.caption, lengths);
  const caption = judgesExample(calculator, evaluation, id) ? `${said}, in this example` : said;
  const assumed = inputLines(assumedLimits(calculator, evaluation, id, lengths), lengths);
  return assumed.length === 0
    ? caption
    : `${caption}. Assumed here: ${assumed.map(({ label, text }) => `${inSentence(label)} ${text}`).join(', ')}`;
}

/** What a row is of: on a card its whole name, under the column's heading what that does not say. */
function rowHead(heading: string, name: string): ComponentChild {
  const kind = `${heading} `;
  if (!name.startsWith(kind)) return name;
  return [<span class="row-kind">{kind}</span>, name.slice(kind.length)];
}

function Table({
  id,
  table,
  calculator,
  evaluation,
  lengths,
}: Props & { id: string; table: TableSpec }) {
  const { columns, rows } = partsOf(id, { calculator, evaluation });
  if (rows.length === 0) return null;
  const verdicts = rows.map(({ index, inner }) =>
    verdictOf(calculator, evaluation, id, lengths, index, inner),
  );
  const [first, another] = new Set(verdicts.filter(Boolean));
  /** Where no row can be judged yet, for the same reason. */
  const waits = another === undefined && first?.startsWith(NOT_YET) === true;
  const caption = captionOf({ calculator, evaluation, lengths }, id, table);
  const notes = [
    ...whoseColumns({ calculator, evaluation, lengths }, columns),
    ...(waits ? [`${table.verdict!.heading}: ${first}`] : []),
  ];
  const labels = columns.map(([name]) => calledAs(calculator, evaluation, name, lengths).label);
  const stacks = columns.length >= LEAST_TO_STACK && !isLongTable(columns.length, rows.length);
  return (
    <div class="table-wrap" role="region" aria-label={caption} tabIndex={0}>
      {/* The roles stand where a style sheet that stacks the cells would take them away. */}
      <table role="table" class={stacks ? 'stacks' : undefined}>
        <caption>
          {caption}
          {notes.map((note) => (
            <span class="whose-beside" key={note}>
              {note}
            </span>
          ))}
        </caption>
        <thead role="rowgroup">
          <tr role="row">
            <th scope="col" role="columnheader">
              {table.rowHeading}
            </th>
            {columns.map(([name], column) => (
              <th scope="col" role="columnheader" key={name}>
                {labels[column]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {rows.map((row, at) => {
            const { index, inner } = row;
            const words = waits ? '' : verdicts[at];
            return (
              <Fragment key={row.suffix}>
                <tr role="row">
                  <th scope="row" role="rowheader" rowSpan={words ? 2 : 1}>
                    {rowHead(
                      table.rowHeading,
                      rowName(calculator, id, evaluation.values, lengths, index, inner),
                    )}
                  </th>
                  {columns.map(([name, spec], column) => {
                    const value = cell(evaluation, name, row);
                    const flat = `${name}-${row.suffix}`;
                    return (
                      <td key={name} role="cell" data-label={stacks ? labels[column] : undefined}>
                        {value === undefined ? (
                          <span class="none">none</span>
                        ) : (
                          <Figure
                            name={flat}
                            value={value}
                            spec={spec}
                            values={evaluation.values}
                            spread={evaluation.spreads[flat]}
                            lengths={lengths}
                            column={evaluation.results[name]}
                          />
                        )}
                      </td>
                    );
                  })}
                </tr>
                {/* Below the figures, so that a narrow screen does not push it out of sight. */}
                {words ? (
                  <tr role="row">
                    <td class="row-words" role="cell" colSpan={columns.length}>
                      <span class="row-heading">{table.verdict!.heading}:</span> {words}
                    </td>
                  </tr>
                ) : null}
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

/** The results that come in rows: the first table open, those of side questions folded. */
export function Tables(props: Props) {
  return (
    <>
      {Object.entries<TableSpec>(props.calculator.tables ?? {}).map(([id, table], index) => {
        const whole = <Table key={id} id={id} table={table} {...props} />;
        if (index === 0) return whole;
        const { columns, rows } = partsOf(id, props);
        return rows.length === 0 ? null : (
          <details class="fold" key={id}>
            <summary>
              <b class="fold-name">{proseIn(table.caption, props.lengths)}</b>
              <span class="fold-holds">
                {columns
                  .map(([name]) => {
                    const { calculator, evaluation, lengths } = props;
                    return calledAs(calculator, evaluation, name, lengths).label;
                  })
                  .join(' · ')}
              </span>
            </summary>
            {whole}
          </details>
        );
      })}
    </>
  );
}
