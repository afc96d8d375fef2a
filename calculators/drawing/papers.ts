import type { Drawing } from './shapes.ts';

/** Sheets of paper, mm, upright. A4: ISO 216. Letter: 8.5 × 11 in (ANSI/ASME Y14.1, size A). */
export const papers = {
  a4: { name: 'A4', width: 210, height: 297 },
  letter: { name: 'Letter', width: 215.9, height: 279.4 },
} as const;
export type Paper = keyof typeof papers;

/** What most printers cannot print on, at every edge, mm (common practice). */
export const MARGIN = 10;

/** Whether the drawing goes on the sheet at true scale: upright, across, or not at all. */
export function placing(
  { width, height }: Pick<Drawing, 'width' | 'height'>,
  paper: Paper,
): 'upright' | 'across' | undefined {
  const slack = 1e-9;
  const [short, long] = [papers[paper].width - 2 * MARGIN, papers[paper].height - 2 * MARGIN];
  const fits = (w: number, h: number): boolean => width <= w + slack && height <= h + slack;
  return fits(short, long) ? 'upright' : fits(long, short) ? 'across' : undefined;
}
