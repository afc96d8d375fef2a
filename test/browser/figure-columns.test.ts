import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { pageFiles, pathOf } from './support/built.ts';
import { visit } from './support/page.ts';

const articles = pageFiles.filter((file) => /^articles\/[^/]+\/index\.html$/.test(file));
const tablet = { width: 768, height: 1024 };
/** How far a figure may go on below its last box or its last picture, px: a fifth of the screen. */
const BARE = 205;

/** Of each figure what is bare below its boxes and below its pictures, and what lies on one another. */
const columnsOf = (page: Page) =>
  page.locator('.calc-figure').evaluateAll((figures) =>
    figures.map((figure) => {
      const box = (element: Element) => element.getBoundingClientRect();
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
        laps: all.some((one, i) => all.slice(i + 1).some((other) => lap(one, other))),
        wide: box(figure).right <= innerWidth,
      };
    }),
  );

it.each(articles)('%s: on a tablet no figure leaves a column bare', (file) =>
  visit({ path: pathOf(file), viewport: tablet }, async (page) => {
    const columns = await columnsOf(page);
    expect(columns.filter(({ bare, laps, wide }) => bare > BARE || laps || !wide)).toEqual([]);
  }),
);
