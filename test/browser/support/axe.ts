import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

export const STANDARD = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

/** The rules of these standards that look at colours: the others see the same in light and in dark. */
export const COLOURS = ['color-contrast', 'link-in-text-block'];

/**
 * Asserts that axe finds no violation of WCAG 2.0 to 2.2, levels A and AA, in the page as it is, by
 * all rules or by those that are named.
 * The source goes in through the browser's own debugging channel, which the page's content
 * security policy neither sees nor has to allow.
 */
export async function expectAccessible(
  page: Page,
  runOnly: readonly string[] = STANDARD,
): Promise<void> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source);
  const violations = await page.evaluate(async (only) => {
    const tool = (globalThis as unknown as { axe: typeof axe }).axe;
    const report = await tool.run(document, { runOnly: [...only], resultTypes: ['violations'] });
    return report.violations.map(({ id, help, nodes }) => ({
      rule: `${id}: ${help}`,
      where: nodes.map(({ target, failureSummary }) => `${target.join(' ')}: ${failureSummary}`),
    }));
  }, runOnly);
  expect(violations, `accessibility of ${page.url()}`).toEqual([]);
}
