import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { besideText } from '../../site/articles/beside-text.ts';

describe('a drawing', () => {
  it('is held together with the paragraph that leads to it', () => {
    expect(besideText('<p>one</p>\n<p>two</p>\n<figure><svg></svg></figure><p>three</p>')).toBe(
      '<p>one</p>\n<div class="beside"><figure><svg></svg></figure><p>two</p></div><p>three</p>',
    );
  });

  it('or with the list', () => {
    expect(besideText('<p>one</p><ul><li><p>two</p></li></ul><figure></figure>')).toBe(
      '<p>one</p><div class="beside"><figure></figure><ul><li><p>two</p></li></ul></div>',
    );
  });

  it.each([
    '<h2>one</h2><figure></figure>',
    '<p>one</p><table></table><figure></figure>',
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
