import { expect, it } from 'vitest';
import { pageFiles, pathOf } from './support/built.ts';
import { visit } from './support/page.ts';

const articles = pageFiles.filter((file) => /^articles\/[^/]+\/index\.html$/.test(file));
const phone = { width: 390, height: 844 };
const wide = { width: 1280, height: 900 };
/** How far from the first line of its paragraph a picture may begin, px. */
const NEAR = 30;

it.each(articles)('%s: a drawing in the margin begins where its paragraph does', (file) =>
  visit({ path: pathOf(file), viewport: wide }, async (page) => {
    const pairs = await page.evaluate(() => {
      const boxes = [...document.querySelectorAll('article figure, .figure-place')].map((figure) =>
        figure.getBoundingClientRect(),
      );
      return [...document.querySelectorAll('article > .beside')].map((pair) => {
        const [figure, text] = [...pair.children].map((child) => child.getBoundingClientRect());
        const { top, bottom, left, right } = figure!;
        const on = boxes.filter(
          (box) => box.left < right && left < box.right && box.top < bottom && top < box.bottom,
        );
        return {
          words: pair.textContent.slice(0, 40),
          below: Math.abs(top - text!.top),
          // Its own box is among them.
          alone: on.length === 1,
        };
      });
    });
    expect(pairs.filter(({ below, alone }) => below > NEAR || !alone)).toEqual([]);
  }),
);

it.each(articles)(
  '%s: on a phone its contents take one line, and open when they are pressed',
  (file) =>
    visit({ path: pathOf(file), viewport: phone, hasTouch: true }, async (page) => {
      const contents = page.locator('.contents');
      if ((await contents.count()) === 0) return;
      const { height, y } = (await contents.boundingBox())!;
      expect(height).toBeLessThan(64);
      expect(y + height).toBeLessThan(phone.height * 0.75);
      await contents.locator('summary').tap();
      const last = contents.locator('a').last();
      await last.tap();
      await expect.poll(() => new URL(page.url()).hash).toBe(await last.getAttribute('href'));
    }),
);
