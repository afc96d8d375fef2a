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
import { showInput } from '../../frame/format.ts';
import type { LengthDisplay } from '../../frame/units.ts';
import { scaleMarks, tapeLength, type Numbering } from '../../maths/crank/degree-disc.ts';

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
  /** Printed in the middle, such as the engine the marks are for. */
  readonly note: string;
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
  const piston = neighbours(sheet.marks).flatMap(({ angle, label, place, second }): Shape[] => {
    const to = direction(angle);
    const start = second ? reach - letter * 10 : reach;
    return [
      spoke('position', to, rim - long * 1.15, rim, `piston-${place}`),
      spoke('position', to, inner + (rim - inner) * 0.25, reach),
      beside(alongSpoke(to, start, letter, label), letter),
    ];
  });
  const { lengths = 'mm' } = sheet;
  const room = barRoom(lengths);
  const bar = -rim - 12;
  const bottom = bar - room.foot;
  const left = -Math.max(rim, 50);
  const right = Math.max(rim, left + room.side + room.across);
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
      text(0, -inner - (rim - inner) * 0.35, letter, sheet.note, 'middle'),
      text(
        0,
        -inner - (rim - inner) * 0.35 - letter * 2,
        letter,
        '0 is true top dead centre.',
        'middle',
      ),
      ...provingBars(left + room.side, bar, lengths),
    ],
  };
}

/**
 * The marks in order round the circle, with their place in the list; every other one has its
 * lettering in a second row, so that neighbours can be told apart.
 */
function neighbours(marks: readonly PistonMark[]) {
  return marks
    .map((mark, i) => ({ ...mark, place: i + 1 }))
    .sort((a, b) => a.angle - b.angle)
    .map((mark, i) => ({ ...mark, second: i % 2 === 1 }));
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

/** Moves text off its spoke to the side that is above it as one reads. */
function beside(shape: Text, height: number): Text {
  const turn = (shape.turn * Math.PI) / 180;
  return {
    ...shape,
    x: shape.x - height * Math.sin(turn),
    y: shape.y + height * Math.cos(turn),
  };
}

/** Longest strip of tape on a sheet, mm. */
const STRIP = 180;
const ROW = 16;

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
  const shapes = parts.flatMap((strip, i): Shape[] => {
    const long = (strip.to - strip.from) * perDegree;
    const foot = -i * row;
    const head = foot + sheet.tapeWidth;
    const along = (angle: number): number =>
      leftwards ? long - (angle - strip.from) * perDegree : (angle - strip.from) * perDegree;
    const holds = (angle: number): boolean => angle >= strip.from && angle <= strip.to;
    const edge = (x: number, name: string): Line => line('cut', x, foot, x, head, name);
    return [
      line('cut', 0, foot, long, foot, `strip-${i + 1}`),
      line('cut', 0, head, long, head),
      edge(0, `strip-${i + 1}-left`),
      edge(long, `strip-${i + 1}-right`),
      text(
        0,
        head + 2,
        2,
        `Strip ${i + 1}: ${strip.from}° to ${strip.to}°. Lower edge to the rotor’s face.`,
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
          // At an end of the strip it stands within the cut.
          const anchor = x < 0.01 ? 'start' : x > long - 0.01 ? 'end' : 'middle';
          const inwards = anchor === 'start' ? 0.6 : anchor === 'end' ? -0.6 : 0;
          const y = head - sheet.tapeWidth * 0.4 - 2.4;
          return [mark, text(x + inwards, y, 2, String(number), anchor)];
        }),
      ...neighbours(sheet.marks).flatMap(({ angle, short, place, second }): Shape[] => {
        const reading = turned(angle);
        if (!holds(reading)) return [];
        const x = along(reading);
        return [
          line('position', x, foot, x, head, `tape-${i + 1}-piston-${place}`),
          text(x + 0.6, foot + sheet.tapeWidth * (second ? 0.22 : 0.06), 1.6, short),
        ];
      }),
    ];
  });
  const lowest = -(parts.length - 1) * row;
  const { lengths = 'mm' } = sheet;
  const room = barRoom(lengths);
  const bar = lowest - 10 - room.up;
  const bottom = bar - room.foot;
  const top = sheet.tapeWidth + 8;
  return {
    title: `Tape for a rotor of ${showInput(sheet.rotorDiameter, 'mm', lengths, 0.1)}`,
    left: -1,
    bottom,
    width: Math.max(longest, room.side + room.across) + 2,
    height: top - bottom,
    shapes: [...shapes, ...provingBars(room.side, bar, lengths)],
  };
}
