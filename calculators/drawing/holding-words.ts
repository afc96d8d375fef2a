import { textWidth } from '../picture/common/text-width.ts';
import type { Drawing } from './shapes.ts';
import { CAPITAL } from './svg-element.ts';

/** How wide words of some height of capitals are at most, in any of the faces they may be shown in, mm. */
export const wordsWidth = (words: string, height: number): number =>
  textWidth(words, { size: height / CAPITAL });

/** What is left beyond the end of words, mm. */
const BEYOND = 1;

/** The same drawing on a sheet that is wide enough for every line of words that starts on it. */
export function holdingWords(drawing: Drawing): Drawing {
  const right = Math.max(
    drawing.left + drawing.width,
    ...drawing.shapes.flatMap((shape) =>
      shape.kind === 'text' && shape.anchor === 'start' && shape.turn === 0
        ? [shape.x + wordsWidth(shape.text, shape.height) + BEYOND]
        : [],
    ),
  );
  return { ...drawing, width: right - drawing.left };
}
