import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { spotFragment, spotsOf } from '../../calculators/sheet/due.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { plainDecimal } from '../../calculators/maths/numeric/rounding.ts';
import { writeDocument } from '../../calculators/sheet/validate.ts';
import { steps } from '../../calculators/sheet/steps.ts';
import { figured, passing } from '../sheet/job.ts';
import { expectAccessible } from './support/axe.ts';
import { keyboard, touch, type Hands } from './support/hands.ts';
import { phone, visit } from './support/page.ts';
import { button, expectKept, keepEngines, kept, ready } from './support/sheet.ts';

const path = 'sheet/';
const demo = { ...demoSheet(), id: 'e-1' };

const oneBox = (page: Page) => page.locator('#one-box');
const verdict = (page: Page) => page.locator('.one-verdict');
const next = (page: Page) => page.locator('.one a.one-next');
const hash = (page: Page): string => new URL(page.url()).hash;

/** Follows a link to a reading. */
async function goTo(page: Page, fragment: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, fragment);
  await page.locator(`.one[data-spot="${fragment}"]`).waitFor();
}

/** An engine of two cylinders with every figure that a step is judged by, and an empty log. */
const twin = (): Engine => figured({ cylinders: 2, 'set-2': 180, condensers: 2, 'fed-coils': 2 });

/** From an empty log to the last tick, one reading a screen. Counts what is pressed. */
async function wholeJob(page: Page, hands: Hands): Promise<number> {
  const engine = twin();
  await ready(page);
  await keepEngines(page, engine);
  let presses = 0;
  const press = async (...args: Parameters<Hands['press']>): Promise<void> => {
    presses += 1;
    await hands.press(...args);
  };
  await press(page.locator('.order a.one-next'));
  for (const spot of spotsOf(engine)) {
    await page.locator(`.one[data-spot="${spotFragment(spot)}"]`).waitFor();
    await expect.poll(() => hash(page)).toBe(`#${spotFragment(spot)}`);
    if (steps[spot.step].reading) {
      await hands.type(oneBox(page), plainDecimal(passing(engine, spot.step, 180)));
      // Readings judged against one another have their verdict at the last of them, if at all.
      const { judging } = steps[spot.step].reading!;
      const together = ['together', 'spacing', 'alike', 'noted'].includes(judging);
      if (!together) {
        await expect
          .poll(() => verdict(page).textContent(), { message: spot.step })
          .toContain('Pass');
      }
      await press(next(page));
    } else await press(page.locator('.one').getByRole('button', { name: 'Done', exact: true }));
  }
  await expect.poll(() => hash(page)).toBe('#order-of-work');
  await expect.poll(() => page.locator('.order-state').textContent()).toContain('complete');
  return presses;
}

describe('one reading a screen', () => {
  it(
    'the whole job by touch at 360 px: one press a reading, nothing wider than the screen',
    { timeout: 300_000 },
    async () => {
      await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
        const presses = await wholeJob(page, touch(page));
        expect(presses).toBe(spotsOf(twin()).length + 1);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
          phone.width,
        );
      });
    },
  );

  it('the whole job by keyboard', { timeout: 300_000 }, async () => {
    await visit({ path }, async (page) => {
      await wholeJob(page, keyboard(page));
    });
  });

  it('says the least correction, takes the reading after it, and keeps both with their day', async () => {
    await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
      await ready(page);
      await keepEngines(page, twin());
      await goTo(page, 'read-gap-2');
      await oneBox(page).fill('0.31');
      await expect.poll(() => verdict(page).textContent()).toContain('Open the gap');
      await button(page, 'Corrected: read it again').click();
      await expect.poll(() => oneBox(page).inputValue()).toBe('');
      await oneBox(page).fill('0.39');
      await expect.poll(() => verdict(page).textContent()).toContain('Pass');
      const day = await page.evaluate(() => {
        const now = new Date();
        const two = (value: number): string => String(value).padStart(2, '0');
        return `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
      });
      const { log } = (JSON.parse(await kept(page)) as { sheet: { engines: Engine[] } }).sheet
        .engines[0]!;
      expect(log).toMatchObject([
        { kind: 'found', step: 'gap', cylinder: 2, value: 0.31, on: day },
        { kind: 'change', step: 'gap', cylinder: 2, value: 0.39, on: day },
      ]);
      await expectAccessible(page);
      await expect
        .poll(() => page.locator('.one').textContent())
        .toContain('What it asked for, as found');
    });
  });

  it('opens at its top from wherever the list was left, with its heading to go on from', async () => {
    await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
      await ready(page);
      await keepEngines(page, twin());
      const top = () =>
        page.evaluate(() => [Math.round(scrollY), document.activeElement?.id] as const);
      await page.locator('.order a.one-next').tap();
      await page.locator('.one').waitFor();
      await expect.poll(top).toEqual([0, 'one-title']);
      await page.getByRole('link', { name: 'List of steps' }).tap();
      const card = page.locator('#step-timing');
      await card.waitFor();
      if ((await card.getAttribute('open')) === null) await card.locator('> summary').tap();
      await card.getByRole('link', { name: 'One reading at a time' }).tap();
      await page.locator('.one').waitFor();
      await expect.poll(top).toEqual([0, 'one-title']);
    });
  });

  it('shows box and verdict on the first screen, above the keys, whatever comes before the step', async () => {
    const viewport = { width: 390, height: 844 };
    await visit({ path, viewport, hasTouch: true, isMobile: true }, async (page) => {
      await ready(page);
      await keepEngines(page, twin());
      for (const step of ['timing', 'inlet', 'leak', 'slides']) {
        for (const cylinder of ['1', '2']) {
          await goTo(page, `read-${step}-${cylinder}`);
          await oneBox(page).tap();
          await oneBox(page).fill('0.5');
          await page.locator('.key-row').waitFor();
          const bottom = async (place: string): Promise<number> =>
            page.locator(place).evaluate((part) => part.getBoundingClientRect().bottom);
          const keys = await page
            .locator('.key-row')
            .evaluate((row) => row.getBoundingClientRect().top);
          expect(await bottom('.one-verdict'), `${step} ${cylinder}`).toBeLessThanOrEqual(keys);
          const { y } = (await page.locator('#one-title').boundingBox())!;
          expect(y, `${step} ${cylinder}`).toBeGreaterThanOrEqual(0);
        }
      }
      const waits = page.locator('.one .waits');
      await expect
        .poll(() => waits.locator('summary').innerText())
        .toMatch(/Comes after \d+ steps/);
      await waits.locator('summary').tap();
      await expect.poll(() => waits.locator('a').first().isVisible()).toBe(true);
    });
  });

  it('shows the box on the first screen also where figures are lacking or refused', async () => {
    const viewport = { width: 390, height: 844 };
    await visit({ path, viewport, hasTouch: true, isMobile: true }, async (page) => {
      await ready(page);
      const { rod: _, target: __, ...figures } = twin().figures;
      await keepEngines(page, { ...twin(), figures, unread: { 'figure:target': '22°' } });
      await goTo(page, 'read-timing-1');
      await expect
        .poll(() => page.locator('#figure-target-problem').textContent())
        .toContain('by a degree disc');
      const { y, height } = (await oneBox(page).boundingBox())!;
      expect(y).toBeGreaterThan(0);
      expect(y + height).toBeLessThan(viewport.height);
      // The last figure leads back to the box that stands before them.
      await page.locator('#figure-rod').fill('104');
      await page.locator('.offers button', { hasText: 'mm' }).first().tap();
      await expect.poll(() => page.locator('#figure-target').inputValue()).toMatch(/^2\.\d+/);
      await page.locator('#figure-target').press('Enter');
      await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('one-box');
    });
  });

  it('a refused figure takes the verdict back, and names the reading that stands', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, twin());
      await goTo(page, 'read-gap-1');
      await oneBox(page).fill('0.31');
      await expect.poll(() => verdict(page).textContent()).toMatch(/^✕ To correct:/);
      await button(page, 'Corrected: read it again').click();
      await oneBox(page).fill('81');
      await page.locator('#one-box-problem').waitFor();
      await expect
        .poll(() => verdict(page).textContent())
        .toMatch(/^The last good reading, 0\.31 mm, stands\.$/);
      await oneBox(page).fill('0.39');
      await expect.poll(() => verdict(page).textContent()).toMatch(/^✓ Pass/);
    });
  });

  it('what a correction moves is said to who makes one, and not under a pass', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, twin());
      await goTo(page, 'read-coil-1');
      await oneBox(page).fill('9');
      const moved = page.locator('.one .remarks', { hasText: 'Another coil is to be proved' });
      await moved.waitFor();
      await goTo(page, 'read-coil-2');
      await oneBox(page).fill(plainDecimal(twin().figures.resistance!));
      await expect.poll(() => verdict(page).textContent()).toMatch(/^✓ Pass/);
      expect(await moved.count()).toBe(0);
    });
  });

  it('a check again is a link; what reads the same is one press; nothing typed is lost', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await page.locator('.order-state a', { hasText: 'set the timing' }).click();
      await expect.poll(() => hash(page)).toBe('#read-timing-1');
      await expect
        .poll(() => page.locator('.one .again').textContent())
        .toMatch(/set 1 from 0\.39 mm to 0\.34 mm on 28 Feb 2026/);
      await button(page, /as before$/).click();
      await expect.poll(() => hash(page)).toBe('#read-timing-2');
      await oneBox(page).fill('2.2x');
      await expect.poll(() => page.locator('#one-box-problem').innerText()).toContain('x');
      await page.reload();
      await expect.poll(() => oneBox(page).inputValue()).toBe('2.2x');
      await oneBox(page).fill('2.2');
      await expectKept(page, '"left":[2.24,2.2,2.24]');
    });
  });

  it('comes back where it was left, and the list at the step it was left at', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await goTo(page, 'read-float-2');
      await page.goto(new URL('articles/', page.url().replace(/sheet\/.*$/, '')).href);
      await page.goto(page.url().replace(/articles\/.*$/, 'sheet/'));
      await ready(page);
      await expect.poll(() => hash(page)).toBe('#read-float-2');
      await page.getByRole('link', { name: 'List of steps' }).click();
      await expect.poll(() => page.locator('#step-float').getAttribute('open')).not.toBeNull();
      await page.goBack();
      await expect.poll(() => page.locator('.one-held, #one-box').count()).toBeGreaterThan(0);
    });
  });

  it('each engine comes back where it was left, and another is not led there', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      const other: Engine = { ...twin(), id: 'e-2', name: 'Other' };
      await keepEngines(page, demo, other);
      await goTo(page, 'read-float-2');
      await page.getByRole('link', { name: 'List of steps' }).click();
      const choose = (name: string) =>
        page.locator('.engine-bar select').selectOption({ label: name });
      await choose('Other');
      await expect.poll(() => hash(page)).toBe('');
      await goTo(page, 'read-gap-2');
      await page.getByRole('link', { name: 'List of steps' }).click();
      await choose(demo.name);
      const again = async (): Promise<void> => {
        await page.goto(page.url().replace(/#.*$/, '').replace('sheet/', 'articles/'));
        await page.goto(page.url().replace('articles/', 'sheet/'));
        await ready(page);
      };
      await again();
      await expect.poll(() => hash(page)).toBe('#step-float');
      await choose('Other');
      await expectKept(page, '"active":"e-2"');
      await again();
      await expect.poll(() => hash(page)).toBe('#step-gap');
    });
  });

  it('asks for the figures that it lacks, whose boxes stay while they are typed', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      const { gap: _, 'gap-tolerance': __, ...figures } = twin().figures;
      await keepEngines(page, { ...twin(), figures });
      await goTo(page, 'read-gap-1');
      await page.locator('#figure-gap').pressSequentially('0.4');
      await page.locator('#figure-gap-tolerance').pressSequentially('0.03');
      await expectKept(page, '"gap":0.4');
      await oneBox(page).fill('0.31');
      await expect.poll(() => verdict(page).textContent()).toContain('by 0.09 mm');
    });
  });

  it('a hint that names a figure of the sheet leads to its box, from the list too', async () => {
    await visit({ path, viewport: phone }, async (page) => {
      await ready(page);
      const vee = { ...newEngine('e-1', 'Vee'), figures: { cylinders: 2 } };
      await keepEngines(page, vee);
      const focused = () => page.evaluate(() => document.activeElement?.id);
      await goTo(page, 'read-top-2');
      await oneBox(page).fill('200');
      await page.locator('.one').getByRole('link', { name: '“Set 2, from set 1”' }).click();
      await expect.poll(focused).toBe('figure-set-2');
      await page.locator('#step-reeds').getByRole('link', { name: 'Reed petals' }).click();
      await expect.poll(focused).toBe('figure-reeds');
    });
  });

  it('keeps the screen on while it is open, where the browser can', async () => {
    await visit({ path }, async (page) => {
      await page.addInitScript(() => {
        const calls: string[] = [];
        Object.assign(globalThis, { calls });
        Object.defineProperty(Navigator.prototype, 'wakeLock', {
          value: {
            request: (kind: string) => {
              calls.push(`asked for ${kind}`);
              return Promise.resolve({
                release: () => {
                  calls.push('released');
                  return Promise.resolve();
                },
              });
            },
          },
        });
      });
      await page.reload();
      await ready(page);
      await keepEngines(page, demo);
      await goTo(page, 'read-gap-1');
      await page.getByLabel('Keep the screen on').check();
      await next(page).click();
      await page.getByRole('link', { name: 'List of steps' }).click();
      const calls = () => page.evaluate(() => (globalThis as unknown as { calls: string[] }).calls);
      await expect.poll(calls).toEqual(['asked for screen', 'released']);
    });
  });

  it('does without it where there is none', async () => {
    await visit({ path }, async (page) => {
      await page.addInitScript(() => {
        Reflect.deleteProperty(Navigator.prototype, 'wakeLock');
      });
      await page.reload();
      await ready(page);
      await keepEngines(page, demo);
      await goTo(page, 'read-gap-1');
      await next(page).waitFor();
      expect(await page.getByLabel('Keep the screen on').count()).toBe(0);
    });
  });
});

it('a tick of the first start is kept, though the page is left in the same moment', async () => {
  await visit({ path }, async (page) => {
    await ready(page);
    await keepEngines(page, twin());
    await page.goto(page.url().replace(/sheet\/.*$/, 'first-start/'));
    await page.locator('[data-list-anew]').waitFor();
    const now = await page.evaluate(() => {
      document.querySelectorAll<HTMLInputElement>('input[data-line]')[2]!.click();
      // Whoever leaves now leaves no time for anything that is still to come.
      return localStorage.getItem('gudgeon.sheet');
    });
    expect(now).toContain('"kind":"ticked"');
  });
});

describe('an engine that comes to the sheet', () => {
  const typed = (inches: number): number => inches * 25.4;
  const inch = (): Engine => ({
    ...twin(),
    name: 'Inch twin',
    figures: {
      cylinders: 2,
      bore: typed(2.244),
      stroke: typed(2.362),
      rod: typed(4.528),
      gap: typed(0.014),
      'gap-tolerance': typed(0.001),
      target: typed(0.1),
      squish: typed(0.041),
      'squish-tolerance': typed(0.006),
      'ring-gap': typed(0.011),
      height: typed(0.937),
      'height-tolerance': typed(0.011),
      jet: typed(0.0394),
      'plug-gap': typed(0.023),
    },
  });
  const open = (page: Page): Promise<void> =>
    page.locator('input[type="file"]').setInputFiles({
      name: 'twin.json',
      mimeType: 'application/json',
      buffer: Buffer.from(writeDocument([inch()])),
    });
  const said = (page: Page) => page.locator('.engine-bar .share-state');

  it('from a file shows lengths as it was typed on a fresh device, and counts as saved', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await open(page);
      await expect.poll(() => said(page).innerText()).toContain('were typed in inches, and');
      expect(await page.locator('input[name="sheet-lengths"][value="in"]').isChecked()).toBe(true);
      await expect
        .poll(() => page.locator('.safe').innerText())
        .toMatch(/^Last saved to a file on/);
    });
  });

  it('leaves a choice that was made, and says that lengths are shown otherwise', async () => {
    await visit({ path }, async (page) => {
      await page.evaluate(() => localStorage.setItem('gudgeon.lengths', 'mm'));
      await page.reload();
      await ready(page);
      await open(page);
      await expect.poll(() => said(page).innerText()).toContain('are shown in millimetres');
      expect(await page.locator('input[name="sheet-lengths"][value="mm"]').isChecked()).toBe(true);
    });
  });

  it('new, has its first figure and the way to its next step on the first screen', async () => {
    const viewport = { width: 390, height: 844 };
    await visit({ path, viewport, hasTouch: true, isMobile: true }, async (page) => {
      await ready(page);
      await button(page, 'New engine').tap();
      const files = page.locator('.engine-bar details');
      await files.waitFor();
      for (const place of ['.one-way a', '#figure-cylinders']) {
        const { y, height } = (await page.locator(place).first().boundingBox())!;
        expect(y + height, place).toBeLessThanOrEqual(viewport.height);
      }
      await files.locator('> summary').tap();
      await expect.poll(() => button(page, 'Save to a file').isVisible()).toBe(true);
    });
  });
});

describe('without a mouse or a screen', () => {
  it('a refused reading is spoken, and once more by the key that would lead on', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, twin());
      await goTo(page, 'read-end-float-1');
      await oneBox(page).fill('-3');
      const spoken = page.locator('.one-field [role="status"]');
      await expect.poll(() => spoken.textContent()).toContain('“-3”');
      const sentence = (await page.locator('#one-box-problem').innerText()).replace('▲ ', '');
      await expect.poll(() => spoken.textContent()).toBe(sentence);
      // What is read out again has to go first: the same words over are no change.
      await page.evaluate(() => {
        const place = document.querySelector<HTMLElement>('.one-field [role="status"]')!;
        const heard = new MutationObserver(() => {
          place.dataset.heard = `${place.dataset.heard ?? ''}|${place.textContent}`;
        });
        heard.observe(place, { childList: true, characterData: true, subtree: true });
      });
      await oneBox(page).press('Enter');
      await expect.poll(() => spoken.getAttribute('data-heard')).toBe(`||${sentence}`);
      await expect.poll(() => hash(page)).toBe('#read-end-float-1');
    });
  });

  it('a refused figure or reading is spoken in the list too, under its name', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, twin());
      const spoken = page.locator('section[aria-labelledby="the-engine"] > [role="status"]');
      await page.locator('#figure-stroke').fill('0');
      await expect.poll(() => spoken.textContent()).toMatch(/^Stroke: .*0/);
      await page.locator('#figure-stroke').fill('51');
      await expect.poll(() => spoken.textContent()).toBe('');
      await page.locator('#figure-firing-order').fill('1-1');
      await expect.poll(() => spoken.textContent()).toMatch(/^Firing order: /);
      await page.locator('#step-end-float > summary').click();
      await page.locator('#box-found-end-float-1').fill('-3');
      await expect.poll(() => spoken.textContent()).toContain('“-3”');
    });
  });

  it('a new engine begins at its name', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      const name = page.getByRole('textbox', { name: 'Name', exact: true });
      for (const called of ['My engine', 'My engine (2)']) {
        const isShut = (await page.locator('.engine-bar details:not([open])').count()) > 0;
        if (isShut) await page.locator('.engine-bar details > summary').press('Enter');
        await button(page, 'New engine').press('Enter');
        await expect.poll(() => name.inputValue()).toBe(called);
        await expect.poll(() => name.evaluate((box) => box === document.activeElement)).toBe(true);
      }
    });
  });
});
