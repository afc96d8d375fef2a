import { barRoom, provingBars } from './proving-bar.ts';
import { fromEdge } from '../maths/plate/from-edge.ts';
import { edgesOf } from './edges-of.ts';
import type { LengthDisplay } from '../frame/text/units.ts';
import { line, text, type Drawing, type Shape } from './shapes.ts';

export interface Size {
  /** mm. */
  readonly width: number;
  readonly height: number;
}

/** What one sheet shows. */
export interface Tile {
  /** Lower left corner of its window, in the drawing’s own mm. */
  readonly left: number;
  readonly bottom: number;
  /** The same on the sheet, mm from its lower left corner. */
  readonly x: number;
  readonly y: number;
  /** The sheet’s own bars, lettering and the edge of its window, in mm of the sheet. */
  readonly frame: readonly Shape[];
}

export interface Tiling {
  readonly sheet: Size;
  readonly window: Size;
  /** Row by row from the top, each from the left. */
  readonly tiles: readonly Tile[];
  /** Crosses that neighbours share, in the drawing’s own mm. */
  readonly joins: readonly Shape[];
}

/** What neighbours show both, mm. */
const OVERLAP = 10;
/** Room for the bar that goes up the sheet, mm. */
const BAR_SIDE = 8;
const ARM = 3;
/** From a cross to a line or a word of the drawing, mm. */
const CLEAR = 0.5;
/** How far from the middle of a sheet’s edge the crosses stand, in parts of it: the first that are clear. */
const PARTS = [0.25, 0.3, 0.2, 0.35, 0.15, 0.4, 0.1] as const;
/** What a sheet is called stands so far along, clear of what is written under the bar, mm. */
const BESIDE_BARS = 118;
/** From the level of the bar down to the first of these rows, from row to row, and their height, mm. */
const FIRST_ROW = 0.4;
const ROW = 3.6;
const LETTER = 2.4;

/** How many windows cover a length, neighbours lying over each other. */
const windowsOver = (length: number, window: number): number =>
  Math.max(1, Math.ceil((length - OVERLAP - 1e-9) / (window - OVERLAP)));

const windowOn = ({ width, height }: Size, margin: number, foot: number): Size => ({
  width: width - 2 * margin - BAR_SIDE,
  height: height - 2 * margin - foot - BAR_SIDE,
});

const cross = (x: number, y: number): readonly Shape[] => [
  line('position', x - ARM, y, x + ARM, y),
  line('position', x, y - ARM, x, y + ARM),
];

/**
 * A drawing over as few sheets as it takes, upright or across, with its middle in theirs.
 *
 * @param paper Upright.
 * @param margin What no printer prints on, at every edge, mm.
 */
export function tilesOf(
  drawing: Drawing,
  paper: Size,
  margin: number,
  lengths: LengthDisplay = 'mm',
): Tiling {
  const { foot, side } = barRoom(lengths);
  const turned = { width: paper.height, height: paper.width };
  const count = (sheet: Size): readonly [number, number] => {
    const { width, height } = windowOn(sheet, margin, foot);
    return [windowsOver(drawing.width, width), windowsOver(drawing.height, height)];
  };
  const sheets = ([columns, rows]: readonly [number, number]): number => columns * rows;
  const sheet = sheets(count(turned)) < sheets(count(paper)) ? turned : paper;
  const window = windowOn(sheet, margin, foot);
  const [columns, rows] = count(sheet);
  const stepX = window.width - OVERLAP;
  const stepY = window.height - OVERLAP;
  const left = drawing.left - (columns * stepX + OVERLAP - drawing.width) / 2;
  const top = drawing.bottom + drawing.height + (rows * stepY + OVERLAP - drawing.height) / 2;
  const [x, y] = [margin + BAR_SIDE, margin + foot + BAR_SIDE];
  const total = columns * rows;
  /** Of the title what comes first: beside the bars there is room for so much. */
  const [name] = drawing.title.split(',');
  const tiles = Array.from({ length: total }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    const [right, up] = [x + window.width, y + window.height];
    return {
      left: left + column * stepX,
      bottom: top - row * stepY - window.height,
      x,
      y,
      frame: [
        ...provingBars(margin + 1 + side, margin + foot, lengths),
        ...[
          `${name}.`,
          `Sheet ${i + 1} of ${total}: row ${row + 1}, column ${column + 1}.`,
          'Join neighbours cross on cross.',
        ].map((words, line) =>
          text(margin + BESIDE_BARS, margin + foot - side - FIRST_ROW - ROW * line, LETTER, words),
        ),
        line('scrap', x, y, right, y),
        line('scrap', right, y, right, up),
        line('scrap', right, up, x, up),
        line('scrap', x, up, x, y),
      ],
    };
  });
  const edges = drawing.shapes.flatMap(edgesOf);
  const clear = (x: number, y: number): boolean =>
    edges.every((edge) => fromEdge(edge, x, y) >= ARM + CLEAR);
  /** Two places on the joint of each sheet, clear of what is drawn there where any of them is. */
  const within = (
    from: number,
    step: number,
    of: number,
    place: (on: number) => readonly [number, number],
  ): (readonly Shape[])[] =>
    Array.from({ length: of }, (_, i) =>
      [1, -1].map((side) => {
        const places = PARTS.map((part) => place(from + (i + 0.5 + side * part) * step));
        return cross(...(places.find(([x, y]) => clear(x, y)) ?? places[0]!));
      }),
    ).flat();
  const bottom = top - (rows * stepY + OVERLAP);
  const across = (i: number): number => left + (i + 1) * stepX + OVERLAP / 2;
  const up = (i: number): number => top - (i + 1) * stepY - OVERLAP / 2;
  const joins = [
    ...Array.from({ length: columns - 1 }, (_, i) =>
      within(bottom + OVERLAP / 2, stepY, rows, (on) => [across(i), on]),
    ),
    ...Array.from({ length: rows - 1 }, (_, i) =>
      within(left + OVERLAP / 2, stepX, columns, (on) => [on, up(i)]),
    ),
  ].flat(2);
  return { sheet, window, tiles, joins };
}
