const TAG = /<(\/?)([a-z][\w-]*)(?:"[^"]*"|[^">])*>/gi;

/** HTML with `change` made to each text of it that does not stand within an element that is `left`. */
export function inTexts(
  html: string,
  left: (name: string, tag: string) => boolean,
  change: (text: string) => string,
): string {
  /** The element within which all is left, and how many of its name are open. */
  let within: { readonly name: string; open: number } | undefined;
  let from = 0;
  let whole = '';
  for (const { 0: tag, 1: shuts, 2: tagName, index } of html.matchAll(TAG)) {
    const before = html.slice(from, index);
    whole += (within ? before : change(before)) + tag;
    from = index + tag.length;
    const name = tagName!.toLowerCase();
    if (tag.endsWith('/>')) continue;
    if (!within) {
      if (shuts === '' && left(name, tag)) within = { name, open: 1 };
    } else if (within.name === name) {
      within.open += shuts === '' ? 1 : -1;
      if (within.open === 0) within = undefined;
    }
  }
  return whole + (within ? html.slice(from) : change(html.slice(from)));
}
