import { setTimeout } from 'node:timers/promises';
import type { Browser, CDPSession, Page, Request } from 'playwright-core';
import { count, type Transfer } from '../transfer.ts';

/**
 * A cheap phone on a poor line, as Lighthouse throttles one (its slow 4G, applied to each request):
 * 150 ms of round trip and 1.6 Mbit/s, of which a request gets so much, and a quarter of the
 * processor.
 */
const PROFILE = {
  network: {
    offline: false,
    latency: 562.5,
    downloadThroughput: (1474.56 * 1024) / 8,
    uploadThroughput: (675 * 1024) / 8,
  },
  processor: 4,
} as const;

const LATER_PRESSES = 8;

/** A page is all there when nothing has been asked for or has come for so long, in ms. */
const QUIET = 2000;
/** The longest that anything is waited for, in ms, also on a busy machine. */
const PATIENCE = 120_000;

declare global {
  interface Window {
    /** Kept by the page for the comparison: the delays of the presses so far, in milliseconds. */
    pressDelays: number[];
  }
}

/**
 * Watches what a page asks for, and gives what waits until it asks for nothing more. On a line this
 * slow, and with a processor this slow between one file and the next, half a second is not enough.
 */
function stillness(page: Page): () => Promise<void> {
  const open = new Set<Request>();
  let last = performance.now();
  page.on('request', (request) => open.add(request));
  const close = (request: Request): void => {
    open.delete(request);
    last = performance.now();
  };
  page.on('requestfinished', close);
  page.on('requestfailed', close);
  return async () => {
    await page.waitForLoadState('load');
    while (open.size > 0 || performance.now() - last < QUIET) await setTimeout(QUIET / 10);
  };
}

/** Runs `work` in a page of the throttled profile with an empty cache and nothing loaded yet. */
async function throttled<T>(
  browser: Browser,
  work: (page: Page, session: CDPSession) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    // Only ours has one. It starts after the page is loaded and done, and fetches the other pages.
    serviceWorkers: 'block',
  });
  try {
    const page = await context.newPage();
    page.setDefaultTimeout(PATIENCE);
    const session = await context.newCDPSession(page);
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', PROFILE.network);
    await session.send('Emulation.setCPUThrottlingRate', { rate: PROFILE.processor });
    return await work(page, session);
  } finally {
    await context.close();
  }
}

export interface Load {
  readonly transfer: Transfer;
  /** When the largest part of the first screen was painted, in milliseconds from the start. */
  readonly largestPaint: number;
}

/** A first visit that nobody touches, until nothing more is asked for. */
export function load(browser: Browser, address: string): Promise<Load> {
  return throttled(browser, async (page, session) => {
    const counted = await count(session);
    const still = stillness(page);
    await page.goto(address);
    await still();
    const largestPaint = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          new PerformanceObserver((list) => resolve(list.getEntries().at(-1)!.startTime)).observe({
            type: 'largest-contentful-paint',
            buffered: true,
          });
        }),
    );
    return { transfer: counted(), largestPaint };
  });
}

export interface Presses {
  /** Delay of a press at the moment there is something to see, in milliseconds. */
  readonly first: number;
  /** Delays of presses once everything is there. */
  readonly later: readonly number[];
}

/**
 * The delay of presses of the Tab key, which in all three moves the focus to the first link, the
 * one that skips to the text, and then on: from the event's own time stamp to the end of the frame
 * that shows it. A message posted within the frame's last callback is handled right after that
 * frame has been painted. Apart from `load`, since the largest paint is counted up to the first
 * press only.
 */
export function presses(browser: Browser, address: string): Promise<Presses> {
  return throttled(browser, async (page) => {
    await page.addInitScript(() => {
      window.pressDelays = [];
      addEventListener(
        'keydown',
        ({ timeStamp }) => {
          requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel();
            port2.onmessage = () => window.pressDelays.push(performance.now() - timeStamp);
            port1.postMessage(undefined);
          });
        },
        { capture: true },
      );
    });
    const press = async (times: number): Promise<void> => {
      await page.keyboard.press('Tab');
      await page.waitForFunction((least) => window.pressDelays.length >= least, times, {
        polling: 20,
      });
    };
    const still = stillness(page);
    await page.goto(address, { waitUntil: 'commit' });
    await page.waitForFunction(
      () => performance.getEntriesByName('first-contentful-paint').length > 0,
      undefined,
      { polling: 20 },
    );
    await press(1);
    await still();
    for (let i = 0; i < LATER_PRESSES; i += 1) await press(i + 2);
    const [first, ...later] = await page.evaluate(() => window.pressDelays);
    return { first: first!, later };
  });
}
