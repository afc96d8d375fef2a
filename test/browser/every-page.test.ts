import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { COLOURS, expectAccessible } from './support/axe.ts';
import { documentOf, pageFiles, pathOf } from './support/built.ts';
import { doubleText, spaceText, textAsIs, tooWide } from './support/enlarged.ts';
import { phone, visit } from './support/page.ts';
import { settled } from './support/calculator.ts';

/** Width of a 1280 pixel window enlarged to 400 %, at which nothing may need sideways scrolling. */
const ENLARGED = { width: 320, height: 256 } as const;
const DESK = { width: 1280, height: 800 } as const;
const TARGET = 44;

/**
 * Things to press that are smaller than a thumb needs. Links within a sentence are as tall as its
 * lines; a ticked box or button inside a label is pressed by its whole label.
 */
const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate((least) => {
    const pressed = 'button, summary, select, textarea, input, nav a, [role="slider"], .skip';
    return [...document.querySelectorAll<HTMLElement>(pressed)].flatMap((element) => {
      const hit = element.closest('label') ?? element.querySelector('.handle-hit') ?? element;
      const { width, height } = hit.getBoundingClientRect();
      const shown = element.checkVisibility() && width > 1;
      return shown && (height < least - 0.5 || width < least - 0.5)
        ? [`${element.outerHTML.slice(0, 80)} is ${width.toFixed(0)} × ${height.toFixed(0)}`]
        : [];
    });
  }, TARGET);

describe.each(pageFiles.map(pathOf))('/%s', (path) => {
  const site = (): string => inject(path === '404.html' ? 'siteUrl' : 'folderUrl');

  it('is accessible in light and dark, and fits a phone', async () => {
    await visit({ path, site: site(), viewport: phone, colorScheme: 'light' }, async (page) => {
      await settled(page);
      expect(await tooWide(page), 'scrolls sideways at 360 pixels').toEqual([]);
      expect(await smallTargets(page), 'too small for a thumb').toEqual([]);
      await expectAccessible(page);
      await page.emulateMedia({ colorScheme: 'dark' });
      await expectAccessible(page, COLOURS);
      await page.setViewportSize(ENLARGED);
      await expect.poll(() => tooWide(page), { message: 'scrolls sideways at 400 %' }).toEqual([]);
      await spaceText(page);
      expect(await tooWide(page), 'scrolls sideways with text set apart').toEqual([]);
      await textAsIs(page);
      await doubleText(page);
      expect(await tooWide(page), 'scrolls sideways with text of twice the size').toEqual([]);
      await page.setViewportSize(DESK);
      await expect.poll(() => tooWide(page), { message: 'scrolls sideways on a desk' }).toEqual([]);
      await page.setViewportSize({ width: 1280, height: 4000 });
      const foot = async (): Promise<number> => {
        const { y, height } = (await page.locator('.site-foot').boundingBox())!;
        return Math.round(y + height);
      };
      await expect
        .poll(foot, { message: 'its foot hangs in the middle' })
        .toBeGreaterThanOrEqual(4000);
    });
  });

  it('shows the same words without JavaScript', async () => {
    const noScript = { path, site: site(), javaScriptEnabled: false };
    await visit(noScript, async (page) => {
      expect(await page.title()).toBe(documentOf(path.replace(/(^|\/)$/, '$1index.html')).title);
      await page.locator('main h1').waitFor({ state: 'visible' });
    });
  });
});
