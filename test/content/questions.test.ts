import { globSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, it } from 'vitest';
import { evening } from '../../content/evening.ts';
import { articles } from './prose.ts';

const asked = globSync('content/questions/*.mdx').map((file) => ({
  slug: basename(file, '.mdx'),
  text: readFileSync(file, 'utf8').replace(/^(?:import|export)[\s\S]*?\n\n/gm, ''),
}));

describe.each(asked)('the questions of $slug', ({ slug, text }) => {
  const answers = [...text.matchAll(/^<Question ask=\{`.*`\}>$([\s\S]*?)^<\/Question>/gm)];

  it('belong to an article', () => {
    expect(articles.map((article) => article.slug)).toContain(slug);
  });

  it('are three, each answered in steps, one of which gives the result', () => {
    expect(answers).toHaveLength(3);
    for (const [, answer] of answers) {
      expect(answer!.match(/^\d+\. /gm)!.length).toBeGreaterThan(2);
      expect(answer).toMatch(/\*\*.+\*\*/);
      expect(answer).toMatch(/\{(?:fixed|mm)\(/);
    }
  });
});

it('every article has them', () => {
  const slugs = asked.map(({ slug }) => slug).toSorted();
  expect(slugs).toEqual(articles.map(({ slug }) => slug).toSorted());
});

it('each chapter of the evening is an article of its own', () => {
  expect(evening).toHaveLength(7);
  const slugs = new Set(evening.map(({ article }) => article));
  expect(slugs.size).toBe(7);
  for (const slug of slugs) expect(articles.map((article) => article.slug)).toContain(slug);
});
