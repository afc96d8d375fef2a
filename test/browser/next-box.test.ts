import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { field, settled } from './support/calculator.ts';
import { phone, visit } from './support/page.ts';

const inUse = (page: Page): Promise<string> =>
  page.evaluate(() => (document.activeElement as HTMLInputElement).name);

const onPage = (path: string, body: (page: Page) => Promise<void>): Promise<void> =>
  visit({ path: `calculators/${path}`, viewport: phone }, async (page) => {
    await settled(page);
    await body(page);
  });

it('three readings are typed in a row, with one touch and the key that ends a figure', () =>
  onPage('plate-setting/', async (page) => {
    await field(page, 'fired-1').focus();
    await page.keyboard.press('Control+a');
    for (const reading of ['2,1', '2.3', '2.25']) {
      await page.keyboard.type(reading);
      await page.keyboard.press('Enter');
    }
    const typed = (): Promise<string[]> =>
      Promise.all(['fired-1', 'fired-2', 'fired-3'].map((key) => field(page, key).inputValue()));
    await expect.poll(typed).toEqual(['2,1', '2.3', '2.25']);
    await expect.poll(() => inUse(page)).not.toMatch(/^fired/);
  }));

it('an example’s figure is confirmed first, and what is refused is stayed with', () =>
  onPage('piston-position/?travel=2.2mm&stroke=52mm&example=rod', async (page) => {
    await page.locator('details:has(#rod)').evaluate((group) => group.setAttribute('open', ''));
    await field(page, 'rod').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('#rod-mark').innerText()).toBe('yours');
    await expect.poll(() => inUse(page)).toBe('rod');
    await page.keyboard.press('Enter');
    await expect.poll(() => inUse(page)).toBe('offset');
    await field(page, 'stroke').fill('x');
    await field(page, 'stroke').press('Enter');
    await expect.poll(() => inUse(page)).toBe('stroke');
  }));

it('from the last box in sight the keys go down', () =>
  onPage('piston-position/?travel=2.2mm', async (page) => {
    const last = page
      .locator('[data-calculator] input[type="text"]')
      .filter({ visible: true })
      .last();
    await last.focus();
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    await expect.poll(() => inUse(page)).toBeUndefined();
  }));

it('boxes of folded groups are passed over', () =>
  onPage('piston-position/?travel=2.2mm&stroke=52mm', async (page) => {
    const folded = (key: string): Promise<boolean> =>
      field(page, key).evaluate((box) => box.closest('details:not([open])') !== null);
    for (const key of ['stroke', 'rotor']) {
      await field(page, key).evaluate((box) => {
        box.closest('details')!.open = false;
      });
      await expect.poll(() => folded(key)).toBe(true);
    }
    await field(page, 'travel').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => inUse(page)).toBeUndefined();
    await field(page, 'rotor').evaluate((box) => {
      box.closest('details')!.open = true;
    });
    await field(page, 'travel').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => inUse(page)).toBe('rotor');
  }));
