import { FOREIGN, foreignTwin } from '../../calculators/frame/text/foreign.ts';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import { inTexts } from './in-texts.ts';

/** What holds no running text, or is drawn anew in the reader's lengths by its own script. */
const LEFT = new Set(['svg', 'math', 'script', 'style', 'figure', 'button', 'code']);
/** One length with its ± or without, or several that share their unit, with or without a space that may break. */
const FIGURE = String.raw`[−-]?\d+(?:\.\d+)?`;
const LENGTHS = new RegExp(
  String.raw`(?<![\d.\p{L}×]|× )${FIGURE}(?:(?: to | and | or | by | ± |, )${FIGURE})*(?: |\u00A0|&nbsp;)(?:mm²|mm)(?![\p{L}\d²³/])`,
  'gu',
);

const span = (found: string, beside: string): string =>
  `<span class="with-inches" data-inches="${beside}">${found}</span>`;

const marked = (text: string): string =>
  text
    .replaceAll(LENGTHS, (found) =>
      span(found, proseIn(found.replace(/\u00A0|&nbsp;/u, ' '), 'in')),
    )
    .replaceAll(
      FOREIGN,
      (found: string, figures: string, unit: string, at: number, all: string) => {
        const twin = foreignTwin(figures, unit, all.slice(0, at), all.slice(at + found.length));
        return twin === undefined ? found : span(found, twin);
      },
    );

/**
 * The HTML of a page of text in which every length carries its inches, and every pressure, mass and
 * temperature its other unit, for a reader who has chosen inches: the style sheet shows them in
 * brackets. The millimetres stay, since sums and tables are worked out in them.
 */
export const withInches = (html: string): string => inTexts(html, (name) => LEFT.has(name), marked);
