import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { pageFiles, pathOf } from './support/built.ts';
import { visit } from './support/page.ts';

const articles = pageFiles.filter((file) => /^articles\/[^/]+\/index\.html$/.test(file));
/** The least width with two columns, one at which two pictures just fit, the most with pictures that are pushed sideways, and a tablet's. */
const WIDTHS = [640, 720, 750, 768];
const height = 1024;
/** How far a figure may go on below its last box or its last picture, px: a fifth of the screen. */
const BARE = 205;

/** Of each figure what is bare below its boxes and below its pictures, and what lies on one another. */
const columnsOf = (page: Page) =>
  page.locator('.calc-figure').evaluateAll((figures) =>
    figures.map((figure) => {
      const box = (element: Element) => element.getBoundingClientRect();
      const strip = figure.querySelector('.calc-picture')!;
      const foot = box(figure.querySelector('.figure-foot')!).top;
      const pictures = [...figure.querySelectorAll('.calc-picture > *')]
        .map(box)
        .filter(({ width }) => width > 0);
      const parts = [
        figure.querySelector('.calc-answer')!,
        figure.querySelector('.calc-form')!,
      ].map(box);
      const lap = (one: DOMRect, other: DOMRect) =>
        one.left < other.right - 1 &&
        other.left < one.right - 1 &&
        one.top < other.bottom - 1 &&
        other.top < one.bottom - 1;
      const all = [...pictures, ...parts];
      const lowest = (boxes: readonly DOMRect[]) => Math.max(...boxes.map(({ bottom }) => bottom));
      const whole = box(figure);
      const half = (whole.left + whole.right) / 2;
      const isAcross = ({ width }: DOMRect) => width > 0.7 * whole.width;
      const middle = ({ left, right }: DOMRect) => (left + right) / 2;
      const sides = [
        all.filter((one) => isAcross(one) || middle(one) < half),
        all.filter((one) => isAcross(one) || middle(one) > half),
      ];
      return {
        bare: Math.round(Math.max(...sides.map((side) => foot - lowest(side)))),
        // It is said that there is more to the side where there is, and nowhere else.
        misled:
          figure.querySelector('.sideways')!.checkVisibility() !==
          strip.scrollWidth > strip.clientWidth + 1,
        // Nobody pushes a picture for a few letters that are cut from its edge.
        sliver:
          strip.scrollWidth > strip.clientWidth + 1 && strip.scrollWidth < strip.clientWidth + 60,
        // A figure and its unit stand whole in their box.
        cut: [...figure.querySelectorAll<HTMLInputElement>('.field-box input')].some(
          (input) => input.scrollWidth > input.clientWidth + 1,
        ),
        laps: all.some((one, i) => all.slice(i + 1).some((other) => lap(one, other))),
        wide: box(figure).right <= innerWidth,
      };
    }),
  );

it.each(articles)('%s: on a tablet no figure leaves a column bare', (file) =>
  visit({ path: pathOf(file), viewport: { width: WIDTHS[0]!, height } }, async (page) => {
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height });
      const columns = await columnsOf(page);
      const wrong = columns.filter(
        ({ bare, cut, laps, misled, sliver, wide }) =>
          bare > BARE || cut || laps || misled || sliver || !wide,
      );
      expect(wrong, String(width)).toEqual([]);
    }
  }),
);
