import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import subsetFont from 'subset-font';
import { describe, expect, it } from 'vitest';
import { mathSigns } from '../../site/build/math-font.ts';
import { dist, pageFiles, pathOf } from './support/built.ts';
import { phone, visit } from './support/page.ts';
import { signsOf, tablesOf } from './support/sfnt.ts';

const MOST_BYTES = 25_000;

const read = (file: string): string => readFileSync(join(dist, file), 'utf8');
const withFormulas = pageFiles.filter((file) => read(file).includes('<math'));
const fonts = globSync('**/*.woff2', { cwd: dist }).sort();
const font = readFileSync(join(dist, fonts[0] ?? ''));
const signs = mathSigns(withFormulas.map(read));

describe('the font of the formulas', () => {
  it('is the only font of the site beside the lettering, and both together are small', () => {
    expect(fonts.map((file) => /(\w+)\.[^/\\]*$/.exec(file)![1])).toEqual([
      'formulas',
      'lettering',
    ]);
    const sizes = fonts.map((file) => readFileSync(join(dist, file)).length);
    expect(sizes.reduce((sum, size) => sum + size)).toBeLessThan(MOST_BYTES);
  });

  it('says how formulas are set, and holds each of their signs', async () => {
    const plain = await subsetFont(font, signs, { targetFormat: 'truetype' });
    expect(tablesOf(plain)).toContain('MATH');
    const held = signsOf(plain);
    // The signs of what is applied or multiplied unwritten have no form.
    const formed = [...signs].filter((sign) => !/[\u2061-\u2064]/u.test(sign));
    expect(formed.filter((sign) => !held.has(sign.codePointAt(0)!))).toEqual([]);
  });

  it('is kept for use offline, and its licence stands among the notices', () => {
    expect(read('sw.js')).toContain(`"./${fonts[0]!.replaceAll('\\', '/')}"`);
    expect(read('notices/index.html')).toContain('SIL OPEN FONT LICENSE');
  });

  it('is named by the pages that have formulas, and by no others', () => {
    expect(withFormulas.length).toBeGreaterThan(10);
    expect(pageFiles.filter((file) => /\.woff2/.test(read(file)))).toEqual(withFormulas);
  });

  it.each(withFormulas)('sets %s, where nothing moves and no formula is cut off', (file) =>
    visit({ path: pathOf(file), viewport: phone }, async (page) => {
      expect(
        await page.evaluate(() =>
          document.fonts.ready.then((all) =>
            [...all].filter(({ family }) => family === 'Formulas').map(({ status }) => status),
          ),
        ),
      ).toEqual(['loaded']);
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll('.equation')]
          .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth)
          .map(({ textContent }) => textContent.trim()),
      );
      expect(cut).toEqual([]);
    }),
  );
});
