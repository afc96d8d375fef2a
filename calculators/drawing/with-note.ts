import { text, type Drawing } from './shapes.ts';

/** What a note takes below a drawing, and how high its letters are, mm. */
const ROOM = 6;
const LETTER = 2.4;

/** A drawing with a line of words below it; as it is where there are none. */
export const withNote = (drawing: Drawing, words: string | undefined): Drawing =>
  words === undefined
    ? drawing
    : {
        ...drawing,
        bottom: drawing.bottom - ROOM,
        height: drawing.height + ROOM,
        shapes: [
          ...drawing.shapes,
          text(drawing.left + LETTER, drawing.bottom - ROOM / 2, LETTER, words),
        ],
      };
