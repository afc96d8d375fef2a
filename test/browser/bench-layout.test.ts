import { describe, expect, it } from 'vitest';
import { visit } from './support/page.ts';
import { typeSizes } from './support/type-sizes.ts';

describe.each(['carburettors', 'geometry', 'plate', 'points', 'position', 'start'])(
  'the sheet for the bench of %s',
  (stage) => {
    it('sets type in its drawings in 12 px or more on a phone, and on a wide screen leaves no half of it bare', async () => {
      const viewport = { width: 360, height: 740 };
      await visit({ path: `bench/${stage}/`, viewport }, async (page) => {
        for (const size of await typeSizes(page, '.bench-sheet')) {
          expect(size).toBeGreaterThanOrEqual(12);
        }
        await expect
          .poll(() => page.evaluate(() => document.documentElement.scrollWidth))
          .toBe(360);

        await page.setViewportSize({ width: 1280, height: 900 });
        const bare = await page.evaluate(() =>
          [...document.querySelectorAll('.bench-sheet')].map((sheet) => {
            const { left, right } = sheet.getBoundingClientRect();
            const middle = (left + right) / 2;
            const parts = [...sheet.querySelectorAll('p, li, figure, table')]
              .filter((part) => part.checkVisibility())
              .map((part) => part.getBoundingClientRect());
            const foot = (beside: (box: DOMRect) => boolean): number =>
              Math.max(0, ...parts.filter(beside).map(({ bottom }) => bottom));
            return Math.abs(foot((box) => box.right < middle) - foot((box) => box.left > middle));
          }),
        );
        for (const height of bare) expect(height).toBeLessThanOrEqual(450);
      });
    });
  },
);
