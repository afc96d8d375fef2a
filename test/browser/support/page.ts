import {
  chromium,
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type Page,
} from 'playwright-core';
import { expect, inject } from 'vitest';
import { noteCopies } from './clipboard.ts';
import { BLANK } from './serve.ts';

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

/** What `listen` and the tests hear of a page. */
const EVENTS = ['console', 'pageerror', 'request', 'response', 'dialog'] as const;

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

/** What stays with a page or its profile for good: a test that uses any of it gets them to itself. */
const LASTING = ['addInitScript', 'exposeFunction', 'exposeBinding', 'clock'] as const;

/** A page in a profile of its own, which one visit after another may have. */
interface Kept {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Whether something was done to it that no cleaning takes away. */
  readonly spoilt: () => boolean;
}

/** Pages that are free, by the options of their profiles: a page made anew costs three times a visit. */
const free = new Map<string, Kept>();

async function open(workers: boolean, options: BrowserContextOptions): Promise<Kept> {
  const context = await (await browser()).newContext(options);
  if (!workers) {
    await context.addInitScript(() => {
      Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined });
    });
  }
  if (options.permissions) await noteCopies(context);
  const page = await context.newPage();
  let spoilt = workers;
  for (const name of LASTING) {
    const own: unknown = Reflect.get(page, name);
    Object.defineProperty(page, name, {
      get: () => {
        spoilt = true;
        return typeof own === 'function' ? (own.bind(page) as unknown) : own;
      },
    });
  }
  return { page, context, spoilt: () => spoilt };
}

/** Leaves nothing of a visit behind: no page that may still write, nothing kept, no one listening. */
async function clean({ page }: Kept, site: string, scripts: boolean): Promise<void> {
  for (const event of EVENTS) page.removeAllListeners(event);
  await page.unrouteAll({ behavior: 'ignoreErrors' });
  await page.goto(new URL(BLANK, site).href);
  if (!scripts) return;
  await page.evaluate(async () => {
    localStorage.clear();
    sessionStorage.clear();
    for (const { name } of await indexedDB.databases()) if (name) indexedDB.deleteDatabase(name);
    for (const name of await caches.keys()) await caches.delete(name);
  });
}

/**
 * Opens a page of the built site in a browser profile that holds nothing, runs `body` with it, and
 * then asserts that nothing was complained of: no console error or warning, no uncaught error, no
 * breach of the content security policy (the console reports these), no dialog, no failed request
 * and none to another host. Visits with the same options share a page, cleaned after each.
 */
export async function visit(
  {
    path = '',
    site = inject('siteUrl'),
    expected = [],
    tolerated = [],
    workers = false,
    viewport = { width: 1024, height: 768 },
    colorScheme = 'light',
    ...others
  }: VisitOptions,
  body: (page: Page) => Promise<void>,
): Promise<void> {
  const options = { locale: 'en-GB', ...others };
  const key = JSON.stringify(options);
  const earlier = workers ? undefined : free.get(key);
  if (earlier) free.delete(key);
  const kept = earlier ?? (await open(workers, { viewport, colorScheme, ...options }));
  const { page, context } = kept;
  let again = false;
  try {
    if (earlier) {
      if (viewport) await page.setViewportSize(viewport);
      await page.emulateMedia({ media: null, colorScheme });
    }
    const complaints = listen(page, new URL(site).host);
    await page.goto(new URL(path, site).href, { waitUntil: 'load' });
    await body(page);
    const allowed = [...expected, ...tolerated];
    const unexpected = complaints.filter((text) => !allowed.some((form) => form.test(text)));
    expect(unexpected, 'complaints of the page').toEqual([]);
    for (const form of expected) {
      expect(complaints, 'a complaint the test expects').toContainEqual(
        expect.stringMatching(form),
      );
    }
    again = !kept.spoilt() && context.pages().length === 1;
  } finally {
    const scripts = options.javaScriptEnabled !== false;
    again &&= await clean(kept, site, scripts).then(
      () => !free.has(key),
      () => false,
    );
    if (again) free.set(key, kept);
    else await context.close();
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
