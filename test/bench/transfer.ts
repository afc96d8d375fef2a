import type { Browser, CDPSession } from 'playwright-core';

export const KINDS = ['html', 'css', 'js', 'font', 'other'] as const;
export type Kind = (typeof KINDS)[number];

export interface Transfer {
  readonly bytes: Readonly<Record<Kind, number>>;
  readonly total: number;
  readonly requests: number;
  readonly addresses: readonly string[];
}

const kindOf = (type: string): Kind =>
  type === 'Document'
    ? 'html'
    : type === 'Stylesheet'
      ? 'css'
      : type === 'Script'
        ? 'js'
        : type === 'Font'
          ? 'font'
          : 'other';

/** Counts what comes over the wire, headers included, by kind. */
export async function count(session: CDPSession): Promise<() => Transfer> {
  const kinds = new Map<string, { kind: Kind; address: string }>();
  const bytes: Record<Kind, number> = { html: 0, css: 0, js: 0, font: 0, other: 0 };
  session.on('Network.responseReceived', ({ requestId, type, response }) => {
    kinds.set(requestId, { kind: kindOf(type), address: response.url });
  });
  session.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
    const known = kinds.get(requestId);
    if (known && !known.address.startsWith('data:')) bytes[known.kind] += encodedDataLength;
  });
  await session.send('Network.enable');
  return () => {
    const addresses = [...kinds.values()]
      .map(({ address }) => address)
      .filter((a) => !a.startsWith('data:'));
    const total = Object.values(bytes).reduce((sum, part) => sum + part, 0);
    return { bytes: { ...bytes }, total, requests: addresses.length, addresses };
  };
}

const REPORTS_MS = 500;

export interface Visit {
  /** What is fetched before anything is touched. */
  readonly opened: Transfer;
  /** All that is fetched once the reader has seen every calculator of the page. */
  readonly read: Transfer;
  /** All that is fetched once the reader has set about each of them. */
  readonly used: Transfer;
}

/** What a first visit to a page fetches, with an empty cache, until nothing more is asked for. */
export async function transfer(browser: Browser, address: string): Promise<Visit> {
  // Without the copy for use offline, from which the later files of the same visit would come.
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    serviceWorkers: 'block',
  });
  try {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    const counted = await count(session);
    await page.goto(address, { waitUntil: 'networkidle' });
    const opened = counted();
    const places = await page.locator('[data-calculator]').all();
    for (const place of places) {
      await place.scrollIntoViewIfNeeded();
      await page.waitForTimeout(REPORTS_MS);
    }
    await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
    await page.waitForTimeout(REPORTS_MS);
    await page.waitForLoadState('networkidle');
    const read = counted();
    for (const place of places) {
      await place.locator('.calc-answer').click({ position: { x: 2, y: 2 } });
      await page.waitForLoadState('networkidle');
    }
    await page.waitForFunction(
      () => document.querySelector('[data-calculator]:not([data-ready="true"])') === null,
    );
    // The last reports of a transfer come after the script that it brought has run.
    await page.waitForTimeout(REPORTS_MS);
    return { opened, read, used: counted() };
  } finally {
    await context.close();
  }
}
