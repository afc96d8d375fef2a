import { describe, expect, it } from 'vitest';
import { pageFiles, pathOf } from './support/built.ts';
import { settled } from './support/calculator.ts';
import { visit } from './support/page.ts';
import { readPdf } from './support/pdf.ts';

const A4 = { width: 794, height: 1123 } as const;
const calculators = pageFiles
  .filter((file) => /^calculators\/[^/]+\/index\.html$/.test(file))
  .map(pathOf);

describe.each(calculators)('/%s on paper', (path) => {
  it('has no blank page', () =>
    visit({ path, viewport: A4 }, async (page) => {
      await settled(page);
      for (const format of ['A4', 'Letter']) {
        const { feet } = await readPdf(await page.pdf({ format }));
        expect(feet).not.toContain('');
      }
      // Columns that run out of the paper have all on it shrunk, and move the first of it inwards.
      await page.evaluate(() => localStorage.setItem('gudgeon.lengths', 'in'));
      await page.reload();
      await settled(page);
      const { left } = await readPdf(await page.pdf({ format: 'A4' }));
      expect(left).toBeLessThan(30);
    }));
});
