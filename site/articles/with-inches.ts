import { proseIn } from '../../calculators/frame/prose.ts';

/** What holds no running text, or is drawn anew in the reader's lengths by its own script. */
const LEFT = new Set(['svg', 'math', 'script', 'style', 'figure', 'button', 'code']);
const TAG = /<(\/?)([a-z][\w-]*)(?:"[^"]*"|[^">])*>/gi;
/** One length, or several that share their unit, with or without a space that may break. */
const FIGURE = String.raw`[−-]?\d+(?:\.\d+)?`;
const LENGTHS = new RegExp(
  String.raw`(?<![\d.\p{L}×]|× )${FIGURE}(?:(?: to | and | or | by |, )${FIGURE})*(?: |\u00A0|&nbsp;)(?:mm²|mm|cc)(?![\p{L}\d²³/])`,
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
export function withInches(html: string): string {
  let left = 0;
  let from = 0;
  let whole = '';
  for (const tag of html.matchAll(TAG)) {
    const [text, shuts, name] = tag;
    const before = html.slice(from, tag.index);
    whole += (left === 0 ? marked(before) : before) + text;
    from = tag.index + text.length;
    if (LEFT.has(name!.toLowerCase()) && !text.endsWith('/>')) left += shuts === '/' ? -1 : 1;
  }
  return whole + (left === 0 ? marked(html.slice(from)) : html.slice(from));
}
