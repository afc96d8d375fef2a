import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';
import { expect, inject } from 'vitest';

export interface VisitOptions extends BrowserContextOptions {
  /** Address below the site's home, such as `calculators/piston-position/?stroke=51mm`. */
  readonly path?: string;
  /** Home of the site; the one at a host's root unless given. */
  readonly site?: string;
  /** Whether the page may keep itself on the device. Most tests want it fresh from the host. */
  readonly workers?: boolean;
  /** Complaints that the test is about, and so expects; each must be seen. */
  readonly expected?: readonly RegExp[];
  /** Complaints that some browsers make and others do not. */
  readonly tolerated?: readonly RegExp[];
}

let connected: Promise<Browser> | undefined;

/** The run's one Chromium. */
export const browser = (): Promise<Browser> =>
  (connected ??= chromium.connect(inject('browserEndpoint')));

/** Collects everything a faultless page never does. */
function listen(page: Page, host: string): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') {
      complaints.push(`console ${message.type()}: ${message.text()} (${message.location().url})`);
    }
  });
  page.on('pageerror', (error) => complaints.push(`uncaught: ${error.stack ?? error.message}`));
  page.on('request', (request) => {
    const { protocol, host: asked } = new URL(request.url());
    if (/^(https?|wss?):$/.test(protocol) && asked !== host) {
      complaints.push(`request to another host: ${request.url()}`);
    }
  });
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`);
  });
  page.on('dialog', (dialog) => {
    complaints.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  return complaints;
}

/**
 * Opens a page of the built site in a browser profile of its own, runs `body` with it, and then
 * asserts that nothing was complained of: no console error or warning, no uncaught error, no
 * breach of the content security policy (the console reports these), no dialog, no failed request
 * and none to another host.
 */
export async function visit(
  {
    path = '',
    site = inject('siteUrl'),
    expected = [],
    tolerated = [],
    workers = false,
    ...options
  }: VisitOptions,
  body: (page: Page) => Promise<void>,
): Promise<void> {
  const context = await (
    await browser()
  ).newContext({ viewport: { width: 1024, height: 768 }, locale: 'en-GB', ...options });
  try {
    if (!workers) {
      await context.addInitScript(() => {
        Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined });
      });
    }
    const page = await context.newPage();
    const complaints = listen(page, new URL(site).host);
    await page.goto(new URL(path, site).href, { waitUntil: 'load' });
    await body(page);
    const known = [...expected, ...tolerated];
    const unexpected = complaints.filter((text) => !known.some((form) => form.test(text)));
    expect(unexpected, 'complaints of the page').toEqual([]);
    for (const form of expected) {
      expect(complaints, 'a complaint the test expects').toContainEqual(
        expect.stringMatching(form),
      );
    }
  } finally {
    await context.close();
  }
}

/** Opens a page as on a slow connection: its scripts come when `body` lets them. */
export const visitEarly = (
  path: string,
  body: (page: Page, letScriptsCome: () => void) => Promise<void>,
): Promise<void> =>
  visit({}, async (page) => {
    const { promise: held, resolve } = Promise.withResolvers<undefined>();
    await page.route('**/*.js', async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(new URL(path, inject('siteUrl')).href, { waitUntil: 'commit' });
    await body(page, () => resolve(undefined));
  });

export const phone = { width: 360, height: 740 } as const;
