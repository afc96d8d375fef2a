import { wordsOf } from './words-of.ts';

/** A part of an article under a heading of its own. */
export interface Section {
  readonly heading: string;
  /** The heading’s id on the article’s page. */
  readonly id: string;
  readonly text: string;
}

const BENCH = /<OnTheBench>([\s\S]*?)<\/OnTheBench>/;

/** The id that the page’s headings get: small letters, no punctuation, a hyphen for each space. */
const idOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{M}\p{N}\p{Pc} -]/gu, '')
    .replaceAll(' ', '-');

/** What an article says before its first heading, and its parts. */
export function sectionsOf(mdx: string): { opening: string; sections: Section[] } {
  const bench = BENCH.exec(mdx)?.[1];
  const [opening = '', ...parts] = mdx.replace(BENCH, '').split(/^###? /m);
  const sections = parts.map((part) => {
    const [typed = '', ...rest] = part.split('\n');
    const heading = typed.replaceAll("'", '’');
    return { heading, id: idOf(heading), text: wordsOf(rest.join('\n')) };
  });
  if (bench !== undefined) {
    const heading = 'Check it on the bench';
    sections.push({ heading, id: idOf(heading), text: wordsOf(bench) });
  }
  return { opening: wordsOf(opening), sections };
}
