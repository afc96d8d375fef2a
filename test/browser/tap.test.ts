import { expect, it } from 'vitest';
import { field, result, settled } from './support/calculator.ts';
import { phone, visit } from './support/page.ts';

const PATH = 'calculators/piston-position/';
const TOUCH = { path: PATH, viewport: phone, hasTouch: true, isMobile: true };

it('a tap into a box picks its figure, and what is typed takes its place', async () => {
  await visit(TOUCH, async (page) => {
    // The first tap is what fetches the script.
    await field(page, 'travel').tap();
    await page.keyboard.type('1,8');
    await expect.poll(() => field(page, 'travel').inputValue()).toBe('1,8');
    await settled(page);
    await expect.poll(() => result(page, 'travel')).toBeCloseTo(1.8, 9);
    await field(page, 'travel').blur();
    await field(page, 'travel').tap();
    await page.keyboard.type('2');
    await expect.poll(() => field(page, 'travel').inputValue()).toBe('2');
  });
});

it('a box in use is left to the hand: further taps set the caret', async () => {
  await visit(TOUCH, async (page) => {
    await settled(page);
    const chosen = (): Promise<number> =>
      field(page, 'travel').evaluate((box) => {
        const { selectionStart, selectionEnd } = box as HTMLInputElement;
        return selectionEnd! - selectionStart!;
      });
    await field(page, 'travel').tap();
    await expect.poll(chosen).toBe(3);
    // The first of them only lets go of what is picked.
    await expect
      .poll(async () => {
        await field(page, 'travel').tap();
        return chosen();
      })
      .toBe(0);
  });
});
