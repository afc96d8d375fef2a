/**
 * Straight strokes from point to point, as d3-shape's line and area write them. They stand in for
 * those, whose curves, gaps and settings would cost a page 2 kB of script.
 */
export type Point = readonly [x: number, y: number];

/** An x with the low and the high y there. */
export type Edge = readonly [x: number, low: number, high: number];

/** Tenths of a user unit: a fifth of a dot on a phone's screen, 0.05 mm on paper. */
const tenth = (value: number): number => Math.round(value * 10) / 10;

const joined = (points: readonly Point[]): string =>
  points.map(([x, y]) => `${String(tenth(x))},${String(tenth(y))}`).join('L');

/** The path through points; of one alone, a dot. */
export const polyline = (points: readonly Point[]): string =>
  points.length === 0 ? '' : `M${joined(points)}${points.length === 1 ? 'Z' : ''}`;

/** The path round what lies between two lines: along the high one, and back along the low one. */
export function outline(edges: readonly Edge[]): string {
  if (edges.length === 0) return '';
  const high = edges.map(([x, , y]): Point => [x, y]);
  const low = edges.map(([x, y]): Point => [x, y]).reverse();
  return `M${joined(high)}L${joined(low)}Z`;
}
