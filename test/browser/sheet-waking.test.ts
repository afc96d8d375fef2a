import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { jobOf } from '../../calculators/sheet/progress.ts';
import { writeDocument } from '../../calculators/sheet/validate.ts';
import { phone, visit } from './support/page.ts';
import { button, expectKept, keepEngines, ready } from './support/sheet.ts';

const path = 'sheet/';
const SCRIPT = /\/_astro\/.*\.js$/;
/** What a page brings that waits to be touched: less than a tenth of the sheet's scripts. */
const FEW_LETTERS = 16_000;

const demo = { ...demoSheet(), id: 'e-1' };

/** Letters of script that the page has brought so far. */
const scriptLetters = (page: Page): Promise<number> =>
  page.evaluate(() =>
    (performance.getEntriesByType('resource') as PerformanceResourceTiming[])
      .filter(({ name }) => name.endsWith('.js'))
      .reduce((sum, { decodedBodySize }) => sum + decodedBodySize, 0),
  );

const inUse = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.querySelector('[data-sheet][data-ready="true"]') !== null);

/** A page that keeps nothing, and that nobody has touched. */
const untouched = (body: (page: Page) => Promise<void>): Promise<void> =>
  visit({ path, viewport: phone }, async (page) => {
    await page.locator('html[data-ready]').waitFor();
    await page.waitForLoadState('networkidle');
    expect(await inUse(page)).toBe(false);
    await body(page);
  });

/** The same, on a line so slow that its scripts come when they are let come. */
const onSlowLine = (
  body: (page: Page, letScriptsCome: () => void) => Promise<void>,
): Promise<void> =>
  untouched(async (page) => {
    const { promise: held, resolve } = Promise.withResolvers<undefined>();
    await page.route(SCRIPT, async (route) => {
      await held;
      await route.continue();
    });
    await body(page, () => resolve(undefined));
  });

describe('an engine sheet where nothing is kept', () => {
  it('brings few scripts until the reader stirs, and then all of them', async () => {
    await untouched(async (page) => {
      expect(await scriptLetters(page)).toBeLessThan(FEW_LETTERS);
      await page.mouse.wheel(0, 40);
      await expect.poll(() => inUse(page)).toBe(true);
      expect(await scriptLetters(page)).toBeGreaterThan(10 * FEW_LETTERS);
    });
  });

  it('takes the first press', async () => {
    await untouched(async (page) => {
      await button(page, 'Try the demo').click();
      await page.getByText('The demo is open.').waitFor();
    });
  });

  it('does what is pressed before its script has come', async () => {
    await onSlowLine(async (page, letScriptsCome) => {
      await button(page, 'New engine').click();
      letScriptsCome();
      await page.getByLabel('Name', { exact: true }).waitFor();
      await expectKept(page, 'My engine');
    });
  });

  it('opens the list of files before its script has come, and reads what is chosen there', async () => {
    await onSlowLine(async (page, letScriptsCome) => {
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        button(page, 'Open a file').click(),
      ]);
      const buffer = Buffer.from(writeDocument([demo]));
      await chooser.setFiles({ name: 'kept.json', mimeType: 'application/json', buffer });
      letScriptsCome();
      await page.getByText('Taken from “kept.json”').waitFor();
    });
  });

  it('shows what another tab begins', async () => {
    await untouched(async (page) => {
      const other = await page.context().newPage();
      await other.goto(new URL(path, inject('siteUrl')).href);
      await button(other, 'New engine').click();
      await page.getByLabel('Name', { exact: true }).waitFor();
    });
  });
});

describe('an engine sheet that is kept', () => {
  it('shows nothing of the page without one before it has come, and needs no touch', async () => {
    await visit({ path, viewport: phone }, async (page) => {
      await keepEngines(page, demo);
      const { promise: held, resolve } = Promise.withResolvers<undefined>();
      await page.route(SCRIPT, async (route) => {
        await held;
        await route.continue();
      });
      await page.reload({ waitUntil: 'commit' });
      await page.locator('footer').waitFor();
      expect(await button(page, 'New engine').isVisible()).toBe(false);
      resolve(undefined);
      await page.getByRole('heading', { name: 'The engine' }).waitFor();
    });
  });

  it('says that it is ready when every step is drawn, and not before', async () => {
    await visit({ path, viewport: phone }, async (page) => {
      await keepEngines(page, demo);
      await page.addInitScript(() => {
        new MutationObserver(() => {
          const isReady = document.querySelector('[data-sheet][data-ready="true"]') !== null;
          if (!isReady || document.body.dataset.drawn !== undefined) return;
          document.body.dataset.drawn = String(
            document.querySelectorAll('.task > .task-why').length,
          );
        }).observe(document, { subtree: true, attributeFilter: ['data-ready'] });
      });
      await page.reload();
      await ready(page);
      expect(await page.getAttribute('body', 'data-drawn')).toBe(String(jobOf(demo).length));
    });
  });

  it('is drawn to its end, and stands where it was left when it is loaded again', async () => {
    await visit({ path, viewport: phone }, async (page) => {
      await keepEngines(page, demo);
      await page.getByRole('heading', { name: 'Print and share' }).waitFor();
      await expect.poll(() => page.locator('.task:not(:has(> .task-why))').count()).toBe(0);
      // Further down than what is drawn first reaches.
      const left = await page.evaluate(() => {
        scrollTo(0, document.documentElement.scrollHeight * 0.7);
        return scrollY;
      });
      await page.reload({ waitUntil: 'load' });
      await ready(page);
      await expect.poll(() => page.evaluate(() => scrollY)).toBeCloseTo(left, -2);
    });
  });

  /** Goes far down the sheet, and to another page. */
  const leaveFarDown = async (page: Page): Promise<void> => {
    await keepEngines(page, demo);
    await expect.poll(() => page.locator('.task:not(:has(> .task-why))').count()).toBe(0);
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight * 0.7));
    await page.goto(new URL('../faults/', page.url()).href);
  };

  it('begins at its top where it is opened anew, wherever it was left', async () => {
    await visit({ path, viewport: phone }, async (page) => {
      await leaveFarDown(page);
      await page.goto(new URL('../sheet/', page.url()).href);
      await ready(page);
      expect(await page.evaluate(() => scrollY)).toBe(0);
    });
  });

  it('is led to no place of a page of another width', async () => {
    await visit({ path, viewport: phone }, async (page) => {
      await leaveFarDown(page);
      await page.setViewportSize({ width: 740, height: 360 });
      await page.goBack();
      await ready(page);
      expect(await page.evaluate(() => scrollY)).toBe(0);
    });
  });

  it('has its place kept once it is put away, since a phone may end it there', async () => {
    await visit({ path, viewport: phone }, async (page) => {
      await keepEngines(page, demo);
      const top = await page.evaluate(() => {
        scrollTo(0, 900);
        Object.defineProperty(document, 'visibilityState', { value: 'hidden' });
        document.dispatchEvent(new Event('visibilitychange'));
        return scrollY;
      });
      expect(top).toBeGreaterThan(0);
      const kept = await page.evaluate(() => sessionStorage.getItem('gudgeon.sheet-height'));
      expect(JSON.parse(kept!)).toEqual([expect.any(Number), expect.any(String), top]);
    });
  });
});
