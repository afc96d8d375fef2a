import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/** A way to work a page: press what is pressed, type where it is typed. */
export interface Hands {
  readonly press: (target: Locator) => Promise<void>;
  readonly type: (target: Locator, text: string) => Promise<void>;
}

const MOST_TABS = 600;

/** The keyboard alone: nothing is reached but by the tab key, and it must be seen to be reached. */
export function keyboard(page: Page): Hands {
  const reach = async (target: Locator): Promise<void> => {
    await target.waitFor();
    const handle = await target.elementHandle();
    for (let i = 0; i < MOST_TABS; i += 1) {
      if (await handle!.evaluate((element) => element === document.activeElement)) return;
      await page.keyboard.press('Tab');
    }
    expect.fail(`the tab key does not reach ${target.toString()}`);
  };
  return {
    press: async (target) => {
      await reach(target);
      const box = (await target.getAttribute('type')) === 'checkbox';
      await page.keyboard.press(box ? 'Space' : 'Enter');
    },
    type: async (target, text) => {
      await reach(target);
      await page.keyboard.press('ControlOrMeta+A');
      await page.keyboard.type(text);
    },
  };
}

/** A thumb on glass, with the phone's own keyboard for text. */
export function touch(page: Page): Hands {
  return {
    press: (target) => target.tap(),
    type: async (target, text) => {
      await target.tap();
      await target.selectText();
      await page.keyboard.insertText(text);
    },
  };
}
