import { SITE_NAME } from '../../calculators/frame/site-name.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { summaryTable } from '../../calculators/sheet/summary-table.ts';
import { withMaker } from '../../calculators/picture/png-maker.ts';

/** Dots: a forum shows no more, and a phone holds it. */
const MARGIN = 28;
const LINE = 30;
const GAP = 18;
const FONT = '20px "Segoe UI", Roboto, "Noto Sans", "DejaVu Sans", system-ui, sans-serif';
const BOLD = FONT.replace('20px', '700 20px');
const TITLE = FONT.replace('20px', '800 30px');
const INK = '#10171d';
const RULE = '#b9c3c9';
const MOST = 34;

const short = (text: string): string => {
  const letters = [...text];
  return letters.length > MOST ? `${letters.slice(0, MOST - 1).join('')}…` : text;
};

interface Written {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly font: string;
}

/** The sheet's summary as a picture: dark on white, whatever the page is. */
export async function summaryPicture(engine: Engine, lengths: LengthDisplay): Promise<Blob> {
  const { title, lines, cylinders, rows } = summaryTable(engine, lengths);
  const canvas = document.createElement('canvas');
  const pen = canvas.getContext('2d')!;
  const wide = (text: string, font: string): number => {
    pen.font = font;
    return Math.ceil(pen.measureText(text).width);
  };

  const head = [
    'Step',
    'To',
    ...Array.from({ length: cylinders }, (_, i) => String(i + 1)),
    'Date',
    'State',
  ];
  const table = [
    head,
    ...rows.map(({ step, to, cells, day, state }) =>
      // A step's title stays whole: two of them may differ in their last word alone.
      [
        step,
        ...[to, ...Array.from({ length: cylinders }, (_, i) => cells[i] ?? ''), day, state].map(
          short,
        ),
      ],
    ),
  ];
  const widths = head.map((_, i) =>
    Math.max(...table.map((cells, row) => wide(cells[i]!, row === 0 || i === 0 ? BOLD : FONT))),
  );
  const written: Written[] = [];
  const rules: number[] = [];
  let y = MARGIN + 30;
  written.push({ text: [...title].slice(0, 60).join(''), x: MARGIN, y, font: TITLE });
  y += LINE;
  const tableWidth = widths.reduce((sum, width) => sum + width + GAP, -GAP);
  const room = Math.max(tableWidth, 700);
  // The figures run on like words, as many to a line as there is room for.
  let run = '';
  for (const line of lines) {
    const longer = run === '' ? line : `${run} · ${line}`;
    if (run !== '' && wide(longer, FONT) > room) {
      y += LINE;
      written.push({ text: run, x: MARGIN, y, font: FONT });
      run = line;
    } else run = longer;
  }
  if (run !== '') {
    y += LINE;
    written.push({ text: run, x: MARGIN, y, font: FONT });
  }
  if (rows.length > 0) {
    y += LINE / 2;
    table.forEach((cells, row) => {
      y += LINE;
      let x = MARGIN;
      cells.forEach((text, i) => {
        written.push({ text, x, y, font: row === 0 || i === 0 ? BOLD : FONT });
        x += widths[i]! + GAP;
      });
      rules.push(y + 9);
    });
  }
  y += LINE * 1.4;
  written.push({ text: `${SITE_NAME}: found → last, by cylinder`, x: MARGIN, y, font: FONT });
  const widest = Math.max(
    room,
    ...written.filter(({ x }) => x === MARGIN).map(({ text, font }) => wide(text, font)),
  );
  canvas.width = Math.ceil(widest + 2 * MARGIN);
  canvas.height = Math.ceil(y + MARGIN);

  pen.fillStyle = '#ffffff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.fillStyle = RULE;
  for (const at of rules) pen.fillRect(MARGIN, at, tableWidth, 1);
  pen.fillStyle = INK;
  for (const { text, x, y: down, font } of written) {
    pen.font = font;
    pen.fillText(text, x, down);
  }
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => {
      if (blob) resolve(withMaker(blob));
      else reject(new Error('The browser could not draw the sheet as a PNG.'));
    }, 'image/png');
  });
}
