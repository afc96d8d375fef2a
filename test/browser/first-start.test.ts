import { expect, it } from 'vitest';
import { visit } from './support/page.ts';

it('no part of the list, nor of the signs, is parted from its heading by the end of a column', () =>
  visit({ path: 'first-start/', viewport: { width: 1280, height: 800 } }, async (page) => {
    const parts = await page
      .locator(':is(.check-parts, .sign-groups) > section')
      .evaluateAll((sections) =>
        sections.map((section) => ({
          name: section.querySelector('h3')!.textContent,
          pieces: section.getClientRects().length,
          left: section.getBoundingClientRect().left,
        })),
      );
    expect(parts.length).toBeGreaterThan(8);
    expect(parts.filter(({ pieces }) => pieces > 1)).toEqual([]);
    expect(new Set(parts.map(({ left }) => left)).size).toBe(2);
  }));
