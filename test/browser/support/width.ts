import type { Page } from 'playwright-core';

/**
 * How far the page reaches to the right. Parts that are skipped or clipped while they are off the
 * screen are counted as a reader who scrolls to them would find them.
 */
export const reach = (page: Page): Promise<number> =>
  page.evaluate(() => {
    for (const part of document.querySelectorAll<HTMLElement>('.calc-picture, .calc-more')) {
      part.style.contentVisibility = 'visible';
    }
    return document.documentElement.scrollWidth;
  });
