import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { slugs } from './support/built.ts';
import { field, settled } from './support/calculator.ts';
import { visit } from './support/page.ts';
import { typeSizes } from './support/type-sizes.ts';

const screen = { width: 390, height: 844 } as const;
const low = { width: 360, height: 740 } as const;
const touch = { viewport: screen, hasTouch: true, isMobile: true } as const;

/** How long each page was when its form stood before its picture, in px on the same screen. */
const LONG: Readonly<Record<string, number>> = {
  'piston-position': 6654,
  'find-tdc': 6973,
  'breaker-cam': 8649,
  'coil-charge': 7946,
  'plate-setting': 7950,
  'plate-layout': 10227,
  'degree-disc': 8092,
  'float-level': 10459,
  'air-and-jet': 8049,
  'needle-and-clip': 9165,
  'slide-balance': 6161,
  'fuel-and-oil': 5363,
  'port-timing': 10033,
  compression: 9941,
  'time-area': 8881,
  'squish-velocity': 5856,
};
/** A page that was never longer is held to this. */
const USUAL = 10_800;

interface Places {
  readonly length: number;
  readonly answer: number;
  readonly picture: number;
  readonly inHand: number;
  /** Top of the first field in hand. */
  readonly begins: number;
  readonly form: number;
  readonly more: number;
}

const placesOf = (page: Page): Promise<Places> =>
  page.evaluate(() => {
    const box = (selector: string) => document.querySelector(selector)!.getBoundingClientRect();
    const top = (selector: string): number => box(selector).top + scrollY;
    const hand = [...document.querySelectorAll('.in-hand .field')].find((field) =>
      field.querySelector('input[type="text"]'),
    )!;
    return {
      length: document.documentElement.scrollHeight,
      answer: box('[data-part="answer"]').height,
      picture: top('[data-part="picture"]'),
      inHand: hand.getBoundingClientRect().bottom + scrollY,
      begins: top('.in-hand .field'),
      form: top('[data-part="form"]'),
      more: top('.calc-more'),
    };
  });

/** The strip of the answer, far down the page. */
async function stuckStrip(page: Page): Promise<{ y: number; height: number }> {
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight / 2.5));
  return (await page.locator('[data-part="answer"]').boundingBox())!;
}

/** Figures in hand that their boxes do not show whole. */
const cutInBoxes = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLInputElement>('.in-hand input[type="text"]')]
      // A list of readings is as long as it likes.
      .filter((box) => box.closest('.field-list') === null)
      .filter((box) => box.scrollWidth > box.clientWidth)
      .map(({ name, value }) => `${name}: ${value}`),
  );

/** How far below the picture it is said that there is another one, px; nothing where there is none. */
const hintBelowPicture = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const hint = document.querySelector('.calc .sideways')!;
    if (!hint.checkVisibility()) return 0;
    const picture = document.querySelector('.calc-picture')!.getBoundingClientRect();
    return Math.abs(hint.getBoundingClientRect().top - picture.bottom);
  });

/** Figures of a card that stand beside one another and not level. */
const unlevelFigures = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.stacks tr')].flatMap((row) => {
      const cells = [...row.querySelectorAll('td:not(.row-words)')].flatMap((cell) => {
        const ends = [cell.firstElementChild, cell.lastElementChild];
        if (ends.includes(null) || !cell.checkVisibility()) return [];
        const box = cell.getBoundingClientRect();
        const [first, last] = ends.map((end) => end!.getBoundingClientRect());
        return [{ cell, first: first!.top, last: last!.bottom, top: box.top, bottom: box.bottom }];
      });
      const apart = (one: number, other: number): boolean => Math.abs(one - other) > 3;
      return cells.flatMap(({ cell, first, last, top }) =>
        cells.some(
          (other) =>
            other.top < top + 4 &&
            other.bottom > top + 4 &&
            apart(other.first, first) &&
            apart(other.last, last),
        )
          ? [cell.textContent]
          : [],
      );
    }),
  );

/** Units on paper beside which no figure stands. */
const unitsAlone = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.field-unit')]
      .filter((unit) => unit.checkVisibility())
      .filter((unit) => unit.parentElement!.querySelector('input')!.value === '')
      .map(
        (unit) =>
          `${unit.closest('.field')!.querySelector('label')!.textContent}: ${unit.textContent}`,
      ),
  );

/** What reaches beyond the screen's sides, but for what is scrolled sideways within the page. */
const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main *')]
      .filter((part) => {
        const { left, right, width } = part.getBoundingClientRect();
        if (width === 0 || (left >= -1 && right <= innerWidth + 1)) return false;
        return (
          part.closest('.calc-picture, .spoken, .skip, thead, .copy-said, .fold-holds') === null
        );
      })
      .map((part) => `${part.localName}.${part.className}: ${part.textContent!.slice(0, 40)}`),
  );

interface Beside {
  /** How far the picture lies over what follows it or stands beside it, px. */
  readonly over: number;
  /** How much of the screen is bare below the picture, from 0 to 1. */
  readonly bare: number;
}

/** Picture and what is beside it, screen by half a screen through the page. */
const scrolledThrough = (page: Page): Promise<Beside[]> =>
  page.evaluate(async () => {
    const box = (selector: string) => document.querySelector(selector)!.getBoundingClientRect();
    const seen: Beside[] = [];
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight / 2) {
      scrollTo(0, y);
      await new Promise(requestAnimationFrame);
      const picture = box('.calc-picture');
      const over = ['.calc-form', '.calc-more'].map((part) => {
        const other = box(part);
        return Math.min(
          picture.bottom - other.top,
          picture.right - other.left,
          other.bottom - picture.top,
        );
      });
      const end = Math.min(innerHeight, box('.calc').bottom);
      seen.push({ over: Math.max(...over), bare: (end - picture.bottom) / innerHeight });
    }
    scrollTo(0, 0);
    return seen;
  });

/** How much of the pictures beside the form is seen only when they are scrolled, px. */
const picturesOutOfSight = (page: Page): Promise<number> =>
  page
    .locator('.calc-picture')
    .evaluate((pictures) =>
      Math.max(
        pictures.scrollHeight - pictures.clientHeight,
        pictures.scrollWidth - pictures.clientWidth,
      ),
    );

/** Figures of a table that touch what stands beside them in their row, or lie on it. */
const touchingCells = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('main tr:not(.stacks thead > *)')].flatMap((row) => {
      const cells = [...row.querySelectorAll('th, td')]
        .filter((cell) => cell.checkVisibility() && cell.textContent !== '')
        .map((cell) => {
          const range = document.createRange();
          range.selectNodeContents(cell);
          return { says: cell.textContent, lines: [...range.getClientRects()] };
        });
      return cells.slice(1).flatMap(({ says, lines }, i) => {
        const before = cells[i]!;
        const touches = before.lines.some((one) =>
          lines.some(
            (other) =>
              one.bottom > other.top + 2 &&
              other.bottom > one.top + 2 &&
              one.left < other.left &&
              one.right > other.left - 3,
          ),
        );
        return touches ? [`${before.says} | ${says}`] : [];
      });
    }),
  );

/** How far a box in hand lies over its own name, px. */
async function overItsName(page: Page): Promise<number> {
  const box = page.locator('.in-hand .field:has(.step) input').first();
  if ((await box.count()) === 0) return 0;
  await box.focus();
  return box.evaluate((input) => {
    const field = input.closest('.field')!;
    const name = document.createRange();
    name.selectNodeContents(field.querySelector('label')!);
    const { top, left } = input.closest('.field-row')!.getBoundingClientRect();
    const lines = [...name.getClientRects()].filter((line) => line.width > 1 && line.right > left);
    return Math.max(0, ...lines.map((line) => line.bottom - top));
  });
}

/** How far the first line of the answer, with its rule, runs into the button beside it, px. */
const answerPast = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const end = document.querySelector('.lead')!.getBoundingClientRect().right;
    return end - document.querySelector('.copy-link')!.getBoundingClientRect().left;
  });

/** Choices that on paper run out of their column. */
const choicesPast = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.calc-form .option')]
      .filter((option) => option.checkVisibility())
      .filter((option) => {
        const field = option.closest('.field, .lengths')!.getBoundingClientRect();
        return option.getBoundingClientRect().right > field.right + 2;
      })
      .map(({ textContent }) => textContent),
  );

/** Names of fields and results that are broken within a word, as where a box leaves them no room. */
const brokenNames = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll<HTMLElement>(
        '.field-name label, .result dt, table:not(.stacks) thead th',
      ),
    ].flatMap((name) => {
      const words = name.textContent!.trim().split(/[\s\u00AD-]+/);
      const whole = document.createRange();
      whole.selectNodeContents(name);
      const lines = new Set([...whole.getClientRects()].map(({ top }) => Math.round(top))).size;
      return lines > words.length ? [`${name.textContent!}: ${lines} lines`] : [];
    }),
  );

/** What is said twice on paper: the headings of tables that are folded on the screen. */
const saidTwice = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.fold')].flatMap((fold) => {
      const heads = [...fold.querySelectorAll('.fold-name, caption')]
        .filter((head) => head.checkVisibility())
        .map(({ textContent }) => textContent);
      return heads.length > 1 && heads[1]!.startsWith(heads[0]!) ? [heads[0]!] : [];
    }),
  );

/** With all opened: groups narrower than the form that holds them, and buttons of the picture that lie over one another. */
const badlyOpened = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
    const form = document.querySelector('.calc-form')!.getBoundingClientRect();
    const narrow = [...document.querySelectorAll('.calc-form .fold')].filter(
      (fold) => fold.getBoundingClientRect().width < form.width - 1,
    );
    const buttons = [...document.querySelectorAll('.calc-picture .turn')];
    const over = buttons.filter((button, i) => {
      const { left, right, top, bottom } = button.getBoundingClientRect();
      return buttons.slice(i + 1).some((other) => {
        const box = other.getBoundingClientRect();
        return box.left < right && left < box.right && box.top < bottom && top < box.bottom;
      });
    });
    return [...narrow, ...over].map(({ textContent }) => textContent.slice(0, 40));
  });

/** How far the picture that stays in sight reaches over what follows it, at the most, px. */
const overWhatFollows = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const box = (selector: string) => document.querySelector(selector)!.getBoundingClientRect();
    let most = -Infinity;
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight / 3) {
      scrollTo(0, y);
      most = Math.max(most, box('.calc-picture').bottom - box('.calc-more').top);
    }
    scrollTo(0, 0);
    return most;
  });

describe.each(slugs)('%s', (slug) => {
  const path = `calculators/${slug}/`;

  it('has answer, picture and figure in hand in that order, on one screen each, keeps its answer in sight, and cuts no box to choose from and no row of buttons', async () => {
    await visit({ path, ...touch }, async (page) => {
      const at = await placesOf(page);
      expect(at.answer).toBeLessThanOrEqual(96);
      expect(at.picture).toBeLessThanOrEqual(480);
      expect(at.begins).toBeLessThanOrEqual(screen.height - 40);
      expect(at.form).toBeGreaterThan(at.picture);
      expect(at.more).toBeGreaterThan(at.form);
      expect(at.inHand).toBeLessThanOrEqual(screen.height);
      expect(at.length).toBeLessThanOrEqual((LONG[slug] ?? USUAL) / 2);

      await page.setViewportSize(low);
      await expect.poll(async () => (await placesOf(page)).inHand).toBeLessThanOrEqual(low.height);
      await expect.poll(() => cutInBoxes(page)).toEqual([]);
      const atLow = await stuckStrip(page);
      expect(atLow.height, 'at 360').toBeLessThanOrEqual(96);
      await page.setViewportSize(screen);
      await expect.poll(() => hintBelowPicture(page)).toBeLessThanOrEqual(4);

      const strip = await stuckStrip(page);
      expect(Math.abs(strip.y)).toBeLessThanOrEqual(1);
      expect(strip.height).toBeLessThanOrEqual(96);

      await settled(page);
      const beyond = await page.evaluate(() => {
        for (const fold of document.querySelectorAll('details')) fold.open = true;
        const boxes = [...document.querySelectorAll('.option')].filter((box) => {
          const column = box.closest('.calc-form')!.getBoundingClientRect();
          return box.checkVisibility() && box.getBoundingClientRect().right > column.right + 0.5;
        });
        const rows = [...document.querySelectorAll('.calc-picture .presets')].filter(
          (row) => row.scrollWidth > row.clientWidth,
        );
        return [...boxes, ...rows].map(({ textContent }) => textContent);
      });
      expect(beyond).toEqual([]);
      await expect.poll(() => unlevelFigures(page)).toEqual([]);
      await expect.poll(() => touchingCells(page)).toEqual([]);
      await page.setViewportSize(low);
      await expect.poll(() => touchingCells(page)).toEqual([]);
    });
  });

  it('keeps its picture beside the form and over nothing, with no half a screen bare below it, and sets type in its pictures in 13 to 15 px at every width; unfolded cuts nothing off at 320 px, and has every handle brought into sight on a small desk', async () => {
    await visit({ path, viewport: { width: 1280, height: 900 } }, async (page) => {
      for (const { over, bare } of await scrolledThrough(page)) {
        expect(over, 'the picture over the form, at 1280').toBeLessThanOrEqual(1);
        expect(bare, 'bare below the picture, at 1280').toBeLessThanOrEqual(0.5);
      }
      const buttons = (await page.locator('.calc-picture > :last-child > .turn').count()) > 0;
      await expect.poll(() => picturesOutOfSight(page)).toBeLessThanOrEqual(buttons ? 0 : 56);
      await expect.poll(() => overItsName(page)).toBeLessThanOrEqual(0);
      await page.setViewportSize({ width: 1920, height: 1080 });
      for (const { bare } of await scrolledThrough(page)) {
        expect(bare, 'bare below the picture, at 1920').toBeLessThanOrEqual(0.5);
      }
      await page.setViewportSize({ width: 768, height: 1024 });
      for (const { over } of await scrolledThrough(page)) {
        expect(over, 'the picture over the form, at 768').toBeLessThanOrEqual(1);
      }
      for (const width of [1280, 768, 390, 360]) {
        await page.setViewportSize({ width, height: 844 });
        for (const size of await typeSizes(page)) {
          expect(size, `at ${String(width)}`).toBeGreaterThan(12.6);
          expect(size, `at ${String(width)}`).toBeLessThan(15);
        }
        await expect
          .poll(() => answerPast(page), { message: `at ${String(width)}` })
          .toBeLessThanOrEqual(0);
      }

      await page.setViewportSize({ width: 320, height: 640 });
      await settled(page);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
      expect(await cutOff(page)).toEqual([]);
      await expect.poll(() => brokenNames(page)).toEqual([]);
      await page.setViewportSize({ width: 1280, height: 900 });
      await expect.poll(() => badlyOpened(page), { message: 'opened, at 1280' }).toEqual([]);

      await page.emulateMedia({ media: 'print' });
      await page.setViewportSize({ width: 720, height: 1000 });
      await expect.poll(() => choicesPast(page)).toEqual([]);
      await expect.poll(() => brokenNames(page)).toEqual([]);
      await expect.poll(() => saidTwice(page)).toEqual([]);
      await expect.poll(() => unitsAlone(page)).toEqual([]);
      await page.emulateMedia({ media: 'screen' });

      await page.setViewportSize({ width: 768, height: 1024 });
      await expect.poll(() => brokenNames(page)).toEqual([]);
      await expect.poll(() => overWhatFollows(page)).toBeLessThanOrEqual(0);

      const desk = { width: 1024, height: 700 };
      await page.setViewportSize(desk);
      for (const handle of await page.locator('.calc-picture [role="slider"]').all()) {
        await handle.scrollIntoViewIfNeeded();
        const { y, height } = (await handle.boundingBox())!;
        expect(y + height / 2, (await handle.getAttribute('aria-label')) ?? '').toBeLessThan(
          desk.height,
        );
        expect(y + height / 2).toBeGreaterThan(0);
      }
    });
  });
});

describe('a group of fields', () => {
  it('opens by itself where a link holds what cannot be read', async () => {
    const path = 'calculators/piston-position/?travel=2.2mm&rod=abc';
    await visit({ path, ...touch }, async (page) => {
      await expect.poll(() => page.locator('input[name="rod"]').isVisible()).toBe(true);
      expect(await page.locator('input[name="tilt"]').isVisible()).toBe(false);
    });
  });

  it('opens without script', async () => {
    const path = 'calculators/piston-position/';
    await visit({ path, ...touch, javaScriptEnabled: false }, async (page) => {
      await page.getByText('The engine', { exact: true }).click();
      await expect.poll(() => page.locator('input[name="rod"]').isVisible()).toBe(true);
    });
  });
});

describe('the keys above a pad of digits', () => {
  it('lie on no box that is typed into', async () => {
    await visit({ path: 'calculators/fuel-and-oil/', ...touch }, async (page) => {
      await settled(page);
      const box = page.locator('.in-hand input').first();
      const { y, height } = (await box.boundingBox())!;
      // So that the box stands at the very foot of the screen.
      const foot = { width: screen.width, height: Math.ceil(y + height) + 4 };
      await page.setViewportSize(foot);
      await box.focus();
      const keys = page.locator('.key-row');
      await keys.waitFor();
      await expect
        .poll(async () => {
          const { y: top, height: tall } = (await box.boundingBox())!;
          return top + tall - (await keys.boundingBox())!.y;
        })
        .toBeLessThanOrEqual(0);
    });
  });
});

describe('the keys of a unit', () => {
  const narrow = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };
  it.each([
    ['fuel-and-oil', 'fuel', 'US gal', /^5 US gal$/],
    ['air-and-jet', 'temperature', '°F', /°F$/],
    ['air-and-jet', 'altitude', 'ft', / ft$/],
    ['firing-order', 'reciprocating', 'oz', / oz$/],
  ] as const)(
    '%s %s: %s is typed by a tap, each key wide enough for a thumb',
    async (slug, key, name, typed) => {
      await visit({ path: `calculators/${slug}/`, ...narrow }, async (page) => {
        await settled(page);
        const box = field(page, key);
        await box.tap();
        const row = page.locator('.key-row');
        await row.waitFor();
        expect((await row.boundingBox())!.height).toBeLessThan(100);
        for (const key of await row.locator('button').all()) {
          const { x, width, height } = (await key.boundingBox())!;
          expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
          expect(x + width).toBeLessThanOrEqual(360.5);
        }
        await box.press('End');
        await row.getByRole('button', { name, exact: true }).tap();
        await expect.poll(() => box.inputValue()).toMatch(typed);
      });
    },
  );
});

describe('on a wide screen', () => {
  it('where each ± comes from stands in two columns on a desk, their names on one line', async () => {
    const viewport = { width: 1280, height: 900 };
    await visit({ path: 'calculators/wiring/', viewport }, async (page) => {
      await settled(page);
      await page.locator('.budget').nth(1).waitFor();
      const [first, second] = await page
        .locator('.budget')
        .evaluateAll((all) =>
          all.slice(0, 2).map((one) => one.getBoundingClientRect().toJSON() as DOMRect),
        );
      expect(second!.top).toBe(first!.top);
      expect(second!.left).toBeGreaterThan(first!.right);
      const lines = await page
        .locator('.budget li > :first-child')
        .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
      expect(Math.max(...lines)).toBeLessThan(1.5 * Math.min(...lines));
    });
  });

  it('the list of calculators stands in two columns, each known by its picture', async () => {
    const viewport = { width: 1280, height: 900 };
    await visit({ path: 'calculators/', viewport }, async (page) => {
      const lefts = await page
        .locator('.links img')
        .evaluateAll((pictures) => pictures.map((one) => one.getBoundingClientRect().left));
      expect(lefts).toHaveLength(slugs.length);
      expect(new Set(lefts).size).toBe(2);
    });
  });

  it('the picture stays in sight while the form is scrolled', async () => {
    const viewport = { width: 1280, height: 700 };
    await visit({ path: 'calculators/time-area/', viewport }, async (page) => {
      await settled(page);
      await page.locator('input[name="inlet-count"]').scrollIntoViewIfNeeded();
      const picture = (await page.locator('[data-part="picture"] svg').first().boundingBox())!;
      expect(picture.y).toBeGreaterThanOrEqual(0);
      expect(picture.y + picture.height).toBeLessThanOrEqual(viewport.height);
    });
  });
});
