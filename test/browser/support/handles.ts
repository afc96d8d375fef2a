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

export interface Place {
  readonly x: number;
  readonly y: number;
}

export async function middleOf(part: Locator): Promise<Place> {
  const { x, y, width, height } = (await part.boundingBox())!;
  return { x: x + width / 2, y: y + height / 2 };
}

/** Takes hold of a handle with the mouse, and says where. */
export async function take(page: Page, part: Locator): Promise<Place> {
  // A picture that is yet to be drawn anew would move the handle from under the hand.
  await painted(page);
  await part.scrollIntoViewIfNeeded();
  const start = await middleOf(part);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  return start;
}

/** Drags a handle so many pixels, and says where from. */
export async function dragPart(
  page: Page,
  part: Locator,
  right: number,
  down: number,
): Promise<Place> {
  const start = await take(page, part);
  await page.mouse.move(start.x + right, start.y + down, { steps: 8 });
  await page.mouse.up();
  await painted(page);
  return start;
}

/** Drags the handle of a name so many pixels. */
export async function drag(page: Page, name: string, right: number, down: number): Promise<void> {
  await dragPart(page, handle(page, name), right, down);
}
