import { describe, expect, it } from 'vitest';
import { mathSigns, withMathFont } from '../../site/build/math-font.ts';
import { inlined } from '../browser/support/policy.ts';
import { parseHTML } from 'linkedom';

describe('the signs that a font of formulas has to hold', () => {
  it.each([
    ['a variable of one letter, as it stands and slanted', '<mi>r</mi>', 'r𝑟'],
    ['its one letter that is no neighbour of the others', '<mi>h</mi>', 'hℎ'],
    ['a Greek one', '<mi>θ</mi>', 'θ𝜃'],
    ['a capital', '<mi>V</mi>', 'V𝑉'],
    ['a name, which stands upright', '<mi>cos</mi>', 'cos'],
    ['the root, which no text names', '<msqrt><mn>2</mn></msqrt>', '2√'],
    ['what is written otherwise in a page', '<mo>&lt;</mo><mo>&#x2212;</mo>', '<−'],
    ['each once, and no space', '<mtext>a b a</mtext>', 'ab'],
  ])('%s', (_, formula, signs) => {
    expect(mathSigns([`<p>no sign</p><math>${formula}</math>`])).toBe(signs);
  });

  it('are those of all pages', () => {
    expect(mathSigns(['<math><mn>2</mn></math>', '', '<math><mn>1</mn></math>'])).toBe('12');
  });
});

describe('a page with formulas', () => {
  const head = (policy: string): string =>
    `<!doctype html><html><head><meta http-equiv="content-security-policy" content="${policy}"><link rel="icon" href="/mark.svg"></head>`;
  const policy = "font-src 'self'; style-src 'self'; img-src 'self'";
  const page = `${head(policy)}<body><math><mn>1</mn></math></body></html>`;
  const { document } = parseHTML(withMathFont(page, 'f.woff2', 'articles/x/index.html'));

  it('is told where the font is, seen from its own folder, and does not wait for it', () => {
    const style = document.querySelector('style')!.textContent;
    expect(style).toContain('url(../../_astro/f.woff2)');
    expect(style).toContain('font-display:optional');
    expect(document.querySelector('link[rel="preload"]')!.getAttribute('href')).toBe(
      '/_astro/f.woff2',
    );
  });

  it('allows the style that says so, and no other', () => {
    const allowed = document.querySelector('meta')!.getAttribute('content')!;
    expect(inlined(document, allowed)).toEqual([]);
    expect(inlined(document, policy)).toHaveLength(1);
  });

  it('is alone in this: one without stays as it is', () => {
    const plain = `${head(policy)}<body><p>mathematics</p></body></html>`;
    expect(withMathFont(plain, 'f.woff2', 'x/index.html')).toBe(plain);
  });
});
