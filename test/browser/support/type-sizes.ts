import type { Page } from 'playwright-core';

/** How large the type of each picture of a page, or of a part of it, is set, px. */
export const typeSizes = (page: Page, within = '.calc-picture'): Promise<number[]> =>
  page.evaluate(
    (part) =>
      [...document.querySelectorAll<SVGSVGElement>(`${part} .plot`)]
        .filter((svg) => svg.getClientRects().length > 0)
        .map((svg) => Number.parseFloat(getComputedStyle(svg).fontSize) * svg.getScreenCTM()!.a),
    within,
  );
