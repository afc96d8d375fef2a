import type { Page } from 'playwright-core';

/** How large the type of each picture of a page is set, px. */
export const typeSizes = (page: Page): Promise<number[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<SVGSVGElement>('.calc-picture .plot')]
      .filter((svg) => svg.getClientRects().length > 0)
      .map((svg) => Number.parseFloat(getComputedStyle(svg).fontSize) * svg.getScreenCTM()!.a),
  );
