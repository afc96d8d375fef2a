import { describe, expect, it } from 'vitest';
import { phone, visit } from './support/page.ts';

/** How far a page's parts have moved of themselves since it was opened (Layout Instability, W3C). */
const movedSoFar = (): Promise<number> =>
  new Promise((resolve) => {
    let moved = 0;
    const observer = new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) moved += (entry as unknown as { value: number }).value;
    });
    observer.observe({ type: 'layout-shift', buffered: true });
    // What has moved is told of once the frame in which it moved is painted.
    requestAnimationFrame(() =>
      requestAnimationFrame(() =>
        setTimeout(() => {
          observer.disconnect();
          resolve(moved);
        }),
      ),
    );
  });

describe('nothing moves as a page comes to life', () => {
  it.each(['', 'articles/where-the-piston-is/', 'calculators/piston-position/', 'sheet/'])(
    '/%s',
    async (path) => {
      await visit({ path, viewport: phone }, async (page) => {
        await page.waitForLoadState('networkidle');
        expect(await page.evaluate(movedSoFar)).toBeLessThan(0.01);
      });
    },
  );
});
