import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { millimetresLeft } from '../calculators/metric-left.ts';
import { slugs } from './support/built.ts';
import { settled } from './support/calculator.ts';
import { phone, visit } from './support/page.ts';
import { keepEngines } from './support/sheet.ts';

const KEY = 'gudgeon.lengths';

const remember = (page: Page, lengths: string): Promise<void> =>
  page.evaluate(([key, value]) => localStorage.setItem(key!, value!), [KEY, lengths]);

const bodyOf = (page: Page): Promise<string> => page.evaluate(() => document.body.outerHTML);

/** Tables that run out of their frame. */
const cutTables = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.table-wrap')]
      .filter((frame) => frame.scrollWidth > frame.clientWidth)
      .map((frame) => frame.querySelector('caption')?.textContent ?? ''),
  );

/** Boxes of one figure that show less than all of it, every fold open. */
const cutBoxes = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
    return [...document.querySelectorAll<HTMLInputElement>('.calc-form .field-box > input')]
      .filter((box) => !box.closest('.field-list') && box.scrollWidth > box.clientWidth)
      .map(({ id, value }) => `${id}: ${value}`);
  });

describe.each(slugs)('calculators/%s/ on a phone', (slug) => {
  it('has in inches whatever has an inch twin, and every table and figure whole in either', async () => {
    await visit({ path: `calculators/${slug}/`, viewport: phone }, async (page) => {
      await settled(page);
      expect(await cutTables(page), 'in mm').toEqual([]);
      expect(await cutBoxes(page), 'in mm').toEqual([]);
      expect(await page.locator('.as-inches:visible').count()).toBe(0);
      await remember(page, 'in');
      await page.reload();
      await settled(page);
      await page.locator('[data-awake="true"]').waitFor({ state: 'attached' });
      expect(await page.locator('.as-mm:visible').count()).toBe(0);
      await expect.poll(async () => millimetresLeft(await bodyOf(page))).toEqual([]);
      expect(await cutTables(page), 'in inches').toEqual([]);
      expect(await cutBoxes(page), 'in inches').toEqual([]);
    });
  });
});

it.each([360, 390])('shows all digits of a figure from a link, %d px wide', async (width) => {
  const path = 'calculators/piston-position/?stroke=65&rod=120.65&travel=2.675';
  await visit({ path, viewport: { ...phone, width } }, async (page) => {
    await remember(page, 'in');
    await page.reload();
    await settled(page);
    await expect.poll(() => page.locator('#travel').inputValue()).toBe('0.10531');
    expect(await cutBoxes(page)).toEqual([]);
  });
});

describe('texts that no script draws', () => {
  const path = 'calculators/piston-position/';
  const shown = async (page: Page): Promise<string> => {
    const fold = page.locator('.fold:has(.ready)');
    if ((await fold.getAttribute('open')) === null) await fold.locator('> summary').click();
    return page.locator('.ready').innerText();
  };

  it('follow the choice at once, here and where another page makes it', async () => {
    await visit({ path }, async (page) => {
      await settled(page);
      expect(await shown(page)).toMatch(/stroke 51 mm/);
      await page.getByLabel('inch', { exact: true }).check();
      await expect.poll(() => shown(page)).toMatch(/stroke 2\.008 in/);
      // The line that it is folded to says the same of the engine.
      const line = page.locator('.fold:has(.ready) .fold-holds');
      expect(await line.innerText()).toMatch(/stroke 2\.008 in/);
      await page.getByLabel('mm', { exact: true }).check();
      await expect.poll(() => shown(page)).toMatch(/stroke 51 mm/);
      const other = await page.context().newPage();
      await other.goto(page.url());
      await remember(other, 'in');
      await expect.poll(() => shown(page)).toMatch(/stroke 2\.008 in/);
    });
  });

  it('follow it when the back button takes the page out of the browser’s memory', async () => {
    await visit({ path }, async (page) => {
      await settled(page);
      expect(await shown(page)).toMatch(/stroke 51 mm/);
      await remember(page, 'in');
      await page.evaluate(() =>
        dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true })),
      );
      await expect.poll(() => shown(page)).toMatch(/stroke 2\.008 in/);
    });
  });

  it('are in millimetres where no script runs', async () => {
    await visit({ path, javaScriptEnabled: false }, async (page) => {
      expect(await shown(page)).toMatch(/stroke 51 mm/);
      expect(await page.locator('.as-inches:visible').count()).toBe(0);
    });
  });
});

describe('the engine sheet', () => {
  it('has in inches whatever has an inch twin', async () => {
    await visit({ path: 'sheet/', viewport: phone }, async (page) => {
      await remember(page, 'in');
      await keepEngines(page, demoSheet());
      await expect.poll(async () => millimetresLeft(await bodyOf(page))).toEqual([]);
    });
  });
});
