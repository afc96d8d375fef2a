import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** Waits until every list of where a ± comes from that stands unfolded has been fetched. */
export const budgetsCame = (page: Page): Promise<void> =>
  expect.poll(() => page.locator('.budget-fold[open] [role="status"]').count()).toBe(0);
