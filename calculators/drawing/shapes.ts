import type { Edge } from '../maths/plate/land-outline.ts';

/**
 * One description of a flat drawing at true scale, from which the SVG, DXF and PDF files and the
 * picture on the page are all made. Lengths in mm, X right, Y up; angles in degrees, anticlockwise
 * from X.
 */

/**
 * What a line is for. `cut` is made in metal or cut with scissors; `centre` locates; `mark` is a
 * graduation and `position` a place on it; `scrap` is stock that goes away, in
 * the narrow line with two dots that ISO 128-2 has for outlines before forming; `dimension` is a dimension line; `proving` is the bar that proves the scale.
 */
export type Layer =
  'cut' | 'centre' | 'mark' | 'position' | 'scrap' | 'text' | 'dimension' | 'proving';

interface Drawn {
  readonly layer: Layer;
  /** Distinguishes a shape that people or programs may look for, such as `hole-1-2`. */
  readonly name?: string;
}

export interface Circle extends Drawn {
  readonly kind: 'circle';
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

export interface Line extends Drawn {
  readonly kind: 'line';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** From one direction anticlockwise to another, by less than a full turn. */
export interface Arc extends Drawn {
  readonly kind: 'arc';
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
}

/** A slot with round ends along an arc; `from` and `to` are where the ends' centres lie. */
export interface Slot extends Drawn {
  readonly kind: 'slot';
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly width: number;
  readonly from: number;
  readonly to: number;
}

/** A closed run of edges, each from where the last one ends. */
export interface Path extends Drawn {
  readonly kind: 'path';
  readonly edges: readonly Edge[];
}

export interface Text extends Drawn {
  readonly kind: 'text';
  readonly x: number;
  /** Of the foot of the letters. */
  readonly y: number;
  /** Of a capital letter. */
  readonly height: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Direction of reading, degrees anticlockwise from X. */
  readonly turn: number;
}

export type Shape = Circle | Line | Arc | Slot | Path | Text;

export interface Drawing {
  readonly title: string;
  /** The rectangle that holds all shapes with their lettering. */
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

const RADIANS_PER_DEGREE = Math.PI / 180;

/** A point on a circle about `x`, `y`. */
export function at(
  x: number,
  y: number,
  radius: number,
  angle: number,
): { readonly x: number; readonly y: number } {
  const direction = angle * RADIANS_PER_DEGREE;
  return { x: x + radius * Math.cos(direction), y: y + radius * Math.sin(direction) };
}

export const circle = (
  layer: Layer,
  x: number,
  y: number,
  radius: number,
  name?: string,
): Circle => ({ kind: 'circle', layer, x, y, radius, ...(name === undefined ? {} : { name }) });

export const line = (
  layer: Layer,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  name?: string,
): Line => ({ kind: 'line', layer, x1, y1, x2, y2, ...(name === undefined ? {} : { name }) });

/** A line along the direction `angle`, from one radius to another. */
export function spoke(
  layer: Layer,
  angle: number,
  inner: number,
  outer: number,
  name?: string,
): Line {
  const a = at(0, 0, inner, angle);
  const b = at(0, 0, outer, angle);
  return line(layer, a.x, a.y, b.x, b.y, name);
}

export const text = (
  x: number,
  y: number,
  height: number,
  words: string,
  anchor: Text['anchor'] = 'start',
  turn = 0,
  layer: Layer = 'text',
): Text => ({ kind: 'text', layer, x, y, height, text: words, anchor, turn });

/** The lines and arcs of which a slot is made. */
export function slotOutline(slot: Slot): readonly (Arc | Circle)[] {
  const { layer, x, y, radius, width, from, to } = slot;
  const half = width / 2;
  if (from === to) {
    const end = at(x, y, radius, from);
    return [circle(layer, end.x, end.y, half)];
  }
  const first = at(x, y, radius, from);
  const last = at(x, y, radius, to);
  return [
    { kind: 'arc', layer, x, y, radius: radius + half, from, to },
    { kind: 'arc', layer, x: last.x, y: last.y, radius: half, from: to, to: to + 180 },
    { kind: 'arc', layer, x, y, radius: radius - half, from, to },
    { kind: 'arc', layer, x: first.x, y: first.y, radius: half, from: from + 180, to: from + 360 },
  ];
}
