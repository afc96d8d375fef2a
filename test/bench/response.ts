import { setTimeout as pause } from 'node:timers/promises';
import type { Browser, Page } from 'playwright-core';

export const SLOW_DOWN = 4;
const EVENTS = 60;
const FRAMES = 120;
const LOADS = 5;
/** Long enough for one press to be drawn whole before the next. */
const BETWEEN_MS = 150;

/** Times in milliseconds. */
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

/** Waits until what was touched is in use. */
const inUse = async (page: Page): Promise<void> => {
  await page.locator('[data-calculator]:not([data-awake])').waitFor({ state: 'detached' });
};

async function slowed<T>(
  browser: Browser,
  address: string,
  work: (page: Page) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    serviceWorkers: 'block',
  });
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

/**
 * The boxes of measured figures: those with a unit, and those of a row that are no number of a thing.
 * (Another counts cylinders, sets or holes, and changes what the page holds.)
 */
const MEASURED =
  ':is(.field:has(.field-unit), .field-in-row .field-box:not(.field-short)) input[type="text"]';

/**
 * From a key press's own time stamp to the end of the frame that shows its result, while the first
 * measured figure in sight is stepped up and down by the arrow keys: each press works everything out
 * anew.
 */
export function typing(browser: Browser, address: string): Promise<Times> {
  return slowed(browser, address, async (page) => {
    await page.locator(MEASURED).filter({ visible: true }).first().focus();
    await inUse(page);
    await watch(page, 'keydown');
    for (let i = 0; i < EVENTS; i += 1) {
      await page.keyboard.press(i % 2 === 0 ? 'ArrowUp' : 'ArrowDown');
      // Waiting inside the page would run scripts of its own in the frames that are timed.
      await pause(BETWEEN_MS);
    }
    const times = await page.evaluate(() => window.benchTimes);
    if (times.length < EVENTS) {
      throw new Error(`Only ${times.length} of ${EVENTS} presses were drawn on ${address}`);
    }
    return times;
  });
}

/**
 * From the first press anywhere on a calculator to the end of the frame after it has been taken into
 * use, once for each of a few loads: that press has its script fetched, from a host on this machine.
 */
export async function touching(browser: Browser, address: string): Promise<Times> {
  const times: number[] = [];
  while (times.length < LOADS) {
    const found = await slowed(browser, address, async (page) => {
      const taken = page.evaluate(
        () =>
          new Promise<number>((done) => {
            const place = document.querySelector('[data-calculator]')!;
            addEventListener(
              'pointerdown',
              ({ timeStamp }) => {
                const painted = (): void =>
                  void requestAnimationFrame(() =>
                    setTimeout(() => done(performance.now() - timeStamp)),
                  );
                if (place.matches('[data-awake]')) painted();
                else {
                  new MutationObserver(painted).observe(place, { attributeFilter: ['data-awake'] });
                }
              },
              { capture: true, once: true },
            );
          }),
      );
      const answer = (await page.locator('.calc-answer').boundingBox())!;
      await page.touchscreen.tap(answer.x + 2, answer.y + 2);
      return taken;
    });
    times.push(found);
  }
  return times;
}

export interface Drag {
  /** Lengths of the frames, ms. */
  readonly frames: Times;
  /** What working the figures out and drawing them takes of each, ms. */
  readonly work: Times;
}

/** What is dragged, and where it is taken hold of: at what share of its height from above. */
interface Taken {
  readonly of: string;
  readonly down: number;
}
const POINT: Taken = { of: '.calc-picture [role="slider"]', down: 0.5 };
/** The practice bench's crank, by the rim of its disc. */
export const CRANK: Taken = { of: '.crank-hit', down: 0.1 };

/**
 * The length of each frame, in milliseconds, while the picture's working point is dragged to and
 * fro, a move in every frame; nothing when the picture has none. The mouse takes hold of the point
 * from outside; the moves are made within the page, so that sending them costs the page nothing.
 */
export function dragging(
  browser: Browser,
  address: string,
  taken: Taken = POINT,
): Promise<Drag | undefined> {
  return slowed(browser, address, async (page) => {
    const handle = page.locator(taken.of).first();
    if ((await handle.count()) === 0) return undefined;
    await handle.scrollIntoViewIfNeeded();
    const { x, y, width, height } = (await handle.boundingBox())!;
    const middle = { x: x + width / 2, y: y + height * taken.down };
    // Twice: a mouse that has not moved yet is taken to be at rest.
    await page.mouse.move(middle.x + 2, middle.y);
    await page.mouse.move(middle.x, middle.y);
    await inUse(page);
    await page.mouse.down();
    const drag = await handle.evaluate(
      (point, { at, count }) =>
        new Promise<{ frames: number[]; work: number[] }>((done) => {
          const lengths: number[] = [];
          const work: number[] = [];
          let before: number | undefined;
          const frame = (now: number): void => {
            if (before !== undefined) lengths.push(now - before);
            before = now;
            if (lengths.length >= count) {
              done({ frames: lengths, work });
              return;
            }
            const by = 20 * Math.sin(lengths.length / 5);
            const start = performance.now();
            point.dispatchEvent(
              new PointerEvent('pointermove', {
                pointerId: 1,
                bubbles: true,
                clientX: at.x + by,
                clientY: at.y + by,
              }),
            );
            // The page draws in the microtask that the move leaves behind; this one comes after it.
            queueMicrotask(() => work.push(performance.now() - start));
            requestAnimationFrame(frame);
          };
          requestAnimationFrame(frame);
        }),
      { at: middle, count: FRAMES },
    );
    await page.mouse.up();
    return drag;
  });
}
