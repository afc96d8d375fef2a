import { readFileSync } from 'node:fs';

/** A link that somebody may have kept, and what it gave when it was put here. */
export interface Kept {
  readonly link: string;
  /** How its figures were worked out apart from our code as well, where they were. */
  readonly worked?: string;
  readonly results: Readonly<Record<string, number>>;
  /** The ± of some results, where the link holds those of its readings. */
  readonly spreads?: Readonly<Record<string, number>>;
}

/** Links are added to the list and never changed or taken out: people have them. */
export const corpus = JSON.parse(
  readFileSync(new URL('links.json', import.meta.url), 'utf8'),
) as readonly Kept[];

const LINK = /^calculators\/([a-z-]+)\/\?(.*)$/;

/** The calculator a kept link leads to, and its query string. */
export function parts(link: string): { readonly slug: string; readonly query: string } {
  const [, slug, query] = LINK.exec(link)!;
  return { slug: slug!, query: query! };
}
