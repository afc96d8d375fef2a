import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { besideText } from '../../site/articles/beside-text.ts';

describe('a drawing', () => {
  it('is held together with the paragraph that leads to it', () => {
    expect(besideText('<p>one</p>\n<p>two</p>\n<figure><svg></svg></figure><p>three</p>')).toBe(
      '<p>one</p>\n<div class="beside"><figure><svg></svg></figure><p>two</p></div><p>three</p>',
    );
  });

  it.each([
    '<h2>one</h2><figure></figure>',
    '<p>one</p><ul><li>two</li></ul><figure></figure>',
    '<p>one</p><figure class="in-text"></figure>',
    '<p>one</p><figure id="live" data-calculator="x"></figure>',
  ])('or stays where it is: %s', (html) => {
    expect(besideText(html)).toBe(html);
  });
});

describe.each(globSync('content/articles/*.mdx'))('%s', (file) => {
  it('says what a picture is about before it shows it', () => {
    const bare = readFileSync(file, 'utf8').match(/^##+ .*\n+<(?:figure|Calculator)\b/gm) ?? [];
    expect(bare).toEqual([]);
  });
});
