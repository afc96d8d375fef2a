const NO_FIGURE = /(?:^|[^\p{L}])(?:NaN|-?Infinity|undefined|\[object)(?:$|[^\p{L}])/u;
const PLAIN_DECIMAL = /^-?\d+(?:\.\d+)?$/;
const ATTRIBUTE = / ([\w:-]+)="([^"]*)"/g;
/** Attributes that hold what the visitor typed, or words that may quote it. */
const TYPED = new Set(['value', 'aria-valuetext', 'aria-label', 'href']);

const around = (text: string, at: number): string => text.slice(Math.max(0, at - 40), at + 60);

/** The words "NaN" and the like, outside the quotation marks in which the page repeats a text. */
export function nonFigures(text: string): string[] {
  const own = text.replaceAll(/“[^”]*”/g, '“”');
  const found = NO_FIGURE.exec(own);
  return found ? [around(own, found.index)] : [];
}

/** What a rendered calculator must never hold, each with the place it stands in. */
export function unsound(html: string): string[] {
  const tags = html.replaceAll(ATTRIBUTE, ' $1');
  const run = /<(?:script|img|iframe|object|style)\b|<[^>]*\s(?:on\w+|style)\b/i.exec(tags);
  const words = html.replaceAll(/<[a-z][^\s>]*(?: [\w:-]+(?:="[^"]*")?)*\s*\/?>|<\/\w+>/gi, ' ');
  const attributes = [...html.matchAll(ATTRIBUTE)].flatMap(([, name, value]) =>
    TYPED.has(name!) ? [] : nonFigures(value!),
  );
  const data = [...html.matchAll(/<data value="([^"]*)"/g)]
    .map(([, value]) => value!)
    .filter((value) => !PLAIN_DECIMAL.test(value));
  return [...(run ? [around(tags, run.index)] : []), ...nonFigures(words), ...attributes, ...data];
}
