import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { expectResult, field, result } from './support/calculator.ts';
import { drag } from './support/handles.ts';
import { phone, visit, visitEarly } from './support/page.ts';

const PATH = 'calculators/piston-position/';
const awake = (page: Page): Promise<string | null> =>
  page.locator('[data-calculator]').getAttribute('data-awake');
const answers = (page: Page): Promise<void> =>
  page.locator('[data-calculator][data-ready="true"]').waitFor();

/** A calculator that answers, and that nobody has touched. */
const untouched = (body: (page: Page) => Promise<void>, options = {}): Promise<void> =>
  visit({ path: PATH, ...options }, async (page) => {
    await answers(page);
    expect(await awake(page)).toBeNull();
    await body(page);
  });

describe('a calculator that nobody has touched', () => {
  it('stands as it was served until the reader stirs', async () => {
    await untouched(
      async (page) => {
        await page.evaluate(() => scrollTo(0, 40));
        await expect.poll(() => awake(page)).toBe('true');
        await expectResult(page, 'travel', 2.2);
      },
      { viewport: phone },
    );
  });

  it('takes the first press of a button', async () => {
    await untouched(async (page) => {
      await page.getByRole('button', { name: 'Send figures to the sheet' }).click();
      await page.getByRole('button', { name: 'Send to a new sheet' }).waitFor();
    });
  });

  it('takes the first drag of its picture', async () => {
    await untouched(async (page) => {
      await drag(page, 'Working point', -40, 0);
      await expect.poll(() => result(page, 'travel')).not.toBeCloseTo(2.2, 3);
    });
  });

  it('takes the first key', async () => {
    await untouched(async (page) => {
      await page.getByRole('slider').first().press('ArrowRight');
      await expect.poll(() => result(page, 'travel')).not.toBeCloseTo(2.2, 6);
    });
  });

  it('takes a figure that something else than a keyboard fills in', async () => {
    await untouched(async (page) => {
      await field(page, 'travel').evaluate((input: HTMLInputElement) => {
        input.value = '2.8';
        input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      });
      await expectResult(page, 'travel', 2.8);
      expect(await field(page, 'travel').inputValue()).toBe('2.8');
    });
  });

  it('follows a choice of units made in another tab', async () => {
    await untouched(async (page) => {
      const other = await page.context().newPage();
      await other.goto(new URL('calculators/compression/', inject('siteUrl')).href);
      await other.locator('.lengths .option').last().click();
      await expect.poll(() => page.locator('.calc-answer').textContent()).toContain(' thou');
      expect(await page.locator('.lengths input[value="in"]').isChecked()).toBe(true);
    });
  });

  it('goes where the browser’s history goes', async () => {
    await untouched(async (page) => {
      await page.evaluate(() => {
        history.pushState(null, '', '?travel=2.8mm');
        dispatchEvent(new PopStateEvent('popstate'));
      });
      await expectResult(page, 'travel', 2.8);
    });
  });
});

describe('a calculator with something to show', () => {
  it('shows it untouched, and what has the focus keeps it', async () => {
    await visitEarly(PATH, async (page, letScriptsCome) => {
      await field(page, 'travel').fill('2.');
      letScriptsCome();
      await answers(page);
      await page.keyboard.type('8');
      await expectResult(page, 'travel', 2.8);
    });
  });
});
