import { measuresApart } from '../browser/measures.ts';
import { inTexts } from './in-texts.ts';

/** What holds no running text. */
const NO_TEXT = new Set(['svg', 'math', 'script', 'style', 'textarea', 'pre', 'code', 'one-line']);
/** Where components write, which see to it themselves. */
const COMPONENTS = /\sdata-(?:calculator|sheet|practice)[=\s>]/;

/** The HTML of a page in which no line's end parts a figure from its unit. The text stays as it is. */
export const onOneLine = (html: string): string =>
  inTexts(
    html,
    (name, tag) => NO_TEXT.has(name) || COMPONENTS.test(tag),
    (text) =>
      measuresApart(text)
        .map((piece, i) => (i % 2 === 0 ? piece : `<one-line>${piece}</one-line>`))
        .join(''),
  );
