import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Engine } from '../../../calculators/sheet/model.ts';
import { writeStore } from '../../../calculators/sheet/store.ts';

export const KEY = 'gudgeon.sheet';

/** Gives a sign of life, and says whether the sheet is in use; it runs in the page. */
export const stirred = (): boolean => {
  document.dispatchEvent(new Event('scroll'));
  return document.querySelector('[data-sheet][data-ready="true"]') !== null;
};

/** Waits until the sheet is in use, and all of it is drawn. */
export async function ready(page: Page): Promise<void> {
  await page.waitForFunction(stirred);
}

export const button = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', { name });

export const figure = (page: Page, key: string): Locator => page.locator(`#figure-${key}`);

export const box = (page: Page, moment: 'found' | 'left', step: string, index: number): Locator =>
  page.locator(`#box-${moment}-${step}-${String(index)}`);

export const state = (page: Page, step: string): Locator =>
  page.locator(`#step-${step} .task-state`);

/** Puts engines into the browser's store before the page's own scripts run. */
export async function keepEngines(page: Page, ...engines: Engine[]): Promise<void> {
  const text = writeStore({ engines, active: engines[0]?.id, revision: 1 });
  await page.evaluate(([key, value]) => localStorage.setItem(key!, value!), [KEY, text]);
  await page.reload({ waitUntil: 'load' });
  await ready(page);
}

/** The engines that the browser keeps, as text. */
export const kept = (page: Page): Promise<string> =>
  page.evaluate((key) => localStorage.getItem(key) ?? '', KEY);

export const expectKept = async (page: Page, text: string): Promise<void> => {
  await expect.poll(() => kept(page)).toContain(text);
};
