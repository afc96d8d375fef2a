import { proseIn } from '../../calculators/frame/prose.ts';
import { inTexts } from './in-texts.ts';

/** What holds no running text, or is drawn anew in the reader's lengths by its own script. */
const LEFT = new Set(['svg', 'math', 'script', 'style', 'figure', 'button', 'code']);
/** One length, or several that share their unit, with or without a space that may break. */
const FIGURE = String.raw`[−-]?\d+(?:\.\d+)?`;
const LENGTHS = new RegExp(
  String.raw`(?<![\d.\p{L}×]|× )${FIGURE}(?:(?: to | and | or | by |, )${FIGURE})*(?: |\u00A0|&nbsp;)(?:mm²|mm)(?![\p{L}\d²³/])`,
  'gu',
);

const marked = (text: string): string =>
  text.replaceAll(LENGTHS, (found) => {
    const inches = proseIn(found.replace(/\u00A0|&nbsp;/u, ' '), 'in');
    return `<span class="with-inches" data-inches="${inches}">${found}</span>`;
  });

/**
 * The HTML of an article in which every length in the text carries its inches, for a reader who has
 * chosen them: the style sheet shows them in brackets. The millimetres stay, since sums and tables
 * are worked out in them.
 */
export const withInches = (html: string): string => inTexts(html, (name) => LEFT.has(name), marked);
