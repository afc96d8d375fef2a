import { once } from 'node:events';
import { globSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { launch, type Browser, type LaunchOptions, type Page } from 'puppeteer-core';
import type { Engine, Killable, Size, Tab } from './engine.ts';

const selector = (where: string): string =>
  where.startsWith('//') ? `::-p-xpath(${where})` : where;

/** Of each browser, the page that was worked last. */
const inFront = new WeakMap<Browser, Page>();

function tabOf(page: Page): Tab {
  /** A page behind another paints nothing, and waits with what it is asked. */
  const front = async (): Promise<void> => {
    if (inFront.get(page.browser()) === page) return;
    inFront.set(page.browser(), page);
    await page.bringToFront();
  };
  const find = async (where: string) => {
    await front();
    return (await page.waitForSelector(selector(where)))!;
  };
  return {
    open: async (address) => void (await page.goto(address, { waitUntil: 'load' })),
    reload: async () => void (await page.reload({ waitUntil: 'load' })),
    // The driver would wait for a load, and a step within a page loads nothing.
    back: () => page.evaluate(() => history.back()),
    address: () => page.evaluate(() => location.href),
    run: (body, ...given) =>
      page.evaluate(body as (...given: unknown[]) => unknown, ...given) as never,
    load: async (script) => void (await page.evaluate(script)),
    // What moves as the page is brought to life is waited for, or the press would land beside it.
    click: async (where) => {
      await front();
      await page.locator(selector(where)).click();
    },
    type: async (text) => {
      await front();
      await page.keyboard.type(text);
    },
    press: async (...keys) => {
      await front();
      const held = keys.slice(0, -1);
      for (const key of held) await page.keyboard.down(key);
      await page.keyboard.press(keys.at(-1)!);
      for (const key of held.toReversed()) await page.keyboard.up(key);
    },
    drag: async (where, right, down) => {
      const element = await find(where);
      await element.scrollIntoView();
      const { x, y } = await element.clickablePoint();
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + right, y + down, { steps: 8 });
      await page.mouse.up();
    },
    screenshot: () => page.screenshot(),
  };
}

/** Pages come and go; what is driven is always the first of them. */
async function engineOf(
  browser: Browser,
  afresh: () => Promise<{ newPage: () => Promise<Page>; close?: () => Promise<void> }>,
): Promise<Engine> {
  let context = await afresh();
  let first = tabOf(await context.newPage());
  const now =
    <Name extends keyof Tab>(name: Name): Tab[Name] =>
    (...given: unknown[]) =>
      (first[name] as (...given: unknown[]) => never)(...given);
  return {
    open: now('open'),
    reload: now('reload'),
    back: now('back'),
    address: now('address'),
    run: now('run'),
    load: now('load'),
    click: now('click'),
    type: now('type'),
    press: now('press'),
    drag: now('drag'),
    screenshot: now('screenshot'),
    tab: async () => {
      const page = await context.newPage();
      return { ...tabOf(page), close: () => page.close() };
    },
    forget: async () => {
      await context.close?.();
      context = await afresh();
      first = tabOf(await context.newPage());
    },
    close: () => browser.close(),
  };
}

/** A browser that speaks WebDriver BiDi or its own protocol itself: there is no driver between. */
export async function startPuppet(options: LaunchOptions, view: Size): Promise<Engine> {
  const browser = await launch({ headless: true, defaultViewport: { ...view }, ...options });
  return engineOf(browser, () => browser.createBrowserContext());
}

/** The same, keeping all in a folder. */
export async function startPuppetIn(
  profile: string,
  options: LaunchOptions,
  view: Size,
): Promise<Killable> {
  const browser = await launch({
    headless: true,
    defaultViewport: { ...view },
    ...options,
    userDataDir: profile,
  });
  const engine = await engineOf(browser, () =>
    Promise.resolve({ newPage: () => browser.newPage() }),
  );
  const child = browser.process()!;
  return {
    ...engine,
    kill: async () => {
      const ended = once(child, 'exit');
      process.kill(-child.pid!, 'SIGKILL');
      await ended;
      // What was put in the profile for it is still being taken out of it.
      const left = (): boolean => globSync('*.puppeteer', { cwd: profile }).length > 0;
      for (let i = 0; i < 100 && left(); i += 1) await pause(20);
      // Its end would be waited for without end: nobody is there to answer.
      void browser.disconnect().catch(() => undefined);
    },
  };
}
