import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/** Ids of the glossary with the names of each. */
const glossary = [
  ...readFileSync(new URL('../../content/glossary.yaml', import.meta.url), 'utf8').matchAll(
    /^([a-z][a-z0-9-]*):\n {2}term: (.+)\n(?: {2}also: \[(.+)\]\n)?/gm,
  ),
].map(([, id, term, also]) => ({
  id: id!,
  names: [term!, ...(also?.split(/, */) ?? [])].map((name) => name.replace(/^['"]|['"]$/g, '')),
}));

/** The running text of an article: no front matter, code, headings, tables, tags or links. */
function prose(text: string): string {
  return [
    /^---[\s\S]*?\n---/,
    /^(?:import|export)[\s\S]*?\n\n/gm,
    /^#.*$/gm,
    /<table[\s\S]*?<\/table>/g,
    /\{(?:[^{}]|\{[^{}]*\})*\}/g,
    /<[^>]*>/g,
    /\[[^\]]*\]\([^)]*\)/g,
  ].reduce((rest, part) => rest.replace(part, ' '), text);
}

/**
 * The terms that a text uses and does not link. Only names of two words or more: "set", "lift" or
 * "float" mean other things as well.
 */
function unlinked(text: string): string[] {
  const words = prose(text);
  return glossary
    .filter(({ id }) => !text.includes(`<Term id="${id}"`))
    .filter(({ names }) =>
      names.some((name) => name.includes(' ') && new RegExp(`\\b${name}s?\\b`, 'i').test(words)),
    )
    .map(({ id }) => id);
}

const folder = new URL('../../content/articles/', import.meta.url);
const articles = readdirSync(folder).filter((file) => file.endsWith('.mdx'));

describe.each(articles)('%s', (file) => {
  const text = readFileSync(new URL(file, folder), 'utf8');

  it('teaches with a live calculator, a worked example and the terms of the glossary', () => {
    expect(text).toContain('<Calculator ');
    expect(text).toContain('<Worked');
    expect(text).toContain('<Term ');
  });

  it('links every term of the trade that it uses to the glossary', () => {
    expect(unlinked(text)).toEqual([]);
  });

  it('ends with how to check it on the bench', () => {
    expect(text.trimEnd()).toMatch(/<\/OnTheBench>$/);
  });

  it('names its sources', () => {
    expect(text).toMatch(/^sources:\n {2}- /m);
  });
});

it('sees a term that is not linked', () => {
  expect(glossary.length).toBeGreaterThan(100);
  expect(unlinked('Lay a feeler gauge between them.')).toEqual(['feeler-gauge']);
  expect(unlinked('<Term id="feeler-gauge">Feeler gauges</Term> lie.')).toEqual([]);
});
