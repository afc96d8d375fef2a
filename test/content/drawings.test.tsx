import { globSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { parseHTML } from 'linkedom';
import type { FunctionComponent } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { alongside, hatched, outside, overlaps, strikes } from '../pictures/support/faults.ts';
import { sheetsOf } from '../pictures/support/marks.ts';

const modules = import.meta.glob<{ default: FunctionComponent }>('../../content/drawings/*.tsx', {
  eager: true,
});
const truths = globSync('test/content/drawing-*.test.tsx').map((file) =>
  readFileSync(file, 'utf8'),
);
const articles = globSync('content/articles/*.mdx').map((file) => readFileSync(file, 'utf8'));

/** A figure with mm behind it, or a bare one with decimals; nothing else is lettered so. */
const isLength = (text: string): boolean =>
  /\d\s*mm\b(?![²³])/u.test(text) || /(?:^|[a-zA-Z]\s)\d+\.\d+$/.test(text.trim());

describe.each(
  Object.entries(modules).map(
    ([path, { default: Drawing }]) => [basename(path, '.tsx'), Drawing] as const,
  ),
)('%s', (name, Drawing) => {
  const html = render(<Drawing />);
  const [sheet] = sheetsOf(html);
  const { document } = parseHTML(`<body>${html}</body>`);

  it('stays in its frame, and no word lies on another, under a line or on hatching', () => {
    expect(outside(sheet!)).toEqual([]);
    expect(overlaps(sheet!)).toEqual([]);
    expect(strikes(sheet!)).toEqual([]);
    expect(hatched(sheet!)).toEqual([]);
  });

  it('has no leader that is taken for a line beside it', () => {
    expect(alongside(sheet!)).toEqual([]);
  });

  it('has a title and a description of its own, named by an id', () => {
    const svg = document.querySelector('svg')!;
    const ids = svg.getAttribute('aria-labelledby')!.split(' ');
    const texts = ids.map((id) => document.getElementById(id)?.textContent ?? '');
    expect(texts.map((text) => text.length > 12)).toEqual([true, true]);
  });

  it('holds no figure that is not a number', () => {
    expect(html).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('fits a phone, in lettering of 13', () => {
    expect(Number(document.querySelector('svg')!.getAttribute('width'))).toBeLessThanOrEqual(356);
    expect(html).not.toContain('font-size');
  });

  it('is held to what it shows by a test that names it', () => {
    expect(truths.some((text) => text.includes(`(${name}`))).toBe(true);
  });

  it('says under it in what its lengths are, which no reader of inches can change', () => {
    const lettered = [...document.querySelectorAll('svg text')].map((text) => text.textContent);
    if (!lettered.some(isLength)) return;
    const figures = articles.flatMap((text) =>
      [...text.matchAll(/<figure>[\s\S]*?<\/figure>/g)].map(([figure]) => figure),
    );
    const around = figures.filter((figure) => figure.includes(`<${name} `));
    expect(around.length).toBeGreaterThan(0);
    for (const figure of around)
      expect(figure).toMatch(/ Lengths in mm(?: and m)?\.<\/figcaption>| Lengths in mm\. /);
  });

  it('stands in an article', () => {
    expect(articles.some((text) => text.includes(`<${name}`))).toBe(true);
  });
});

it('ids are of one drawing each', () => {
  const ids = Object.values(modules).flatMap(({ default: Drawing }) =>
    [...render(<Drawing />).matchAll(/ id="([^"]+)"/g)].map((match) => match[1]!),
  );
  expect(ids.length).toBe(new Set(ids).size);
});
