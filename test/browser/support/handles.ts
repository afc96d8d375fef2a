import type { Locator, Page } from 'playwright-core';

/** A handle in a picture, by what it moves. */
export const handle = (page: Page, name: string): Locator => page.getByRole('slider', { name });

/** Waits until what the last event brought has been painted, the tables that follow it too. */
export const painted = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((done) => {
        let frames = 3;
        const frame = (): void => {
          frames -= 1;
          if (frames > 0) requestAnimationFrame(frame);
          else setTimeout(done);
        };
        requestAnimationFrame(frame);
      }),
  );

/** Takes a handle and drags it so many pixels. */
export async function drag(page: Page, name: string, right: number, down: number): Promise<void> {
  await handle(page, name).scrollIntoViewIfNeeded();
  const { x, y, width, height } = (await handle(page, name).boundingBox())!;
  const [fromX, fromY] = [x + width / 2, y + height / 2];
  await page.mouse.move(fromX, fromY);
  await page.mouse.down();
  await page.mouse.move(fromX + right, fromY + down, { steps: 8 });
  await page.mouse.up();
  await painted(page);
}
