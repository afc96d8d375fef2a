import { boxAt, type Box } from './box-places.ts';
import { isRefused, readNumber, type HowToRead } from './read-number.ts';
import { readOrder } from './read-order.ts';
import { nameProblem, notesProblem } from './text-problems.ts';
import { readingOf } from './readings.ts';
import { retype, setEntry, type Before, type Manner, type WrittenLast } from './set-entry.ts';
import { refuse, setFigure, setName, setNotes, setOrder } from './set-figure.ts';
import type { Engine, Entry } from './model.ts';

/** A run of typing in one reading box: what stood there before it, and what it wrote itself. */
export interface Typing {
  readonly before: Before;
  readonly written: WrittenLast | undefined;
  /** Whether what is typed is read after a change or in a check, where that was said. */
  readonly kind?: Manner['kind'];
  /**
   * Set where a reading of its own is typed into an empty box, whatever stood there before: it
   * counts also where it reads the same.
   */
  readonly anew?: boolean;
}

/**
 * What a reading box keeps of a text that is no reading: what stood there before it was typed into.
 * A text that is refused, or taken out again, undoes no measurement: what was read before it may be
 * of an engine that was altered since. Only what was found is emptied, where it was all there was.
 */
function leaves(
  engine: Engine,
  { step, moment, index }: Extract<Box, { kind: 'reading' }>,
  refused: boolean,
  typing: Typing | undefined,
): Entry {
  const stood = typing ? typing.before.entry : (readingOf(engine, step)[moment][index] ?? null);
  return refused || moment === 'left' || typing?.anew ? stood : null;
}

/**
 * Enters a typed text: the one way in. What stands at its place afterwards is exactly what the text
 * reads as, or, where it reads as nothing, nothing; of a reading what was read there before. A text
 * that is refused is kept for the box to show. `on` is the day.
 */
export function enter(
  engine: Engine,
  box: Box,
  text: string,
  how: HowToRead,
  typing?: Typing,
  on = '',
): Engine {
  switch (box.kind) {
    case 'figure': {
      const field = readNumber(engine, box, text, how);
      return isRefused(field)
        ? refuse(engine, box, text)
        : setFigure(engine, box.key, field.value, on);
    }
    case 'reading': {
      const field = readNumber(engine, box, text, how);
      const { step, moment, index } = box;
      const { value = leaves(engine, box, isRefused(field), typing) } = field;
      const entered = typing
        ? retype(engine, step, moment, index, value, typing.before, typing.written, {
            kind: typing.kind,
            on,
            anew: typing.anew && field.value !== undefined,
          })
        : setEntry(engine, step, moment, index, value, { on });
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

/**
 * Enters again every text that could not be read: a page that knows more units, or has the reader of
 * sums, may read it now. `on` is the day. The same engine where none can: whoever only looks on while
 * another tab is typed into writes nothing over it.
 */
export function reenter(engine: Engine, how: HowToRead, on = ''): Engine {
  let next = engine;
  for (const [place, text] of Object.entries(engine.unread)) {
    const box = boxAt(place);
    const entered = box ? enter(next, box, text, how, undefined, on) : next;
    if (entered.unread[place] !== text) next = entered;
  }
  return next;
}
