import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { field, result, settled } from './support/calculator.ts';
import { middleOf } from './support/handles.ts';
import { CLIPBOARD } from './support/clipboard.ts';
import { holdTimers, pass } from './support/held-timers.ts';
import { phone, visit, visitEarly } from './support/page.ts';

const PATH = 'calculators/piston-position/';
const TOUCH = { path: PATH, viewport: phone, hasTouch: true, isMobile: true };

it('the row of keys stands on the phone’s own keyboard, where that covers the page', async () => {
  await visit(TOUCH, async (page) => {
    await settled(page);
    // A keyboard over the page leaves the window as it is and makes what is seen of it lower.
    const cover = (height: number): Promise<void> =>
      page.evaluate((by) => {
        const screen = window.visualViewport!;
        Object.defineProperty(screen, 'height', { configurable: true, value: innerHeight - by });
        screen.dispatchEvent(new Event('resize'));
      }, height);
    await field(page, 'travel').tap();
    const row = page.locator('.key-row');
    await row.waitFor();
    const foot = (): Promise<number> =>
      row.evaluate((keys) => Math.round(innerHeight - keys.getBoundingClientRect().bottom));
    await expect.poll(foot).toBe(0);
    await cover(260);
    await expect.poll(foot).toBe(260);
    await cover(0);
    await expect.poll(foot).toBe(0);
    await cover(260);
    // What is seen has been pushed up by as much as the keyboard is high: none of its foot is covered.
    await page.evaluate(() => {
      const screen = window.visualViewport!;
      Object.defineProperty(screen, 'offsetTop', { configurable: true, value: 260 });
      screen.dispatchEvent(new Event('scroll'));
    });
    await expect.poll(foot).toBe(0);
  });
});

it('a link that was copied is said to be for five seconds, and then no more', async () => {
  await visit({ path: PATH, permissions: CLIPBOARD }, async (page) => {
    await settled(page);
    await field(page, 'travel').fill('2.5');
    await expect.poll(() => result(page, 'travel')).toBeCloseTo(2.5, 9);
    const said = (): Promise<string> => page.locator('.copy-said').innerText();
    await holdTimers(page);
    await page.getByRole('button', { name: 'Copy a link to this calculation' }).click();
    await expect.poll(said).toMatch(/Link copied/);
    await pass(page, 4900);
    await expect.poll(said).toMatch(/Link copied/);
    await pass(page, 200);
    await expect.poll(said).toBe('');
  });
});

it('a finger on a handle whose script has not come does not push the page', async () => {
  await visitEarly(PATH, async (page, letScriptsCome) => {
    const handle = page.locator('[role="slider"]').first();
    await handle.waitFor();
    letScriptsCome();
    await expect
      .poll(() => page.evaluate(() => 'ready' in document.documentElement.dataset))
      .toBe(true);
    // Before a sign of life the page is as it was served.
    const kept = await handle.evaluate((target) => {
      const event = new Event('touchmove', { bubbles: true, cancelable: true });
      target.dispatchEvent(event);
      return event.defaultPrevented;
    });
    expect(kept).toBe(true);
    expect(await page.locator('[data-awake]').count()).toBe(0);
  });
});

it('a ± that a link brings and that cannot be read has its box, with what is wrong beside it', async () => {
  await visit({ path: `${PATH}?travel=2.5mm&travel-error=0.02x` }, async (page) => {
    await settled(page);
    await expect.poll(() => field(page, 'travel-error').inputValue()).toBe('0.02x');
    const problem = page.locator('#travel-error-problem');
    await expect.poll(() => problem.innerText()).toMatch(/“x” is not a unit/);
  });
});

it('with a mouse a press into a box sets the caret, and picks nothing', async () => {
  await visit({ path: PATH }, async (page) => {
    await settled(page);
    await field(page, 'travel').click();
    const picked = (): Promise<number> =>
      field(page, 'travel').evaluate((box) => {
        const { selectionStart, selectionEnd } = box as HTMLInputElement;
        return selectionEnd! - selectionStart!;
      });
    await expect
      .poll(() => field(page, 'travel').evaluate((box) => box === document.activeElement))
      .toBe(true);
    await expect.poll(picked).toBe(0);
  });
});

it('a key that steps a figure writes it into the box in use', async () => {
  await visit({ path: `${PATH}?travel=2.5mm` }, async (page) => {
    await settled(page);
    await field(page, 'travel').focus();
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => result(page, 'travel')).toBeGreaterThan(2.5);
    await expect
      .poll(async () => Number(await field(page, 'travel').inputValue()))
      .toBe(await result(page, 'travel'));
  });
});

const lastKept = (page: Page): Promise<string> =>
  page.evaluate(() => localStorage.getItem('gudgeon.last') ?? '');

it('the last figures are kept as a page is left, though it was never put away', async () => {
  await visit({ path: PATH }, async (page) => {
    await settled(page);
    await field(page, 'travel').fill('2.5');
    await field(page, 'travel').press('Tab');
    await expect.poll(() => page.url()).toContain('travel=2.5mm');
    expect(await lastKept(page)).toBe('');
    await page.evaluate(() => window.dispatchEvent(new Event('pagehide')));
    expect(await lastKept(page)).toContain('travel=2.5mm');
  });
});

it('the last figures of one calculator stay where those of another are kept', async () => {
  await visit({ path: PATH }, async (page) => {
    for (const [path, key] of [
      [PATH, 'travel'],
      ['calculators/breaker-cam/', 'gap'],
    ] as const) {
      await page.goto(new URL(`../../${path}`, page.url()).href);
      await settled(page);
      await field(page, key).fill('0.5');
      await field(page, key).press('Tab');
      await expect.poll(() => page.url()).toContain(`${key}=0.5mm`);
      await page.evaluate(() => window.dispatchEvent(new Event('pagehide')));
    }
    expect(await lastKept(page)).toMatch(/travel=0\.5mm.*gap=0\.5mm/);
  });
});

it.each(['visibilitychange', 'pagehide'])(
  'a figure stands in the address when the page is put away before its time: %s',
  async (type) => {
    await visit({ path: PATH }, async (page) => {
      await settled(page);
      // Many edits at once are written later.
      await page.evaluate(() => {
        const set = window.setTimeout.bind(window);
        window.setTimeout = ((run: () => void, ms = 0) =>
          ms === 30 ? 0 : set(run, ms)) as typeof window.setTimeout;
      });
      await field(page, 'travel').fill('2.5');
      await expect.poll(() => result(page, 'travel')).toBeCloseTo(2.5, 9);
      await expect.poll(() => page.url()).not.toContain('travel=2.5mm');
      await page.evaluate((name) => {
        (name === 'pagehide' ? window : document).dispatchEvent(new Event(name));
      }, type);
      await expect.poll(() => page.url()).toContain('travel=2.5mm');
    });
  },
);

it('a key, a pause and another key are two steps of the back button', async () => {
  await visit({ path: PATH }, async (page) => {
    await settled(page);
    const travel = (text: string) =>
      expect.poll(() => new URL(page.url()).searchParams.get('travel')).toBe(text);
    await field(page, 'travel').fill('2.5');
    await travel('2.5mm');
    // Longer than an edit lasts.
    await page.evaluate(() => {
      const now = performance.now.bind(performance);
      performance.now = () => now() + 1600;
    });
    await field(page, 'travel').fill('2.6');
    await travel('2.6mm');
    await page.goBack();
    await travel('2.5mm');
    await expect.poll(() => field(page, 'travel').inputValue()).toBe('2.5');
  });
});

it('while the picture is dragged its figures follow, however quick the hand', async () => {
  await visit({ path: PATH }, async (page) => {
    await settled(page);
    await field(page, 'travel').fill('2.5');
    await expect.poll(() => result(page, 'travel')).toBeCloseTo(2.5, 9);
    const { x, y } = await middleOf(page.locator('.handle-hit').first());
    await page.evaluate(() => {
      const told = document.querySelector<HTMLElement>('output[name="angle"]')!;
      const { dataset } = document.body;
      dataset['told'] = '0';
      new MutationObserver(() => {
        dataset['told'] = String(Number(dataset['told']) + 1);
      }).observe(told, { subtree: true, childList: true, characterData: true });
    });
    await page.mouse.move(x, y);
    await page.mouse.down();
    // No pause between two moves is as long as the figures wait.
    for (let by = 0; by < 300; by += 1) {
      await page.mouse.move(x + (by % 60) / 2, y + (by % 60) / 2);
    }
    const seen = await page.evaluate(() => Number(document.body.dataset['told']));
    await page.mouse.up();
    expect(seen).toBeGreaterThan(3);
  });
});
