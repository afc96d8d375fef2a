import { chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { pageFiles, pathOf } from './support/built.ts';
import { unfold } from './support/calculator.ts';
import { tooWide } from './support/enlarged.ts';
import { launch } from './support/launch.ts';

/** Twice what a browser comes with, as a reader sets it there, px. */
const TYPE = 32;

describe.each([390, 320])('with type of twice the size set in the browser, %d px wide', (width) => {
  let page: Page;
  let close: () => Promise<void>;
  beforeAll(async () => {
    const server = await launch([`--blink-settings=defaultFontSize=${TYPE}`]);
    close = () => server.close();
    const browser = await chromium.connect(server.wsEndpoint());
    const viewport = { width, height: 844 };
    page = await browser.newPage({ viewport, hasTouch: true, serviceWorkers: 'block' });
  });
  afterAll(() => close());

  it.each(pageFiles)('%s needs no sideways scrolling', async (file) => {
    await page.goto(new URL(pathOf(file), inject('siteUrl')).href);
    const size = await page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
    expect(parseFloat(size)).toBeGreaterThanOrEqual(TYPE);
    const own = page.locator('[data-calculator][data-owns="true"]');
    if ((await own.count()) > 0) {
      await page.locator('.calc-form input[type="text"]').filter({ visible: true }).first().tap();
      await own.and(page.locator('[data-awake]')).waitFor();
      await page.evaluate(unfold);
    }
    expect(await tooWide(page)).toEqual([]);
  });
});
