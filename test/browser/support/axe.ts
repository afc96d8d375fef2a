import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

export const STANDARD = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

/**
 * Asserts that axe finds no violation of WCAG 2.0 to 2.2, levels A and AA, in the page as it is.
 * The source goes in through the browser's own debugging channel, which the page's content
 * security policy neither sees nor has to allow.
 */
export async function expectAccessible(page: Page): Promise<void> {
  await page.evaluate(axe.source);
  const violations = await page.evaluate(async (tags) => {
    const tool = (globalThis as unknown as { axe: typeof axe }).axe;
    const report = await tool.run(document, { runOnly: tags, resultTypes: ['violations'] });
    return report.violations.map(({ id, help, nodes }) => ({
      rule: `${id}: ${help}`,
      where: nodes.map(({ target, failureSummary }) => `${target.join(' ')}: ${failureSummary}`),
    }));
  }, STANDARD);
  expect(violations, `accessibility of ${page.url()}`).toEqual([]);
}
