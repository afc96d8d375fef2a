import {
  boxAt,
  isRefused,
  nameProblem,
  notesProblem,
  readNumber,
  readOrder,
  type Box,
  type HowToRead,
} from './boxes.ts';
import {
  refuse,
  retype,
  setEntry,
  setFigure,
  setName,
  setNotes,
  setOrder,
  type Before,
} from './edit.ts';
import type { Engine } from './model.ts';

/** A run of typing in one reading box: what stood there before it, and when it last altered the engine. */
export interface Typing {
  readonly before: Before;
  readonly written: number | undefined;
}

/**
 * Enters a typed text: the one way in. What stands at its place afterwards is either exactly what
 * the text reads as, or nothing, and then the text itself is kept for the box to show.
 */
export function enter(
  engine: Engine,
  box: Box,
  text: string,
  how: HowToRead,
  typing?: Typing,
): Engine {
  switch (box.kind) {
    case 'figure': {
      const field = readNumber(engine, box, text, how);
      return isRefused(field) ? refuse(engine, box, text) : setFigure(engine, box.key, field.value);
    }
    case 'reading': {
      const field = readNumber(engine, box, text, how);
      const { value = null } = field;
      const { step, moment, index } = box;
      const entered = typing
        ? retype(engine, step, moment, index, value, typing.before, typing.written)
        : setEntry(engine, step, moment, index, value);
      return isRefused(field) ? refuse(entered, box, text) : entered;
    }
    case 'order': {
      const field = readOrder(engine, text, how);
      return isRefused(field) ? refuse(engine, box, text) : setOrder(engine, field.value);
    }
    case 'name':
      return nameProblem(text) === undefined
        ? setName(engine, text.trim())
        : refuse(engine, box, text);
    case 'notes':
      return notesProblem(text) === undefined ? setNotes(engine, text) : refuse(engine, box, text);
  }
}

/** Enters again every text that could not be read: a page that knows more units may read it now. */
export function reenter(engine: Engine, how: HowToRead): Engine {
  let next = engine;
  for (const [place, text] of Object.entries(engine.unread)) {
    const box = boxAt(place);
    if (box) next = enter(next, box, text, how);
  }
  return next;
}
