import { describe, expect, it } from 'vitest';
import { field, settled } from './support/calculator.ts';
import { phone, visit } from './support/page.ts';
import { button } from './support/sheet.ts';

describe('the figures that were given the last time', () => {
  const path = 'calculators/plate-layout/';

  it('are a press away where a menu leads back to the page without them, and the reader’s again', async () => {
    await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
      await settled(page);
      await field(page, 'radius-1').fill('33');
      await field(page, 'radius-1').press('Tab');
      await expect.poll(() => page.url()).toContain('radius-1=33mm');
      // A tab that is put away may be ended without another word.
      const kept = await page.evaluate(() => {
        document.dispatchEvent(new Event('visibilitychange'));
        return localStorage.getItem('gudgeon.last');
      });
      expect(kept).toContain('radius-1=33mm');
      for (const name of ['Calculators', 'Laying out a breaker plate']) {
        await page.getByRole('link', { name, exact: true }).first().click();
      }
      await page.waitForURL(/plate-layout\/$/);
      // Before anything on the page is touched.
      await button(page, 'My last figures').waitFor();
      await expect.poll(() => field(page, 'radius-1').inputValue()).toBe('31.5');
      await button(page, 'My last figures').click();
      await expect.poll(() => field(page, 'radius-1').inputValue()).toBe('33');
      await expect.poll(() => page.locator('#radius-1-mark').innerText()).toBe('yours');
      await expect.poll(() => page.url()).toContain('radius-1=33mm');
      await expect.poll(() => button(page, 'My last figures').count()).toBe(0);
    });
  });

  it('are not offered beside a link’s, nor where only a link’s were seen', async () => {
    await visit({ path: `${path}?radius-1=34mm` }, async (page) => {
      await settled(page);
      await page.goto(new URL('..', page.url()).href);
      await page.goto(new URL('plate-layout/', page.url()).href);
      await settled(page);
      await expect.poll(() => field(page, 'radius-1').inputValue()).toBe('31.5');
      expect(await button(page, 'My last figures').count()).toBe(0);
    });
  });
});
