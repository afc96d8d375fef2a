import type { LengthDisplay } from '../frame/text/units.ts';
import type { Engine } from './model.ts';
import { summaryTable, type SummaryRow } from './summary-table.ts';

/** The cells of a row from left to right; a tick stands under cylinder 1. */
const across = ({ step, to, cells, day, state }: SummaryRow, cylinders: number): string[] => [
  step,
  to,
  ...Array.from({ length: cylinders }, (_, i) => cells[i] ?? ''),
  day,
  state,
];

const head = (cylinders: number): string[] => [
  'Step',
  'To',
  ...Array.from({ length: cylinders }, (_, i) => String(i + 1)),
  'Date',
  'State',
];

/** A text that Markdown takes as it stands. */
const plain = (text: string): string =>
  text.replace(/[\\`*_{}[\]<>#|~]/gu, (sign) => `\\${sign}`).replaceAll(/\s+/gu, ' ');

/** The sheet in Markdown, with a table of the readings and the link to it. */
export function sheetMarkdown(engine: Engine, lengths: LengthDisplay, link: string): string {
  const { title, lines, cylinders, rows, notes } = summaryTable(engine, lengths);
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [
    `**${plain(title)}**`,
    '',
    ...lines.map((each) => `- ${plain(each)}`),
    ...(rows.length === 0
      ? []
      : [
          '',
          line(head(cylinders)),
          line(head(cylinders).map(() => '---')),
          ...rows.map((row) => line(across(row, cylinders).map(plain))),
        ]),
    ...(notes === '' ? [] : ['', plain(notes)]),
    ...(link === '' ? [] : ['', `[The sheet with its figures](${link})`]),
  ].join('\n');
}

/** A text in which a forum finds no mark of its own. */
const unmarked = (text: string): string => text.replaceAll('[', '(').replaceAll(']', ')');

/** The sheet for a forum: its readings in columns of even width, and the link to it. */
export function sheetBbcode(engine: Engine, lengths: LengthDisplay, link: string): string {
  const { title, lines, cylinders, rows, notes } = summaryTable(engine, lengths);
  const table = [head(cylinders), ...rows.map((row) => across(row, cylinders))].map((cells) =>
    cells.map((cell) => unmarked(cell).replaceAll(/\s+/gu, ' ')),
  );
  const widths = head(cylinders).map((_, i) =>
    Math.max(...table.map((cells) => [...cells[i]!].length)),
  );
  const padded = table.map((cells) =>
    cells
      .map((cell, i) => cell + ' '.repeat(widths[i]! - [...cell].length))
      .join('  ')
      .trimEnd(),
  );
  return [
    `[b]${unmarked(title)}[/b]`,
    ...lines.map(unmarked),
    ...(rows.length === 0 ? [] : ['[code]', ...padded, '[/code]']),
    ...(notes === '' ? [] : [unmarked(notes)]),
    ...(link === '' ? [] : [`[url=${link}]The sheet with its figures[/url]`]),
  ].join('\n');
}
