import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { expectResult, field, result } from './support/calculator.ts';
import { drag } from './support/handles.ts';
import { phone, visit, visitEarly } from './support/page.ts';

const PATH = 'calculators/piston-position/';
const awake = (page: Page): Promise<string | null> =>
  page.locator('[data-calculator]').getAttribute('data-awake');
const answers = (page: Page): Promise<void> =>
  page.locator('[data-calculator][data-ready="true"]').waitFor();

const SCRIPT = /\/_astro\/.*\.js$/;

/** A calculator that nobody has touched, and of which nothing has been fetched. */
const untouched = (body: (page: Page) => Promise<void>, options = {}): Promise<void> =>
  visit({ path: PATH, ...options }, async (page) => {
    await page.waitForLoadState('networkidle');
    await page.locator('html[data-ready]').waitFor();
    expect(await awake(page)).toBeNull();
    expect(await page.locator('[data-calculator]').getAttribute('data-ready')).toBeNull();
    await body(page);
  });

/** The same, on a line so slow that its script does not come before it is let come. */
const onSlowLine = (
  body: (page: Page, letScriptsCome: () => void) => Promise<void>,
): Promise<void> =>
  untouched(
    async (page) => {
      const { promise: held, resolve } = Promise.withResolvers<undefined>();
      await page.route(SCRIPT, async (route) => {
        await held;
        await route.continue();
      });
      await body(page, () => resolve(undefined));
    },
    { viewport: phone, hasTouch: true },
  );

describe('a calculator that nobody has touched', () => {
  it('stands as it was served until the reader stirs', async () => {
    await untouched(
      async (page) => {
        await page.evaluate(() => scrollTo(0, 40));
        await expect.poll(() => awake(page)).toBe('true');
        await expectResult(page, 'travel', 2.2);
      },
      { viewport: phone },
    );
  });

  it('has the keys that a pad lacks at the first tap on a box, however late its script comes', async () => {
    await onSlowLine(async (page, letScriptsCome) => {
      await field(page, 'travel').tap();
      letScriptsCome();
      await page.locator('.key-row').waitFor();
      expect(await page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe(
        'travel',
      );
    });
  });

  it('takes the first press of a button', async () => {
    await untouched(async (page) => {
      await page.getByRole('button', { name: 'Send figures to the sheet' }).click();
      await page.getByRole('button', { name: 'Send to a new sheet' }).waitFor();
    });
  });

  it('takes one below the form before anything has been painted', async () => {
    await untouched(async (page) => {
      await page.evaluate(() => {
        globalThis.requestAnimationFrame = () => 0;
      });
      await page.getByRole('button', { name: 'Send figures to the sheet' }).click();
      await page.getByRole('button', { name: 'Send to a new sheet' }).waitFor();
    });
  });

  it('answers the first key before anything has been painted', async () => {
    await untouched(async (page) => {
      await page.evaluate(() => {
        globalThis.requestAnimationFrame = () => 0;
      });
      await field(page, 'travel').press('ArrowUp');
      await expect.poll(() => result(page, 'travel')).not.toBeCloseTo(2.2, 6);
    });
  });

  it('takes the first drag of its picture', async () => {
    await untouched(async (page) => {
      await drag(page, 'Working point', -40, 0);
      await expect.poll(() => result(page, 'travel')).not.toBeCloseTo(2.2, 3);
    });
  });

  it('takes the first key', async () => {
    await untouched(async (page) => {
      await page.getByRole('slider').first().press('ArrowRight');
      await expect.poll(() => result(page, 'travel')).not.toBeCloseTo(2.2, 6);
    });
  });

  it('takes a figure that something else than a keyboard fills in', async () => {
    await untouched(async (page) => {
      await field(page, 'travel').evaluate((input: HTMLInputElement) => {
        input.value = '2.8';
        input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      });
      await expectResult(page, 'travel', 2.8);
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('2.8');
    });
  });

  it('follows a choice of units made in another tab', async () => {
    await untouched(async (page) => {
      const other = await page.context().newPage();
      await other.goto(new URL('calculators/compression/', inject('siteUrl')).href);
      await other.locator('.lengths .option').last().click();
      await expect.poll(() => page.locator('.calc-answer').textContent()).toContain(' thou');
      expect(await page.locator('.lengths input[value="in"]').isChecked()).toBe(true);
    });
  });

  it('once in use follows one made while a browser kept the page in its memory', async () => {
    await untouched(async (page) => {
      await field(page, 'travel').press('ArrowUp');
      await expect.poll(() => awake(page)).toBe('true');
      await page.evaluate(() => {
        localStorage.setItem('gudgeon.lengths', 'in');
        dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }));
      });
      await expect.poll(() => page.locator('.calc-answer').textContent()).toContain(' thou');
    });
  });

  it('takes a choice of units that the browser refuses to keep', async () => {
    await untouched(async (page) => {
      await page.evaluate(() => {
        Storage.prototype.setItem = () => {
          throw new DOMException('Nothing is kept', 'QuotaExceededError');
        };
      });
      await page.locator('.lengths .option').last().click();
      await expect.poll(() => page.locator('.calc-answer').textContent()).toContain(' thou');
      await expect.poll(() => page.getAttribute('html', 'data-lengths')).toBe('in');
    });
  });

  it('is not stirred by a mouse at rest, under which the page was laid out', async () => {
    await untouched(async (page) => {
      const busy = await page.evaluate(() =>
        [0, 1].map((movementX) => {
          document.dispatchEvent(new PointerEvent('pointermove', { movementX }));
          return document.querySelector('[data-calculator]')!.getAttribute('aria-busy');
        }),
      );
      expect(busy).toEqual([null, 'true']);
    });
  });

  it('goes where the browser’s history goes', async () => {
    await untouched(async (page) => {
      await page.evaluate(() => {
        history.pushState(null, '', '?travel=2.8mm');
        dispatchEvent(new PopStateEvent('popstate'));
      });
      await expectResult(page, 'travel', 2.8);
    });
  });
});

describe('a calculator whose script is on its way', () => {
  const comes = (page: Page): Promise<void> =>
    expect.poll(() => awake(page)).toBe('true') as unknown as Promise<void>;

  it('says so, and keeps what is typed, taken hold of and pressed meanwhile', async () => {
    await onSlowLine(async (page, letScriptsCome) => {
      await field(page, 'travel').fill('2.8');
      await page.getByRole('slider').first().press('PageUp');
      await expect
        .poll(() =>
          page
            .locator('.copy-said')
            .evaluate((said) => getComputedStyle(said, '::after').getPropertyValue('visibility')),
        )
        .toBe('visible');
      letScriptsCome();
      await comes(page);
      // From what was typed, and not from what stood there.
      await expect.poll(() => result(page, 'travel')).not.toBeCloseTo(2.8, 6);
      expect(Math.abs((await result(page, 'travel'))! - 2.8)).toBeLessThan(1);
    });
  });

  it('keeps what is stepped by the keys of a box meanwhile', async () => {
    await onSlowLine(async (page, letScriptsCome) => {
      const box = field(page, 'travel');
      await box.fill('2.8');
      await box.press('ArrowUp');
      await box.press('ArrowUp');
      letScriptsCome();
      await comes(page);
      await expectResult(page, 'travel', 2.9);
    });
  });

  it('keeps what is typed after such a step, and not the step', async () => {
    await onSlowLine(async (page, letScriptsCome) => {
      const box = field(page, 'travel');
      await box.press('ArrowUp');
      await box.fill('2.8');
      letScriptsCome();
      await comes(page);
      await expectResult(page, 'travel', 2.8);
    });
  });

  it('does not hold a handle that was let go meanwhile, and sends no form away', async () => {
    await onSlowLine(async (page, letScriptsCome) => {
      // A finger that has gone can be held by nothing: the attempt would be a fault of the page.
      await page.getByRole('slider').first().tap();
      await page.locator('form.calc-form').evaluate((form: HTMLFormElement) => {
        Object.assign(window, { stayed: true });
        form.requestSubmit();
      });
      letScriptsCome();
      await comes(page);
      await field(page, 'travel').press('ArrowUp');
      await expectResult(page, 'travel', 2.25);
      await expect.poll(() => page.evaluate(() => 'stayed' in window)).toBe(true);
    });
  });

  it('keeps a choice of units made meanwhile', async () => {
    await onSlowLine(async (page, letScriptsCome) => {
      await page.locator('.lengths .option').last().tap();
      letScriptsCome();
      await expect.poll(() => page.locator('.calc-answer').textContent()).toContain(' thou');
      expect(await page.locator('.lengths input[value="in"]').isChecked()).toBe(true);
    });
  });

  it('is told of when it neither comes nor fails, until it comes', async () => {
    await onSlowLine(async (page, letScriptsCome) => {
      await page.locator('.calc-answer').tap();
      const told = page.getByText('A part of this page has not come yet, so it does not answer.');
      await told.waitFor();
      letScriptsCome();
      await comes(page);
      await expect.poll(() => told.isVisible()).toBe(false);
    });
  });

  it('is told of when it is gone, with a way to try again that loses nothing', async () => {
    const options = { viewport: phone, expected: [/ERR_FAILED/], tolerated: [/Failed to fetch/] };
    await untouched(async (page) => {
      await page.route(SCRIPT, (route) => route.abort());
      await field(page, 'travel').fill('2.8');
      const again = page.getByRole('button', { name: 'Try again' });
      await again.waitFor();
      await page.unroute(SCRIPT);
      await again.click();
      await comes(page);
      await expectResult(page, 'travel', 2.8);
    }, options);
  });
});

describe('a calculator with something to show', () => {
  it('shows it untouched, and what has the focus keeps it', async () => {
    await visitEarly(PATH, async (page, letScriptsCome) => {
      await field(page, 'travel').fill('2.');
      letScriptsCome();
      await answers(page);
      await page.keyboard.type('8');
      await expectResult(page, 'travel', 2.8);
    });
  });

  it('so does a figure of an article in whose box something was typed before any script had come', async () => {
    await visitEarly('articles/crank-of-your-own/', async (page, letScriptsCome) => {
      const pin = page.locator('figure input[name="pin-2"]');
      await pin.fill('90');
      // The reader has gone on meanwhile: the focus tells nothing.
      await pin.evaluate((box: HTMLElement) => box.blur());
      letScriptsCome();
      await page.locator('figure [data-awake="true"], figure[data-awake="true"]').waitFor();
      expect(await pin.inputValue()).toBe('90');
    });
  });
});
