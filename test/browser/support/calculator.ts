import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { visit, type VisitOptions } from './page.ts';

/** Unfolds the groups of every calculator; it runs in the page. */
export function unfold(): void {
  const folds = document.querySelectorAll<HTMLDetailsElement>('.calc details:not(.errors, .help)');
  for (const fold of folds) fold.open = true;
}

/**
 * Enters every calculator on the page, even one far below, waits until it answers and is seen, and
 * unfolds its groups.
 */
export async function settled(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const place of document.querySelectorAll('[data-calculator]')) {
      place.dispatchEvent(new FocusEvent('focusin'));
    }
  });
  await expect
    .poll(() => page.locator('[data-calculator]:not([data-ready="true"]), [data-asked]').count())
    .toBe(0);
  await page.evaluate(unfold);
}

export const field = (page: Page, key: string): Locator => page.locator(`input[name="${key}"]`);

/** The unrounded number of a result, or nothing when it does not exist. */
export async function result(page: Page, name: string): Promise<number | undefined> {
  const data = page.locator(`output[name="${name}"] data, data[data-name="${name}"]`);
  // At once: between two questions the page may take it away.
  const values = await data.evaluateAll((found) => found.map((one) => one.getAttribute('value')));
  return values.length === 0 ? undefined : Number(values[0]);
}

/** Waits until a result has come to `expected`. */
export async function expectResult(
  page: Page,
  name: string,
  expected: number,
  digits = 6,
): Promise<void> {
  await expect.poll(() => result(page, name), { message: name }).toBeCloseTo(expected, digits);
}

/** What the page says in its alert. */
export const alertText = async (page: Page): Promise<string> =>
  (await page.locator('[role="alert"]').allTextContents()).join(' ');

/**
 * Figures as written in the page, to ten digits. The page was made by another engine than the
 * reader's browser, and the sines of two engines may differ in the sixteenth: what is nought but
 * for that may come out on either side of it.
 */
export const steady = (values: readonly (string | null)[]): string[] =>
  values.map((value) =>
    Number(Number(value).toPrecision(10))
      .toFixed(9)
      .replace(/^-(0\.0+)$/, '$1'),
  );

/** Visits a calculator by its address below `calculators/`, and begins when its results stand. */
export const openCalculator = (
  path: string,
  body: (page: Page) => Promise<void>,
  options: Omit<VisitOptions, 'path'> = {},
): Promise<void> =>
  visit({ path: `calculators/${path}`, ...options }, async (page) => {
    await settled(page);
    await body(page);
  });

/** What the address of a page holds. */
export const query = (page: Page): URLSearchParams => new URL(page.url()).searchParams;
