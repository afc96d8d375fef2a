import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { slugs } from './support/built.ts';
import { field, settled } from './support/calculator.ts';
import { visit } from './support/page.ts';

const desk = { width: 1280, height: 900 };

/** Fields whose help stands off the middle of their box, or whose rule is not their neighbour's. */
const outOfLine = (page: Page) =>
  page.locator('.calc-form').evaluate((form) => {
    const middle = ({ top, bottom }: DOMRect) => (top + bottom) / 2;
    const box = (element: Element) => element.getBoundingClientRect();
    const fields = [...form.querySelectorAll('.field:not(.field-in-row)')].filter(
      (one) => box(one).height > 0,
    );
    const named = (one: Element) => one.querySelector('label, legend')?.textContent ?? '';
    const offLine = fields.flatMap((one) => {
      const help = one.querySelector('.help > summary');
      const name = one.querySelector('.field-name, legend')!;
      const beside = one.matches('.field-choice') ? name : one.querySelector('.field-box')!;
      // A box below its name has its help beside the name.
      if (!help || (beside !== name && box(beside).top >= box(name).bottom)) return [];
      return Math.abs(middle(box(help)) - middle(box(beside))) > 4 ? [named(one)] : [];
    });
    const uneven = fields.flatMap((one) => {
      const neighbour = fields.find(
        (other) =>
          other.parentElement === one.parentElement &&
          Math.abs(box(other).top - box(one).top) < 1 &&
          box(other).left > box(one).right,
      );
      return neighbour && Math.abs(box(neighbour).bottom - box(one).bottom) > 1 ? [named(one)] : [];
    });
    return { offLine, uneven };
  });

describe.each(slugs)('%s', (slug) => {
  it('has its help level with what it helps with, and one rule under neighbours', () =>
    visit({ path: `calculators/${slug}/`, viewport: desk }, async (page) => {
      await settled(page);
      expect(await outOfLine(page)).toEqual({ offLine: [], uneven: [] });
    }));
});

it('of a row of boxes the one that is wrong is marked, and it is told once', () =>
  visit({ path: 'calculators/hole-pattern/', viewport: desk }, async (page) => {
    await settled(page);
    const colours = () =>
      page
        .locator('.field-in-row', { has: field(page, 'distance-2') })
        .locator('.field-box')
        .evaluateAll((boxes) => boxes.map((box) => getComputedStyle(box).borderTopColor));
    const [plain] = await colours();
    await field(page, 'distance-2').fill('xyz');
    await field(page, 'distance-2').blur();
    await expect
      .poll(async () => (await colours()).map((one) => one !== plain))
      .toEqual([false, false, true]);
    expect(await page.locator('.problems li').count()).toBe(1);
  }));

it('several readings in a box end with a sign that there are more', () =>
  visit({ path: 'calculators/plate-setting/', viewport: desk }, async (page) => {
    await settled(page);
    await field(page, 'fired-1').fill('2.31; 2.36; 2.28; 2.33');
    await field(page, 'fired-1').blur();
    const shown = await field(page, 'fired-1').evaluate((box) => ({
      cut: box.scrollWidth > box.clientWidth,
      ends: getComputedStyle(box).textOverflow,
    }));
    expect(shown).toEqual({ cut: true, ends: 'ellipsis' });
  }));

it('a figure that comes with a unit of its own stands whole in its box, also where it is refused', () =>
  visit(
    { path: 'calculators/piston-position/?travel=300mm', viewport: { width: 360, height: 740 } },
    async (page) => {
      await page.evaluate(() => localStorage.setItem('gudgeon.lengths', 'in'));
      await page.reload();
      await settled(page);
      const travel = field(page, 'travel');
      await expect.poll(() => travel.inputValue()).toMatch(/^300\s?mm$/);
      expect(await travel.getAttribute('aria-invalid')).toBe('true');
      const room = await travel.evaluate(
        (box: HTMLInputElement) => box.clientWidth - box.scrollWidth,
      );
      expect(room).toBeGreaterThanOrEqual(0);
    },
  ));
