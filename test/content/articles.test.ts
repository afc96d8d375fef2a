import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const folder = new URL('../../content/articles/', import.meta.url);
const articles = readdirSync(folder).filter((file) => file.endsWith('.mdx'));

describe.each(articles)('%s', (file) => {
  const text = readFileSync(new URL(file, folder), 'utf8');

  it('teaches with a live calculator, a worked example and the terms of the glossary', () => {
    expect(text).toContain('<Calculator ');
    expect(text).toContain('<Worked');
    expect(text).toContain('<Term ');
  });

  it('ends with how to check it on the bench', () => {
    expect(text.trimEnd()).toMatch(/<\/OnTheBench>$/);
  });

  it('names its sources', () => {
    expect(text).toMatch(/^sources:\n {2}- /m);
  });
});
