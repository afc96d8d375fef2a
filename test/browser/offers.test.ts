import { describe, expect, it } from 'vitest';
import { field, settled } from './support/calculator.ts';
import { phone, visit } from './support/page.ts';
import { button } from './support/sheet.ts';

describe('a text that can be read two ways', () => {
  it('is settled by one press, which keeps the box in hand', async () => {
    const path = 'calculators/breaker-cam/';
    await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
      await settled(page);
      await page.locator('input[name="lengths"][value="in"]').check();
      await field(page, 'gap').fill('0.014');
      const inches = button(page, 'Put in 0.014 in');
      await inches.waitFor();
      expect((await inches.boundingBox())!.height).toBeGreaterThanOrEqual(44);
      await inches.tap();
      await expect.poll(() => field(page, 'gap').inputValue()).toBe('0.014 in');
      await expect.poll(() => inches.count()).toBe(0);
      await expect.poll(() => page.url()).toContain('gap=0.014');
      expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe(
        'gap',
      );
    });
  });
});
