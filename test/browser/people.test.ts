import type { Page } from 'playwright-core';
import { describe, expect, it, vi } from 'vitest';
import { budgetsCame } from './support/budgets.ts';
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
  // Most of it is to wait whether more is said, so that several wait together.
  const together = slugs.flatMap((_, i) => (i % 5 === 0 ? [slugs.slice(i, i + 5)] : []));
  const hearsOnce = (slug: string): Promise<void> =>
    visit({ path: `calculators/${slug}/` }, async (page) => {
      await settled(page);
      const box = page.locator('.calc-form .field-box input').first();
      await listenTo(page);
      await box.press('ArrowUp');
      // The first may change no word of the answer, and then nothing is said of it.
      await vi.waitUntil(async () => (await heard(page)).length > 0, 4000).catch(() => undefined);
      await page.evaluate(() => {
        (globalThis as unknown as { heard: string[] }).heard.length = 0;
      });
      const presses = 3;
      const start = performance.now();
      for (let i = 0; i < presses; i += 1) await box.press('ArrowUp');
      // A machine so busy that it pauses between two keys is spoken to between them.
      const paused = performance.now() - start > 800;
      if (!paused) expect(await heard(page), slug).toEqual([]);
      await page.waitForTimeout(1300);
      const said = await heard(page);
      expect(said.length, slug).toBeLessThanOrEqual(paused ? presses : 1);
      for (const words of said) expect(words.length, slug).toBeLessThan(200);
    });
  it.each(together.map((some) => [some.join(', '), some] as const))(
    '%s: hears the leading answers once, after a pause',
    async (_, some) => {
      await Promise.all(some.map(hearsOnce));
    },
  );

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
