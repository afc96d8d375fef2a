import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { pageFiles, pathOf } from './support/built.ts';
import { settled } from './support/calculator.ts';
import { visit } from './support/page.ts';
import { readPdf } from './support/pdf.ts';

const A4 = { width: 794, height: 1123 } as const;
const articles = pageFiles
  .filter((file) => /^articles\/[^/]+\/index\.html$/.test(file))
  .map(pathOf);

/** What is wrong with the figures of an article that is printed. */
const faults = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const seen = (selector: string) =>
      [...document.querySelectorAll<HTMLElement>(`.calc-figure ${selector}`)].filter((part) =>
        part.checkVisibility(),
      );
    const pale = seen('.calc-answer *').filter(
      (part) => part.textContent !== '' && getComputedStyle(part).color !== 'rgb(0, 0, 0)',
    );
    const pressed = seen(':is(.step, .help, a)');
    const cut = [
      ...document.querySelectorAll<HTMLInputElement>('.calc-figure .field-box input'),
    ].filter((box) => box.checkVisibility() && box.scrollWidth > box.clientWidth);
    const over = [...document.querySelectorAll('.calc-figure .plot')].filter(
      (plot) =>
        plot.getBoundingClientRect().right > plot.parentElement!.getBoundingClientRect().right + 1,
    );
    return [
      ...pale.map(({ textContent }) => `pale: ${textContent}`),
      ...pressed.map(({ textContent }) => `to press: ${textContent}`),
      ...cut.map(({ name, value }) => `cut: ${name} ${value}`),
      ...over.map((plot) => `over what stands beside it: ${plot.getAttribute('viewBox')!}`),
      ...seen('.drawn-words').map(({ textContent }) => `of the drawing to scale: ${textContent}`),
    ];
  });

describe.each(articles)('/%s on paper', (path) => {
  it('has figures in ink, whole and with nothing to press, and no heading at the foot of a page', () =>
    visit({ path, viewport: A4 }, async (page) => {
      await settled(page);
      await page.emulateMedia({ media: 'print' });
      await expect.poll(() => faults(page)).toEqual([]);
      const headings = await page
        .locator('main :is(h2, h3)')
        .evaluateAll((all) => all.map(({ textContent }) => textContent.trim()));
      expect(headings.length).toBeGreaterThan(3);
      const { feet } = await readPdf(await page.pdf({ format: 'A4' }));
      for (const foot of feet) expect(headings).not.toContain(foot.trim());
    }));
});
