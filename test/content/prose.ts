import { readdirSync, readFileSync } from 'node:fs';

/** Ids of the glossary with the names of each, and the terms that it refers to. */
export const glossary = [
  ...readFileSync(new URL('../../content/glossary.yaml', import.meta.url), 'utf8').matchAll(
    /^([a-z][a-z0-9-]*):\n {2}term: (.+)\n(?: {2}also: \[(.+)\]\n)?(?: {2}meaning: .+\n)?(?: {2}see: \[(.+)\])?/gm,
  ),
].map(([, id, term, also, see]) => ({
  id: id!,
  see: see?.split(/, */) ?? [],
  names: [term!, ...(also?.split(/, */) ?? [])].map((name) => name.replace(/^['"]|['"]$/g, '')),
}));

/** What of an article is no running text: front matter, code, headings, tables and figures. */
const apart = [
  /^---[\s\S]*?\n---/,
  /^(?:import|export)[\s\S]*?\n\n/gm,
  /^#.*$/gm,
  /<Table[\s\S]*?<\/Table>/g,
  /\{(?:[^{}]|\{[^{}]*\})*\}/g,
] as const;

const without = (text: string, parts: readonly RegExp[]): string =>
  parts.reduce((rest, part) => rest.replace(part, ' '), text);

/** The running text of an article: no front matter, code, headings, tables, tags or links. */
export const prose = (text: string): string =>
  without(text, [...apart, /<[^>]*>/g, /\[[^\]]*\]\([^)]*\)/g]);

/** The running text of an article with its links to the glossary left in it. */
export const proseWithTerms = (text: string): string =>
  without(text.replace(/<Term id="([^"]+)">/g, '⟦$1 ').replace(/<\/Term>/g, '⟧'), [
    ...apart,
    /<[^>]*>/g,
    /\[[^\]]*\]\([^)]*\)/g,
  ]);

const folder = new URL('../../content/articles/', import.meta.url);

/** Every article by its slug. */
export const articles = readdirSync(folder)
  .filter((file) => file.endsWith('.mdx'))
  .map((file) => ({
    slug: file.replace('.mdx', ''),
    text: readFileSync(new URL(file, folder), 'utf8'),
  }));
