import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { budgetsCame } from './support/budgets.ts';
import { slugs } from './support/built.ts';
import { settled } from './support/calculator.ts';
import { visit } from './support/page.ts';

const values = (page: Page): Promise<(string | null)[]> =>
  page.locator('.calc data').evaluateAll((all) => all.map((data) => data.getAttribute('value')));
/** What the page says once all that was unfolded has come. */
const words = async (page: Page): Promise<string> => {
  await budgetsCame(page);
  return page.locator('.calc').innerText();
};

describe.each(slugs)('%s', (slug) => {
  const path = `calculators/${slug}/`;

  it('fits when a reader sets it from right to left, and says the same in every language and time zone of the browser', async () => {
    let said = '';
    let found: (string | null)[] = [];
    await visit({ path }, async (page) => {
      await settled(page);
      [said, found] = [await words(page), await values(page)];

      await page.setViewportSize({ width: 360, height: 740 });
      await page.evaluate(() => {
        document.documentElement.dir = 'rtl';
      });
      await expect
        .poll(() => page.evaluate(() => document.documentElement.scrollWidth), {
          message: 'scrolls sideways',
        })
        .toBe(360);
      expect(await values(page)).toEqual(found);
    });
    for (const locale of ['de-DE', 'ar-EG']) {
      await visit({ path, locale, timezoneId: 'Pacific/Chatham' }, async (page) => {
        await settled(page);
        expect(await words(page), locale).toBe(said);
        expect(await values(page), locale).toEqual(found);
      });
    }
  });
});

it('does not mind a clock that is wrong', async () => {
  await visit({}, async (page) => {
    await page.clock.setFixedTime(new Date('1970-01-01T00:00:00Z'));
    await page.goto(new URL('calculators/piston-position/', page.url()).href);
    await settled(page);
    expect(await words(page)).not.toMatch(/1970|Invalid/);
  });
});
