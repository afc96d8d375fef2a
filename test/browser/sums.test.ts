import { describe, expect, it } from 'vitest';
import { alertText, expectResult, field, result, settled, query } from './support/calculator.ts';
import { CLIPBOARD } from './support/clipboard.ts';
import { visit } from './support/page.ts';

const PATH = 'calculators/piston-position/';
const given = 'from=travel&stroke=51mm&rod=104mm&offset=0mm';
const isReader = (address: string): boolean => address.includes('sum-reader');

describe('a sum in a field', () => {
  it('is worked out by a parser fetched for it, and stays as it was typed', async () => {
    await visit({ path: `${PATH}?${given}&travel=2mm` }, async (page) => {
      const fetched: string[] = [];
      page.on('request', (request) => fetched.push(request.url()));
      await settled(page);
      await field(page, 'travel').fill('3/32 in');
      await expectResult(page, 'travel', 2.38125);
      expect(fetched.some(isReader)).toBe(false);
      await field(page, 'travel').fill('(2.3+2.4+2.35)/3');
      await expectResult(page, 'travel', 2.35);
      expect(fetched.some(isReader)).toBe(true);
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('(2.3+2.4+2.35)/3');
      await expect.poll(() => page.locator('.field-note').first().innerText()).toBe('= 2.35 mm');
      await expect.poll(() => query(page).get('travel')).toBe('(2.3+2.4+2.35)/3');
      await field(page, 'travel').fill('2.2 mm + 5 thou');
      await expectResult(page, 'travel', 2.327);
      expect(await alertText(page)).toBe('');
    });
  });

  it('stands in an address too', async () => {
    await visit({ path: `${PATH}?${given}&travel=2.31%2B0.04` }, async (page) => {
      await settled(page);
      await expectResult(page, 'travel', 2.35);
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('2.31+0.04');
    });
  });

  it('leaves the last figure while its reader is on its way, and sends nothing', async () => {
    const options = {
      path: `${PATH}?${given}&travel=2mm`,
      permissions: CLIPBOARD,
    };
    await visit(options, async (page) => {
      const { promise: held, resolve } = Promise.withResolvers<undefined>();
      await page.route(/sum-reader/, async (route) => {
        await held;
        await route.continue();
      });
      await settled(page);
      await field(page, 'travel').fill('2.31+0.04');
      await expect.poll(() => alertText(page)).toContain('is being worked out');
      expect(await result(page, 'travel')).toBe(2);
      await page.getByRole('button', { name: 'Copy a link' }).click();
      await page.getByText('Nothing was copied. “Piston travel” cannot be taken').waitFor();
      await expect.poll(() => query(page).get('travel')).toBe('2mm');
      resolve(undefined);
      await expectResult(page, 'travel', 2.35);
      expect(await alertText(page)).toBe('');
    });
  });

  it('is refused with its reason where it is more than a sum', async () => {
    await visit({ path: `${PATH}?${given}&travel=2mm` }, async (page) => {
      await settled(page);
      await field(page, 'travel').fill('1/(2-2)');
      await expect.poll(() => alertText(page)).toContain('divides by zero');
      expect(await result(page, 'travel')).toBe(2);
    });
  });

  it('is in the unit beside the field, in inches as well', async () => {
    await visit({ path: `${PATH}?${given}&travel=2mm` }, async (page) => {
      await settled(page);
      await page.getByLabel('inch', { exact: true }).check();
      await field(page, 'travel').fill('0.08+0.02');
      await expectResult(page, 'travel', 2.54);
      // The address is written when the hand rests.
      await expect.poll(() => page.url()).toContain('0.02)in');
      await page.reload();
      await settled(page);
      await expectResult(page, 'travel', 2.54);
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('0.08+0.02');
    });
  });
});

describe('the keys above a phone’s keyboard', () => {
  const touch = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

  it('type what a pad of digits lacks, and leave the focus', async () => {
    await visit({ path: `${PATH}?${given}&travel=2mm`, ...touch }, async (page) => {
      await settled(page);
      await field(page, 'travel').tap();
      await page.keyboard.press('End');
      await page.getByRole('toolbar', { name: 'More keys' }).getByText('+').tap();
      await page.keyboard.type('5');
      await page.getByRole('toolbar', { name: 'More keys' }).getByText('thou').tap();
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('2+5 thou');
      await expect.poll(() => alertText(page)).toContain('Type the unit behind each');
      expect(await page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe(
        'travel',
      );
    });
  });

  it('are those of the field: a ratio has its colon', async () => {
    await visit({ path: 'calculators/fuel-and-oil/', ...touch }, async (page) => {
      await settled(page);
      const ratio = field(page, 'ratio');
      await ratio.fill('1');
      await ratio.tap();
      await page.keyboard.press('End');
      await page.getByRole('toolbar', { name: 'More keys' }).getByText(':').tap();
      await page.keyboard.type('40');
      await expect.poll(() => ratio.inputValue()).toBe('1:40');
      await page.getByText('read the other way round').waitFor();
    });
  });

  it('do not come where there is a mouse', async () => {
    await visit({ path: PATH }, async (page) => {
      await settled(page);
      await field(page, 'travel').click();
      await expect.poll(() => page.getByRole('toolbar').count()).toBe(0);
    });
  });
});
