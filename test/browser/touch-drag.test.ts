import { describe, expect, it } from 'vitest';
import { settled } from './support/calculator.ts';
import { middleOf } from './support/handles.ts';
import { phone, visit } from './support/page.ts';

/** Pictures whose working point goes up and down, the way in which the page itself would scroll. */
const upright = ['calculators/breaker-cam/', 'calculators/find-tdc/'];

describe('a finger on the working point', () => {
  it.each(upright)('drags it as far as the finger goes, and not the page: %s', async (path) => {
    await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
      await settled(page);
      const handle = page.locator('.handle-hit').last();
      await handle.scrollIntoViewIfNeeded();
      const { x, y } = await middleOf(handle);
      const ended = page.evaluate(
        () =>
          new Promise<string>((resolve) => {
            for (const kind of ['pointerup', 'pointercancel']) {
              document.addEventListener(kind, () => resolve(kind), { capture: true, once: true });
            }
          }),
      );
      const touch = await page.context().newCDPSession(page);
      await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
      for (let step = 1; step <= 10; step += 1) {
        const at = { x: x - step, y: y + 5 * step };
        await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [at] });
      }
      await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
      expect(await ended).toBe('pointerup');
    });
  });
});
