import { expect, it } from 'vitest';
import { pageFiles, pathOf } from './support/built.ts';
import { visit } from './support/page.ts';

const articles = pageFiles.filter((file) => /^articles\/[^/]+\/index\.html$/.test(file));
const wide = { width: 1280, height: 900 };
/** What may lie between two pictures of the margin, px. */
const APART = 60;
/** How far from the first line of its paragraph a picture may begin, px. */
const NEAR = 30;

it.each(articles)('%s: a drawing in the margin begins where its paragraph does', (file) =>
  visit({ path: pathOf(file), viewport: wide }, async (page) => {
    const pairs = await page.evaluate(() => {
      const floats = [...document.querySelectorAll('article figure, .figure-place')].filter(
        (figure) =>
          getComputedStyle(figure).float === 'inline-end' || figure.matches('.figure-place'),
      );
      return [...document.querySelectorAll('article > .beside')].map((pair) => {
        const [figure, text] = [...pair.children].map((child) => child.getBoundingClientRect());
        const above = floats
          .filter((other) => !pair.contains(other))
          .map((other) => other.getBoundingClientRect())
          .filter(({ top, right }) => top < figure!.top && right > figure!.left)
          .map(({ bottom }) => bottom);
        return {
          words: pair.textContent.slice(0, 40),
          below: figure!.top - text!.top,
          above: figure!.top - Math.max(-1e6, ...above),
        };
      });
    });
    const astray = pairs.filter(({ below, above }) => below > NEAR && above > APART);
    expect(astray).toEqual([]);
    expect(pairs.filter(({ above }) => above < 0)).toEqual([]);
  }),
);
