import { barRoom, provingBars } from '../../drawing/proving-bar.ts';
import {
  at,
  circle,
  line,
  spoke,
  text,
  type Drawing,
  type Line,
  type Shape,
  type Text,
} from '../../drawing/shapes.ts';
import { showInput } from '../../frame/text/format.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import { scaleMarks, tapeLength, type Numbering } from '../../maths/crank/degree-disc.ts';
import { clearOnDisc, clearOnTape, rowsWithin, wordsWide } from './lettering.ts';

/** A piston position to be marked. */
export interface PistonMark {
  /** Degrees after true TDC; negative before it. */
  readonly angle: number;
  /** Such as "2.2 mm before". */
  readonly label: string;
  /** Such as "2.2". */
  readonly short: string;
}

export interface ScaleSheet {
  /** Printed on it, such as the engine the marks are for. */
  readonly note: string;
  /** In what it is lettered; millimetres unless told. */
  readonly lengths?: LengthDisplay;
  readonly numbering: Numbering;
  /**
   * Which way readings must grow on the disc as one looks at it: anticlockwise where a disc on the
   * crank turns clockwise past a fixed pointer.
   */
  readonly grows: 'clockwise' | 'anticlockwise';
  readonly marks: readonly PistonMark[];
}

export interface DiscSheet extends ScaleSheet {
  readonly outsideDiameter: number;
  readonly insideDiameter: number;
}

export interface TapeSheet extends ScaleSheet {
  readonly rotorDiameter: number;
  readonly thickness: number;
  /** Across the tape, mm. */
  readonly tapeWidth: number;
}

const markLength = { 1: 0.45, 5: 0.7, 10: 1 } as const;
/** From the line of the bar up to the rim: the longest of its ticks, and some more, mm. */
const BAR_CLEAR = 5;
/** How far the bar up stands in from the left of the sheet, mm. */
const BAR_IN = 2;
const turned = (angle: number): number => ((angle % 360) + 360) % 360;

/** Text that reads outwards along a spoke, never upside down by more than a quarter turn. */
function alongSpoke(angle: number, radius: number, height: number, words: string): Text {
  const direction = turned(angle);
  const flip = direction > 90 && direction < 270;
  const foot = at(0, 0, radius, angle);
  const turn = flip ? direction - 180 : direction;
  const drop = (turn * Math.PI) / 180;
  return text(
    foot.x + (height / 2) * Math.sin(drop),
    foot.y - (height / 2) * Math.cos(drop),
    height,
    words,
    flip ? 'start' : 'end',
    turn,
  );
}

/**
 * A degree disc at true scale with its zero at the top, piston marks and proving bars.
 */
export function discDrawing(sheet: DiscSheet): Drawing {
  const rim = sheet.outsideDiameter / 2;
  const inner = sheet.insideDiameter / 2;
  const sense = sheet.grows === 'anticlockwise' ? 1 : -1;
  const direction = (angle: number): number => 90 + sense * angle;
  /** Length of a ten-degree mark, and the size of the figures, in step with the disc. */
  const long = Math.min(10, (rim - inner) * 0.14);
  const letter = Math.min(2.8, rim * 0.036);
  const noteHeight = (row: number): number => -inner - (rim - inner) * 0.35 - 2 * letter * row;
  const graduations = scaleMarks(sheet.numbering).flatMap(({ angle, rank, number }): Shape[] => {
    const to = direction(angle);
    const mark = spoke('mark', to, rim - long * markLength[rank], rim, `mark-${angle}`);
    if (number === undefined) return [mark];
    const foot = at(0, 0, rim - long - letter * 1.6, to);
    const turn = turned(to - 90);
    return [mark, text(foot.x, foot.y, letter, String(number), 'middle', turn)].map((shape) =>
      shape.kind === 'text' ? centredOn(shape, letter) : shape,
    );
  });
  /** Inside the figures. */
  const reach = rim - long - letter * 3;
  // The words of a mark between two others stand on its line where that has ended.
  const start = inner + (rim - inner) * (sheet.marks.length > 2 ? 0.5 : 0.25);
  const lettering = clearOnDisc(
    sheet.marks.map(({ angle, label }) => ({ direction: direction(angle), words: label })),
    { from: start, to: reach, hole: inner + 5 },
    letter,
  );
  const piston = sheet.marks.flatMap(({ angle, label }, i): Shape[] => {
    const to = direction(angle);
    const { outer, side } = lettering[i]!;
    return [
      spoke('position', to, rim - long * 1.15, rim, `piston-${i + 1}`),
      spoke('position', to, start, reach),
      beside(alongSpoke(to, outer, letter, label), letter, side),
    ];
  });
  const notes = rowsWithin(
    [sheet.note, '0 is true top dead centre.'],
    (row) => noteHeight(row),
    (height) => 2 * (Math.sqrt(Math.max(0, reach ** 2 - height ** 2)) - letter),
    letter,
  );
  const { lengths = 'mm' } = sheet;
  const room = barRoom(lengths);
  const bar = -rim - 12;
  const bottom = bar - room.foot;
  // Beside a small disc the bar up stands clear of its rim.
  const top = bar + room.up;
  const beyond = top < -rim ? 0 : Math.sqrt(rim ** 2 - Math.min(top, 0) ** 2);
  const left = Math.min(-Math.max(rim, 50), -beyond - BAR_CLEAR - BAR_IN - room.side);
  const right = Math.max(rim, left + room.side + BAR_IN + room.across);
  return {
    title: `Degree disc of ${showInput(sheet.outsideDiameter, 'mm', lengths, 0.1)}`,
    left: left - 1,
    bottom,
    width: right - left + 2,
    height: rim + 2 - bottom,
    shapes: [
      circle('cut', 0, 0, rim, 'outside'),
      ...(inner > 0 ? [circle('cut', 0, 0, inner, 'inside')] : []),
      line('centre', -inner - 5, 0, inner + 5, 0),
      line('centre', 0, -inner - 5, 0, inner + 5),
      ...graduations,
      ...piston,
      ...notes.map((words, row) => text(0, noteHeight(row), letter, words, 'middle')),
      ...provingBars(left + room.side + BAR_IN, bar, lengths),
    ],
  };
}

/** Moves turned text back by half its height, so that its middle lies where its foot was. */
function centredOn(shape: Text, height: number): Text {
  const turn = (shape.turn * Math.PI) / 180;
  return {
    ...shape,
    x: shape.x + (height / 2) * Math.sin(turn),
    y: shape.y - (height / 2) * Math.cos(turn),
  };
}

/** Moves text off its spoke to the side that is above it as one reads, to the one below, or not. */
function beside(shape: Text, height: number, side: 1 | 0 | -1): Text {
  const turn = (shape.turn * Math.PI) / 180;
  return {
    ...shape,
    x: shape.x - side * height * Math.sin(turn),
    y: shape.y + side * height * Math.cos(turn),
  };
}

/** Longest strip of tape on a sheet, mm. */
const STRIP = 180;
const ROW = 16;
/** Height of the figures on a tape, and of what its marks are named, mm. */
const FIGURE = 2;
const NAME = 1.6;
/** Height of what the sheet is called, and how far it stands above the first strip, mm. */
const TITLE = 2.4;
const NAME_UP = 7;
/** From a figure or a name to the next, or to a line, mm. */
const CLEAR = 0.6;
/** Degrees from one figure of the tape to the next: the first of these that leaves them room. */
const EVERY = [10, 20, 30, 60, 90, 180] as const;

export interface Strip {
  /** Degrees at its two ends. */
  readonly from: number;
  readonly to: number;
}

/** The tape in strips that go on a sheet, each of whole tens of degrees, as equal as may be. */
export function strips(rotorDiameter: number, thickness: number): readonly Strip[] {
  const perDegree = tapeLength(rotorDiameter, thickness) / 360;
  const longest = Math.floor(STRIP / perDegree / 10) * 10;
  if (longest < 10) return [];
  const wanted = Math.ceil(360 / longest);
  const each = Math.ceil(360 / wanted / 10) * 10;
  return Array.from({ length: Math.ceil(360 / each) }, (_, i) => ({
    from: i * each,
    to: Math.min(360, (i + 1) * each),
  }));
}

/**
 * The tape at true scale, in strips one below the other, with proving bars. Seen on the rim from
 * outside with the rotor's face nearest, its figures stand upright.
 */
export function tapeDrawing(sheet: TapeSheet): Drawing {
  const perDegree = tapeLength(sheet.rotorDiameter, sheet.thickness) / 360;
  const parts = strips(sheet.rotorDiameter, sheet.thickness);
  const longest = Math.max(...parts.map(({ from, to }) => to - from), 0) * perDegree;
  const row = sheet.tapeWidth + ROW;
  const leftwards = sheet.grows === 'anticlockwise';
  const marks = scaleMarks(sheet.numbering);
  const widest = wordsWide('350', FIGURE);
  const every = EVERY.find((step) => step * perDegree > widest + CLEAR) ?? 360;
  const shapes = parts.flatMap((strip, i): Shape[] => {
    const long = (strip.to - strip.from) * perDegree;
    const foot = -i * row;
    const head = foot + sheet.tapeWidth;
    const along = (angle: number): number =>
      leftwards ? long - (angle - strip.from) * perDegree : (angle - strip.from) * perDegree;
    const holds = (angle: number): boolean => angle >= strip.from && angle <= strip.to;
    const edge = (x: number, name: string): Line => line('cut', x, foot, x, head, name);
    const figures: { readonly left: number; readonly right: number }[] = [];
    const figureFoot = head - sheet.tapeWidth * 0.4 - FIGURE - 0.4;
    /** The marks of the piston, broken where a figure stands on them. */
    const positions = (): Shape[] => {
      const held = sheet.marks
        .map(({ angle, short }, place) => ({ reading: turned(angle), short, place: place + 1 }))
        .filter(({ reading }) => holds(reading))
        .map((mark) => ({ ...mark, x: along(mark.reading) }));
      const rows = [0.06, 0.22].map((part) => part * sheet.tapeWidth);
      const names = clearOnTape(
        held.map(({ x, short }) => ({ x, words: short })),
        {
          long,
          height: NAME,
          rows: rows.filter((up) => foot + up + NAME < figureFoot),
        },
      );
      /** Where a line begins: above what stands across it. */
      const footOf = (x: number): number => {
        const over = names.some(
          (name, k) =>
            name?.across && Math.abs(x - name.left - wide(k) / 2) < wide(k) / 2 + CLEAR / 2,
        );
        return over ? foot + rows[0]! + NAME + 0.3 : foot;
      };
      const wide = (k: number): number => wordsWide(held[k]!.short, NAME);
      return held.flatMap(({ x, short, place }, k): Shape[] => {
        const name = `tape-${i + 1}-piston-${place}`;
        const struck = figures.some(({ left, right }) => x > left - 0.3 && x < right + 0.3);
        const begins = footOf(x);
        const at = names[k];
        return [
          ...(struck
            ? [
                line('position', x, figureFoot + FIGURE + 0.3, x, head, name),
                ...(begins < figureFoot - 0.3
                  ? [line('position', x, begins, x, figureFoot - 0.3, `${name}-foot`)]
                  : []),
              ]
            : [line('position', x, begins, x, head, name)]),
          ...(at ? [text(at.left, foot + at.foot, NAME, short)] : []),
        ];
      });
    };
    return [
      line('cut', 0, foot, long, foot, `strip-${i + 1}`),
      line('cut', 0, head, long, head),
      edge(0, `strip-${i + 1}-left`),
      edge(long, `strip-${i + 1}-right`),
      text(
        0,
        head + 2,
        2,
        `Strip ${i + 1}: ${strip.from}° to ${strip.to}°, from cut end to cut end. Lower edge to the rotor’s face.`,
      ),
      ...[...marks, { angle: 360, rank: 10 as const, number: marks[0]!.number }]
        .filter(({ angle }) => holds(angle))
        .flatMap(({ angle, rank, number }): Shape[] => {
          const x = along(angle);
          const mark = line(
            'mark',
            x,
            head,
            x,
            head - sheet.tapeWidth * 0.4 * markLength[rank],
            `tape-${i + 1}-${angle}`,
          );
          if (number === undefined) return [mark];
          const wide = wordsWide(String(number), FIGURE);
          // At an end of the strip it stands within the cut, and the next gives way to it.
          const anchor = x < 0.01 ? 'start' : x > long - 0.01 ? 'end' : 'middle';
          const left =
            anchor === 'start' ? CLEAR : x - (anchor === 'end' ? wide + CLEAR : wide / 2);
          const end = widest + 2 * CLEAR;
          const crowded = left < end || left + wide > long - end;
          if (anchor === 'middle' && (crowded || angle % every !== 0)) return [mark];
          figures.push({ left, right: left + wide });
          const inwards = anchor === 'start' ? CLEAR : anchor === 'end' ? -CLEAR : 0;
          return [mark, text(x + inwards, figureFoot, FIGURE, String(number), anchor)];
        }),
      ...positions(),
    ];
  });
  const lowest = -(parts.length - 1) * row;
  const { lengths = 'mm' } = sheet;
  const room = barRoom(lengths);
  const bar = lowest - 10 - room.up;
  const bottom = bar - room.foot;
  const title = `Tape for a rotor of ${showInput(sheet.rotorDiameter, 'mm', lengths, 0.1)}`;
  const name = sheet.tapeWidth + NAME_UP;
  const top = name + TITLE + 2;
  return {
    title,
    left: -1,
    bottom,
    width: Math.max(longest, room.side + room.across) + 2,
    height: top - bottom,
    shapes: [
      ...shapes,
      text(0, name, TITLE, `${title}. ${sheet.note}`.trim()),
      ...provingBars(room.side, bar, lengths),
    ],
  };
}
