import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { slugs } from './support/built.ts';
import { field, settled } from './support/calculator.ts';
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
const heard = (page: Page): Promise<string[]> =>
  page.evaluate(() => (globalThis as unknown as { heard: string[] }).heard.filter(Boolean));
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement!;
    return at === document.body ? 'the page itself' : at.outerHTML.slice(0, 80);
  });

describe('who hears the page', () => {
  // Most of it is to wait whether more is said.
  it.concurrent.each(slugs)('%s: hears the leading answers once, after a pause', async (slug) => {
    await visit({ path: `calculators/${slug}/` }, async (page) => {
      await settled(page);
      const box = page.locator('.calc-form .field-box input').first();
      await box.press('ArrowUp');
      await page.waitForTimeout(1300);
      await listenTo(page);
      const presses = 3;
      const start = performance.now();
      for (let i = 0; i < presses; i += 1) await box.press('ArrowUp');
      // A machine so busy that it pauses between two keys is spoken to between them.
      const paused = performance.now() - start > 800;
      if (!paused) expect(await heard(page)).toEqual([]);
      await page.waitForTimeout(1300);
      const said = await heard(page);
      expect(said.length).toBeLessThanOrEqual(paused ? presses : 1);
      for (const words of said) expect(words.length).toBeLessThan(200);
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
    expect(await focused(page)).toContain('button');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Leave it' }).press('Enter');
    await expect.poll(() => focused(page)).toContain('<button');
  });
});

describe('paper', () => {
  it.each(slugs)('%s: its address, on two sheets at the most', async (slug) => {
    await visit({ path: `calculators/${slug}/` }, async (page) => {
      await settled(page);
      const paper = await page.pdf({ format: 'A4' });
      const sheets = paper.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? [];
      expect(sheets.length).toBeGreaterThan(0);
      expect(sheets.length).toBeLessThanOrEqual(2);
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
