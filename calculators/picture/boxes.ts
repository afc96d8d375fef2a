import { overlap, type Box } from './common/overlap.ts';
import { textWidth } from './common/text-width.ts';

const UP = 11;
const DOWN = 3;

/** The room that a line of type takes, by where its baseline starts; its width, where it is known. */
export const textBox = (words: string, x: number, y: number, wide = textWidth(words)): Box => ({
  left: x,
  right: x + wide,
  top: y - UP,
  bottom: y + DOWN,
});

export const inside = (box: Box, sheet: Box): boolean =>
  box.left >= sheet.left &&
  box.right <= sheet.right &&
  box.top >= sheet.top &&
  box.bottom <= sheet.bottom;

/** The box of a round mark. */
export const round = (x: number, y: number, radius: number): Box => ({
  left: x - radius,
  right: x + radius,
  top: y - radius,
  bottom: y + radius,
});

/**
 * Where the name of a round mark can stand beside it: the start of its baseline, at the side where it
 * lies on the sheet, on nothing of what is `taken`, and on the fewest lines (`struck`), the first such
 * side; nothing where there is no such side.
 */
export function beside(
  mark: { readonly x: number; readonly y: number; readonly radius: number },
  words: string,
  sheet: Box,
  taken: readonly Box[],
  struck: (box: Box) => number = () => 0,
): { readonly x: number; readonly y: number; readonly box: Box } | undefined {
  const { x, y, radius } = mark;
  const wide = textWidth(words);
  const away = radius + 4;
  const sides: readonly (readonly [x: number, y: number])[] = [
    [x + away, y - 4],
    [x - away - wide, y - 4],
    [x + away, y + 12],
    [x - away - wide, y + 12],
    [x - wide / 2, y - away - DOWN],
    [x - wide / 2, y + away + UP],
  ];
  const free = sides
    .map(([left, base]) => ({ x: left, y: base, box: textBox(words, left, base, wide) }))
    .filter(({ box }) => inside(box, sheet) && taken.every((other) => !overlap(box, other)))
    .map((side) => ({ side, lines: struck(side.box) }));
  const fewest = Math.min(...free.map(({ lines }) => lines));
  return free.find(({ lines }) => lines === fewest)?.side;
}
