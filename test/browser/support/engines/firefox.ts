import { existsSync } from 'node:fs';
import { launch, type BrowserContext, type Page } from 'puppeteer-core';
import { missingSentence, type Engine, type EngineKind, type Size } from './engine.ts';

const program = process.env['FIREFOX_PATH'] ?? '/usr/bin/firefox-esr';

const selector = (where: string): string =>
  where.startsWith('//') ? `::-p-xpath(${where})` : where;

/** Firefox, which answers WebDriver BiDi itself: there is no driver between. */
async function start(view: Size): Promise<Engine> {
  const browser = await launch({
    browser: 'firefox',
    executablePath: program,
    headless: true,
    defaultViewport: { ...view },
  });
  let context: BrowserContext;
  let page: Page;
  const forget = async (): Promise<void> => {
    await context?.close();
    context = await browser.createBrowserContext();
    page = await context.newPage();
  };
  await forget();
  const find = async (where: string) => (await page.waitForSelector(selector(where)))!;
  return {
    open: async (address) => void (await page.goto(address, { waitUntil: 'load' })),
    reload: async () => void (await page.reload({ waitUntil: 'load' })),
    // The driver would wait for a load, and a step within a page loads nothing.
    back: () => page.evaluate(() => history.back()),
    address: () => page.evaluate(() => location.href),
    run: (body, ...given) =>
      page.evaluate(body as (...given: unknown[]) => unknown, ...given) as never,
    load: async (script) => void (await page.evaluate(script)),
    click: async (where) => (await find(where)).click(),
    type: (text) => page.keyboard.type(text),
    press: async (...keys) => {
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
    forget,
    close: () => browser.close(),
  };
}

export const firefox: EngineKind = {
  name: 'Firefox',
  missing: missingSentence('Firefox', [{ there: existsSync(program), from: 'firefox-esr' }]),
  start,
};
