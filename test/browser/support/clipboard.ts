import type { BrowserContext, Page } from 'playwright-core';

/** What a profile must be allowed before its pages may copy. */
export const CLIPBOARD = ['clipboard-read', 'clipboard-write'];

/** Notes in the page what it has copied: all profiles of a browser share one clipboard. */
export const noteCopies = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    const own = Object.getOwnPropertyDescriptor(Clipboard.prototype, 'writeText');
    if (!own) return;
    Clipboard.prototype.writeText = async function (text) {
      await Reflect.apply(own.value as Clipboard['writeText'], this, [text]);
      Object.assign(window, { copied: text });
    };
  });

/** The text that this page copied last, as its browser took it. */
export const copied = (page: Page): Promise<string> =>
  page.evaluate(() => String(Reflect.get(window, 'copied') ?? ''));
