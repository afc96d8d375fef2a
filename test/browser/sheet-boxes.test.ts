import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { doubleText } from './support/enlarged.ts';
import { phone, visit } from './support/page.ts';
import { box, expectKept, keepEngines, ready } from './support/sheet.ts';

const path = 'sheet/';
const demo = { ...demoSheet(), id: 'e-1' };

describe('the boxes of the sheet', () => {
  it.each([390, 768, 1280])('hold what stands in them beside one another, %d wide', (width) =>
    visit({ path, viewport: { width, height: 900 } }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await page.locator('#figure-stroke').waitFor();
      const over = await page.evaluate(() => {
        for (const fold of document.querySelectorAll<HTMLDetailsElement>('.sheet-group')) {
          fold.open = true;
        }
        const boxes = document.querySelectorAll<HTMLInputElement>(
          'input[type="text"][id^="figure-"]',
        );
        return [...boxes].flatMap((box) => {
          box.focus();
          const row = box.closest('.field-row');
          if (!row) return [];
          const parts = [...row.querySelectorAll('.step, input, .field-unit, .once-more')]
            .map((part) => part.getBoundingClientRect())
            .filter((rect) => rect.width > 0);
          const collide = parts.some((rect, i) => i > 0 && rect.left < parts[i - 1]!.right - 1);
          const cut = box.scrollWidth > box.clientWidth + 1;
          const unit = row.querySelector('.field-unit')?.getBoundingClientRect().height ?? 0;
          return collide || cut || unit > 30 ? [box.id] : [];
        });
      });
      expect(over).toEqual([]);
    }),
  );

  it.each([320, 390])(
    'stay beside one another in their card with type of twice the size, %d wide',
    (width) =>
      visit({ path, viewport: { width, height: 900 } }, async (page) => {
        await ready(page);
        await keepEngines(page, demo);
        await doubleText(page);
        const over = await page.evaluate(() => {
          for (const fold of document.querySelectorAll<HTMLDetailsElement>('.task'))
            fold.open = true;
          return [...document.querySelectorAll<HTMLInputElement>('.boxes-row input')].flatMap(
            (box) => {
              const { left, right, width } = box.getBoundingClientRect();
              const card = box.closest('.boxes')!.getBoundingClientRect();
              return width < 80 || left < card.left - 1 || right > card.right + 1
                ? [`${box.id} ${String(Math.round(width))}`]
                : [];
            },
          );
        });
        expect(over).toEqual([]);
      }),
  );

  it('stand in their own columns where both of a row are refused and another text is offered', () =>
    visit({ path, viewport: phone }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await page.goto(page.url().replace(/#.*/, '') + '#step-timing');
      const boxes = page.locator('#step-timing .boxes-row').first().locator('input');
      for (const i of [0, 1]) {
        await boxes.nth(i).fill('-80');
        await boxes.nth(i).blur();
      }
      await expect.poll(() => page.locator('#step-timing .offers button').count()).toBe(2);
      const [found, last] = [await boxes.nth(0).boundingBox(), await boxes.nth(1).boundingBox()];
      expect(last!.y).toBeCloseTo(found!.y, 0);
      expect(last!.width).toBeCloseTo(found!.width, 0);
    }));

  it('stand with their acts below what can hurt', () =>
    visit({ path, viewport: phone }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const late = await page.locator('.task:has(.caution)').evaluateAll((cards) =>
        cards.flatMap((card) => {
          const caution = card.querySelector('.caution')!;
          return [...card.querySelectorAll('ol, .boxes')].some(
            (act) => act.compareDocumentPosition(caution) & Node.DOCUMENT_POSITION_FOLLOWING,
          )
            ? [card.id]
            : [];
        }),
      );
      expect(late).toEqual([]);
      expect(await page.locator('.task:has(.caution) ol').count()).toBeGreaterThan(5);
    }));

  it('tell a doubt of units again when the page comes back, until the unit is typed', () =>
    visit({ path, viewport: phone }, async (page) => {
      const doubts = page.locator('#step-float .field-doubt');
      const open = () =>
        page.locator('#step-float').evaluate((step: HTMLDetailsElement) => {
          step.open = true;
        });
      await ready(page);
      await keepEngines(page, { ...demo, readings: {}, log: [] });
      await open();
      await box(page, 'found', 'float', 1).fill('0.945');
      await expect.poll(() => doubts.allTextContents()).toHaveLength(1);
      await expectKept(page, '"float":{"found":[0.945');
      await page.reload({ waitUntil: 'load' });
      await ready(page);
      await open();
      expect(await doubts.textContent()).toContain('If it is right, type “0.945 mm”.');
      await box(page, 'found', 'float', 1).fill('0.945 mm');
      await expect.poll(() => doubts.count()).toBe(0);
      await page.reload({ waitUntil: 'load' });
      await ready(page);
      await open();
      expect(await box(page, 'found', 'float', 1).inputValue()).toBe('0.945 mm');
      expect(await doubts.count()).toBe(0);
    }));

  it('take the pole that is earthed, and the wiring is drawn for it', () =>
    visit({ path, viewport: phone }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await page.evaluate(() => {
        location.hash = 'read-polarity';
      });
      await page.locator('#figure-earth').getByText('Positive', { exact: true }).click();
      await expectKept(page, '"earth":1');
      await page.goto(new URL('../calculators/wiring/', page.url()).href);
      await expect
        .poll(() => page.locator('.wiring-circuit').getAttribute('aria-label'))
        .toContain('positive to earth');
    }));
});
