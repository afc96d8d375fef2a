import { parseHTML } from 'linkedom';

/** What may stand in millimetres though lengths are in inches, and why. */
const metric: readonly (readonly [RegExp, why: string])[] = [
  [/^= [−\d., m²³]+$/u, 'the figure that is kept, quoted beside the field'],
  [/^mm$/u, 'the choice itself'],
  [/\d\u00A0mm/u, 'written with metric(): a plug’s thread, the bars of a print'],
  [/stamp is the diameter in hundredths of a millimetre/u, 'what jets are stamped with'],
  [/(?:Diameter in|some count) hundredths of a millimetre/u, 'what makers’ numbers count'],
  [/^= [^a-z]*mm²|\d mm²|(?:^|, )mm²$/u, 'a wire, which is sold by its section in mm² (IEC 60228)'],
  [/its volume in cc; times 1000, over its depth in mm/u, 'a sum that goes by grams and cc'],
  [/^Turns millimetres before top dead centre/u, 'what a calculator is for, in the trade’s words'],
];

/** Parts of a page that are not the calculator’s or the sheet’s own, or are not shown, and why. */
const elsewhere: readonly (readonly [selector: string, why: string])[] = [
  ['.as-mm', 'not shown: its twin in inches is'],
  ['script, style, noscript', 'not shown'],
  ['.reasons', 'what an article says of itself, and its figures are in millimetres'],
];

/** Attributes that a reader hears or sees. */
const SPOKEN = ['aria-label', 'aria-valuetext', 'title', 'placeholder', 'alt'] as const;

const METRIC = /millimet|(?<![\p{L}])mm[²³]?(?![\p{L}])/u;

/** The texts of a page that speak of millimetres and are not metric by their nature. */
export function millimetresLeft(html: string): string[] {
  // The parser would part a text at an entity, and at what keeps a figure with its unit.
  const whole = html.replaceAll('&nbsp;', '\u00A0').replaceAll(/<\/?one-line>/g, '');
  const { document } = parseHTML(`<!doctype html><body>${whole}</body>`);
  for (const [selector] of elsewhere) {
    for (const element of document.querySelectorAll(selector)) element.remove();
  }
  const texts: string[] = [];
  for (const element of document.querySelectorAll('*')) {
    for (const name of SPOKEN) {
      const value = element.getAttribute(name);
      if (value !== null) texts.push(value);
    }
    for (const child of element.childNodes) {
      if (child.nodeType === 3) texts.push(child.textContent ?? '');
    }
  }
  return [
    ...new Set(
      texts
        .map((text) => text.trim())
        .filter((text) => METRIC.test(text) && !metric.some(([form]) => form.test(text))),
    ),
  ];
}
