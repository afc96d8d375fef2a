import type { Browser, Page } from 'playwright-core';

export const SLOW_DOWN = 4;
const EVENTS = 60;

/** Times, in milliseconds, each from an event's own time stamp to the end of the frame that shows it. */
export type Times = readonly number[];

declare global {
  interface Window {
    /** Kept by the page for the benchmark: the times so far. */
    benchTimes: number[];
  }
}

/**
 * Takes the time of every event of a kind: a message posted within the frame's last callback is
 * handled right after that frame has been painted.
 */
async function watch(page: Page, event: string): Promise<void> {
  await page.evaluate((name) => {
    window.benchTimes = [];
    addEventListener(
      name,
      ({ timeStamp }) => {
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port2.onmessage = () => window.benchTimes.push(performance.now() - timeStamp);
          port1.postMessage(undefined);
        });
      },
      { capture: true },
    );
  }, event);
}

const timed = (page: Page, count: number): Promise<unknown> =>
  page.waitForFunction((least) => window.benchTimes.length >= least, count);

async function slowed<T>(
  browser: Browser,
  address: string,
  work: (page: Page) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  try {
    const page = await context.newPage();
    await page.goto(address, { waitUntil: 'networkidle' });
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOW_DOWN });
    return await work(page);
  } finally {
    await context.close();
  }
}

/** Steps the first field up and down by the arrow keys: each press works the whole page out anew. */
export function typing(browser: Browser, address: string): Promise<Times> {
  return slowed(browser, address, async (page) => {
    await page.locator('.calc-form input[type="text"]').first().focus();
    await watch(page, 'keydown');
    for (let i = 0; i < EVENTS; i += 1) {
      await page.keyboard.press(i % 2 === 0 ? 'ArrowUp' : 'ArrowDown');
      await timed(page, i + 1);
    }
    return page.evaluate(() => window.benchTimes);
  });
}

/** Drags the picture's working point to and fro; nothing when the picture has none. */
export function dragging(browser: Browser, address: string): Promise<Times | undefined> {
  return slowed(browser, address, async (page) => {
    const handle = page.locator('.calc-picture [role="slider"]').first();
    if ((await handle.count()) === 0) return undefined;
    await handle.scrollIntoViewIfNeeded();
    const { x, y, width, height } = (await handle.boundingBox())!;
    const [fromX, fromY] = [x + width / 2, y + height / 2];
    await page.mouse.move(fromX, fromY);
    await page.mouse.down();
    await watch(page, 'pointermove');
    for (let i = 0; i < EVENTS; i += 1) {
      const by = 20 * Math.sin(i / 5);
      await page.mouse.move(fromX + by, fromY + by);
      await timed(page, i + 1);
    }
    await page.mouse.up();
    return page.evaluate(() => window.benchTimes);
  });
}
