import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { budgetsCame } from './support/budgets.ts';
import { slugs } from './support/built.ts';
import { field, settled } from './support/calculator.ts';
import { painted } from './support/handles.ts';
import { holdTimers, pass } from './support/held-timers.ts';
import { visit } from './support/page.ts';

/** Writes down, in order, what live regions come to say. */
const listenTo = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const heard: string[] = [];
    (globalThis as unknown as { heard: string[] }).heard = heard;
    const live = (node: Node): Element | null =>
      (node instanceof Element ? node : node.parentElement)?.closest(
        'output, [role="status"], [role="alert"], [role="log"], [aria-live]',
      ) ?? null;
    new MutationObserver((changes) => {
      const regions = new Set(changes.map(({ target }) => live(target)));
      for (const region of regions) {
        if (!region || region.closest('[aria-live="off"]')) continue;
        heard.push(region.textContent.trim());
      }
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
/** As long as somebody who types takes from one key to the next. */
const BETWEEN_KEYS_MS = 500;
const PAUSE_MS = 1500;

const heard = (page: Page): Promise<string[]> =>
  page.evaluate(() => (globalThis as unknown as { heard: string[] }).heard.filter(Boolean));
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement!;
    return at === document.body ? 'the page itself' : at.outerHTML.slice(0, 80);
  });

describe('who hears the page', () => {
  it.each(slugs)('%s: hears the leading answers once, after a pause', async (slug) => {
    await visit({ path: `calculators/${slug}/` }, async (page) => {
      await settled(page);
      const box = page.locator('.calc-form .field-box input').first();
      await holdTimers(page);
      await listenTo(page);
      const step = async (): Promise<void> => {
        await box.press('ArrowUp');
        // What waits for a pause begins to wait once the key is painted.
        await painted(page);
        await pass(page, BETWEEN_KEYS_MS);
        await painted(page);
      };
      // A figure that is the reader's from then on, or refused, is told at once.
      await step();
      await page.evaluate(() => {
        (globalThis as unknown as { heard: string[] }).heard.length = 0;
      });
      for (let i = 0; i < 3; i += 1) await step();
      expect(await heard(page)).toEqual([]);
      await pass(page, PAUSE_MS);
      await painted(page);
      const said = await heard(page);
      // They may change no word of the answer, and then nothing is said of it.
      expect(said.length).toBeLessThanOrEqual(1);
      for (const words of said) expect(words.length).toBeLessThan(200);
      await pass(page, PAUSE_MS);
      await painted(page);
      expect(await heard(page)).toEqual(said);
    });
  });

  it('hears what the answer came to', async () => {
    await visit({ path: 'calculators/piston-position/' }, async (page) => {
      await settled(page);
      await listenTo(page);
      await field(page, 'travel').fill('2.8');
      await expect.poll(() => heard(page)).toHaveLength(1);
      expect((await heard(page))[0]).toMatch(/^Crank angle.*24\.3.*Piston travel: 2\.80/);
    });
  });
});

it('the focus goes with the form that sends figures, and comes back', async () => {
  await visit({ path: 'calculators/piston-position/' }, async (page) => {
    await settled(page);
    await page.getByRole('button', { name: 'Send figures to the sheet' }).press('Enter');
    await expect.poll(() => focused(page)).toContain('type="checkbox"');
    await page.keyboard.press('Space');
    await page.getByRole('button', { name: 'Send to a new sheet' }).press('Enter');
    await page.getByText('Sent to My engine').waitFor();
    await expect.poll(() => focused(page)).toContain('button');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Leave it' }).press('Enter');
    await expect.poll(() => focused(page)).toContain('<button');
  });
});

const sheetsOf = async (page: Page): Promise<number> => {
  const paper = await page.pdf({ format: 'A4' });
  return paper.toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
};

describe('paper', () => {
  it.each(slugs)('%s: its address, on two sheets at the most', async (slug) => {
    await visit({ path: `calculators/${slug}/` }, async (page) => {
      await settled(page);
      await budgetsCame(page);
      const sheets = await sheetsOf(page);
      expect(sheets).toBeGreaterThan(0);
      expect(sheets).toBeLessThanOrEqual(2);
      await page.locator('.calc-form input').first().focus();
      // What listens for the printer is put in after the first paint.
      const address = async () => {
        await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
        return page.locator('.print-address').first().textContent();
      };
      await expect.poll(address).toMatch(new RegExp(`/calculators/${slug}/\\?\\S+=\\S+$`));
    });
  });
});
