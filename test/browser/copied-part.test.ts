import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { renderPdf } from '../drawing/render-pdf.ts';
import { expectResult, field, settled } from './support/calculator.ts';
import { visit } from './support/page.ts';

/** A rectangle of 40 by 30 mm by its four sides and both diagonals. */
const RECTANGLE =
  '?holes=4&span=centres&distances=6&a-1=1&b-1=2&distance-1=40mm&a-2=1&b-2=3&distance-2=50mm' +
  '&a-3=2&b-3=3&distance-3=30mm&a-4=1&b-4=4&distance-4=30mm&a-5=2&b-5=4&distance-5=50mm' +
  '&a-6=3&b-6=4&distance-6=40mm&about=circle&sets=1&outline=lands';

describe('a part copied by caliper', () => {
  it('has its holes where a 3-4-5 triangle puts them, and goes on to a plate', async () => {
    await visit({ path: `calculators/hole-pattern/${RECTANGLE}` }, async (page) => {
      await settled(page);
      await expectResult(page, 'x-3', 40, 9);
      await expectResult(page, 'y-3', 30, 9);
      await expectResult(page, 'pitch-radius', 25, 9);
      const [onward] = await Promise.all([
        page.waitForURL(/plate-layout/),
        page.getByRole('link', { name: 'Lay out a breaker plate with these places' }).click(),
      ]).then(() => [page]);
      await settled(onward!);
      await expect.poll(() => field(onward!, 'radius-3').inputValue()).toBe('25');
    });
  });

  it('says beside the field what is wrong with a distance, and keeps what was typed', async () => {
    await visit({ path: `calculators/hole-pattern/${RECTANGLE}` }, async (page) => {
      await settled(page);
      await field(page, 'b-6').fill('3');
      await page.locator('#b-6-problem').waitFor();
      await expect
        .poll(() => page.locator('#b-6-problem').textContent())
        .toContain('from hole 3 to itself');
      await expect.poll(() => field(page, 'b-6').inputValue()).toBe('3');
    });
  });

  it('saves its files', async () => {
    await visit({ path: `calculators/hole-pattern/${RECTANGLE}` }, async (page) => {
      await settled(page);
      const saved = async (label: string): Promise<Buffer> => {
        const [download] = await Promise.all([
          page.waitForEvent('download'),
          page.getByRole('button', { name: label }).click(),
        ]);
        const parts: Buffer[] = [];
        for await (const part of await download.createReadStream()) parts.push(part as Buffer);
        return Buffer.concat(parts);
      };
      const dxf = new DxfParser().parseSync((await saved('True scale, DXF')).toString())!;
      expect(dxf.entities.filter(({ type }) => type === 'CIRCLE').length).toBeGreaterThan(3);
      const [sheet] = await renderPdf(await saved('Template to print, PDF'), 72);
      expect(sheet!.words).toContain('Print at 100%');
    });
  });
});

it('a picture saved from the example says so below it', async () => {
  await visit({ path: 'calculators/piston-position/' }, async (page) => {
    await settled(page);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Picture, SVG' }).click(),
    ]);
    const parts: Buffer[] = [];
    for await (const part of await download.createReadStream()) parts.push(part as Buffer);
    const svg = Buffer.concat(parts).toString();
    expect(svg).toContain('All figures are an invented example’s.');
    const [, , , height] = /viewBox="([^"]*)"/.exec(svg)![1]!.split(' ').map(Number);
    const [, y] = /<text x="[^"]*" y="([^"]*)"[^>]*>All figures/.exec(svg)!;
    expect(Number(y)).toBeLessThan(height!);
  });
});

describe('a quantity measured again', () => {
  it('gives the example’s figure up for the first reading', async () => {
    await visit({ path: 'calculators/piston-position/' }, async (page) => {
      await settled(page);
      await field(page, 'travel').focus();
      await page.getByRole('button', { name: /^Again: another reading of piston travel/i }).click();
      await page.keyboard.type('3');
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('3');
    });
  });

  it('takes another reading by a button, and keeps all in box and address', async () => {
    await visit({ path: 'calculators/piston-position/?travel=2.31mm' }, async (page) => {
      await settled(page);
      const again = page.getByRole('button', { name: /^Again: another reading of piston travel/i });
      await field(page, 'travel').focus();
      for (const next of ['2.35', '2.28']) {
        await again.click();
        await page.keyboard.type(next);
      }
      await field(page, 'travel').blur();
      await page.waitForURL(/travel=2\.31mm%3B2\.35mm%3B2\.28mm/);
      const said = page.locator('.field', { has: field(page, 'travel') }).locator('.field-note');
      await expect.poll(() => said.textContent()).toContain('Mean of 3 readings');
      await page.reload();
      await settled(page);
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('2.31; 2.35; 2.28');
      await expectResult(page, 'travel', (2.31 + 2.35 + 2.28) / 3, 9);
    });
  });
});
