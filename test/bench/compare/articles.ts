import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';

/** An article as it was built, without what only our own pages have. */
export interface Article {
  readonly slug: string;
  readonly title: string;
  readonly purpose: string;
  /** The text after title and purpose, its figures worked out, with no calculator in it. */
  readonly html: string;
  /** The words of each paragraph, to find them again in a page of the same text. */
  readonly paragraphs: readonly string[];
}

const open = (dist: string, path: string): Document =>
  parseHTML(readFileSync(join(dist, path, 'index.html'), 'utf8')).document;

const slugIn = (address: string): string | undefined =>
  /(?:^|\/)articles\/([^/#]+)\/(?:$|#)/.exec(address)?.[1];

/** A text without its white space and kinds of quotes, which each generator sets in its own way. */
export const packed = (text: string | null): string =>
  (text ?? '').replaceAll(/\s+/g, '').replaceAll(/[‘’]/g, "'").replaceAll(/[“”]/g, '"');

/**
 * Where the three must differ, the others get less: no calculators, no list of contents but their
 * own, and no links to pages that they do not have.
 */
function article(dist: string, slug: string): Article {
  const document = open(dist, `articles/${slug}`);
  const body = document.querySelector('article')!;
  const title = body.querySelector('h1')!;
  const purpose = body.querySelector('.purpose')!;
  const words = [title.textContent!, purpose.textContent!] as const;
  for (const ours of body.querySelectorAll('h1, .purpose, .contents, .figure-place')) ours.remove();
  // Markdown's tables have no captions.
  for (const caption of body.querySelectorAll('caption')) {
    const paragraph = document.createElement('p');
    paragraph.textContent = caption.textContent;
    caption.closest('table')!.before(paragraph);
    caption.remove();
  }
  for (const link of body.querySelectorAll('a')) {
    const to = slugIn(link.getAttribute('href')!);
    if (to) link.setAttribute('href', `/articles/${to}/`);
    else link.replaceWith(...link.childNodes);
  }
  const paragraphs = [...body.querySelectorAll('p, li')].filter((p) => !p.querySelector('math'));
  return {
    slug,
    title: words[0],
    purpose: words[1],
    html: body.innerHTML,
    paragraphs: paragraphs.map((p) => packed(p.textContent)),
  };
}

/** All articles of the built site, in the order of the job. */
export function readArticles(dist: string): Article[] {
  const links = [...open(dist, 'articles').querySelectorAll('main .links a')];
  return links.map((link) => article(dist, slugIn(link.getAttribute('href')!)!));
}
