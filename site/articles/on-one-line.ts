import { measuresApart, UNITS } from '../browser/measures.ts';
import { inTexts } from './in-texts.ts';

/** What holds no running text. */
const NO_TEXT = new Set(['svg', 'math', 'script', 'style', 'textarea', 'pre', 'code', 'one-line']);
/** Where components write, which see to it themselves. */
const COMPONENTS = /\sdata-(?:calculator|sheet|practice)[=\s>]/;

const TERM = String.raw`[−-]?\d+(?:\.\d+)?(?:[°%]| (?:${UNITS})(?![\p{L}\d²³/]))?`;
/** Terms with what is done to them between: `(40.0 − 44.0) / 2`. */
const SUM = String.raw`\(?${TERM}(?: [−+×/·] \(?${TERM}\)?)+(?![\p{L}\d]|\.\d)`;
/** A thread with its pitch, a number written with hyphens, with letters before it, and a place in a book: `M14 × 1.25`, `TM 9-8000`, `page 8-16`. */
const NUMBER = String.raw`(?:page|chapter) \d+(?:-\d+)?(?![\p{L}\d])|M\d+ × \d+(?:\.\d+)?|(?:[A-Z]{2,} )?(?:[A-Z]\d[\d.A-Z]*|\d+(?:\.\d+)?)(?:-\d+)+[A-Z]?(?::\d+)?(?![\p{L}\d]|-\p{L})`;
/** A surname with its initials, no unit at the end of a sentence, and a name of two parts: `J. B. Heywood`, `McGraw-Hill`. */
const NAME = String.raw`(?<!\d |°)(?:\p{Lu}\. )+\p{Lu}[\p{L}’]+|(?:e|\p{Lu}\p{L}+)-\p{Lu}\p{L}+(?![\p{L}-])`;
/** A taper is no figure in inches: `1 in 50`. */
const TAPER = String.raw`1 in \d+(?![\p{L}\d])`;
const WHOLE = new RegExp(String.raw`(?<![\p{L}\d.,/-])(${TAPER}|${SUM}|${NUMBER}|${NAME})`, 'u');
/** A longer one would be wider than a narrow phone. */
const LONGEST = 24;

/** A letter of mathematics within a sentence, and the stop or comma after it. */
const LETTER = /(<math>(?:(?!<\/math>).)*<\/math>)([.,;:)]+)/gsu;

const held = (text: string): string => `<one-line>${text}</one-line>`;

const withMeasures = (text: string): string =>
  measuresApart(text)
    .map((piece, i) => (i % 2 === 0 ? piece : held(piece)))
    .join('');

/** The HTML of a page in which no line's end parts a figure from its unit, a surname from its initials, nor a short sum, nor a comma from its letter. The text stays as it is. */
export const onOneLine = (html: string): string =>
  inTexts(
    html,
    (name, tag) => NO_TEXT.has(name) || COMPONENTS.test(tag),
    (text) =>
      text
        .split(WHOLE)
        .map((piece, i) =>
          i % 2 === 0 || piece.length > LONGEST ? withMeasures(piece) : held(piece),
        )
        .join(''),
  ).replaceAll(LETTER, (whole) => held(whole));
