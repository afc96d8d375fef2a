/** What a forum, a mail or a page breaks a long link with: white space, and marks that are not seen. */
const BREAKS = /[\s\u00AD\u200B-\u200F\u202A-\u202E\u2060-\u2064\uFEFF]/gu;
/** Codes of a page for what breaks a line or is not seen, and for the `&` of what was hung on. */
const CODES = /&(?:nbsp|shy|zwnj|zwj|ensp|emsp|thinsp|NewLine|Tab|#\d+|#x[\da-f]+);/gi;
/**
 * A line of mail that was broken within a word ends in `=`, and its quoted lines begin with `>`. The
 * `=` of the key itself may end a line too.
 */
const LINES = /(?<!^\s*engine)=(?=[ \t]*[\r\n])|(?<=[\r\n])[ \t]*(?:>[ \t]*)+/gu;
/** What a tracker hangs on. */
const HUNG_ON = /[&?].*$/su;
/** What follows a link in a sentence and is taken into it: no letter of a link but `-` and `_` ends one. */
const TRAILING = /[^\w-]+$/u;

/** Percent codes back into letters, also where a page has coded them once more; a broken one stays. */
function decoded(text: string): string {
  let now = text;
  for (let time = 0; time < 3 && now.includes('%'); time += 1) {
    now = now.replaceAll(/(?:%[\da-f]{2})+/gi, (codes) => {
      try {
        return decodeURIComponent(codes);
      } catch {
        return codes;
      }
    });
  }
  return now;
}

/**
 * The fragment of a link as it was before a page, a forum or a mail handled it: without percent codes,
 * breaks, the end of the sentence that it stood in, and what was hung on. A letter of the link itself
 * is never guessed.
 */
export function mendedFragment(fragment: string): string {
  const plain = decoded(fragment).replaceAll(/&amp;/gi, '&').replaceAll(CODES, '');
  return plain
    .replaceAll(LINES, '')
    .replaceAll(BREAKS, '')
    .replace(/^engine=3D(?=\d\.)/u, 'engine=')
    .replace(HUNG_ON, '')
    .replace(TRAILING, '');
}
