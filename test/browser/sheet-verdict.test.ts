import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { setDone, setEntry } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { steps } from '../../calculators/sheet/steps.ts';
import { figured } from '../sheet/job.ts';
import { expectAccessible } from './support/axe.ts';
import { phone, visit } from './support/page.ts';
import { box, button, expectKept, keepEngines, kept, ready } from './support/sheet.ts';

const path = 'sheet/';
const oneBox = (page: Page) => page.locator('#one-box');
const verdict = (page: Page) => page.locator('.one-verdict');

async function goTo(page: Page, fragment: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, fragment);
  await page.locator(`.one[data-spot="${fragment}"]`).waitFor();
}

/** The sheet of one engine, at one of its readings. */
async function reading(page: Page, engine: Engine, fragment: string): Promise<void> {
  await ready(page);
  await keepEngines(page, engine);
  await goTo(page, fragment);
}

const twin = (): Engine => figured({ cylinders: 2, 'set-2': 180, condensers: 2, 'fed-coils': 2 });
const single = (): Engine => figured({ cylinders: 1, condensers: 1, 'fed-coils': 1 });

describe('a reading that is refused', () => {
  it('leaves the last good one, in the view, after a reload and when the box is emptied', async () => {
    await visit({ path }, async (page) => {
      const found = setEntry(twin(), 'gap', 'found', 0, 0.31);
      await reading(page, setEntry(found, 'gap', 'left', 0, 0.39), 'read-gap-1');
      await button(page, 'Read it again').click();
      await oneBox(page).pressSequentially('9x');
      const last = /^The last good reading, 0\.39 mm, stands\.$/;
      await expect.poll(() => verdict(page).textContent()).toMatch(last);
      await expectKept(page, '9x');
      await page.reload();
      await expect.poll(() => verdict(page).textContent()).toMatch(last);
      await oneBox(page).fill('');
      await button(page, 'It reads 0.39 mm as before').click();
      await expect.poll(() => verdict(page).textContent()).toMatch(/^✓ Pass/);
      expect(await kept(page)).toContain('"left":[0.39]');
      expect(await kept(page)).not.toContain('9x');
    });
  });

  it('takes back what was asked for, over a reading as found too, until it can be read', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      const one = setEntry(twin(), 'timing', 'found', 0, 2.9);
      await keepEngines(page, setEntry(one, 'timing', 'found', 1, 2.2));
      const card = page.locator('#step-timing');
      if ((await card.getAttribute('open')) === null) await card.locator('> summary').click();
      const advice = card.locator('.remarks');
      await expect.poll(() => advice.count()).toBeGreaterThan(0);
      await box(page, 'found', 'timing', 1).fill('2..9');
      await expect.poll(() => advice.count()).toBe(0);
      const first = card.locator('.verdict').first();
      await expect
        .poll(() => first.textContent())
        .toContain('The last good reading, 2.9 mm, stands.');
      expect(await first.textContent()).not.toMatch(/Pass|correct|early/);
      await box(page, 'found', 'timing', 1).fill('2.8');
      await expect.poll(() => advice.count()).toBeGreaterThan(0);
    });
  });

  it('and one of the list that is emptied: what stands comes back as it is left', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      const found = setEntry(twin(), 'gap', 'found', 0, 0.31);
      await keepEngines(page, setEntry(found, 'gap', 'left', 0, 0.39));
      const card = page.locator('#step-gap');
      if ((await card.getAttribute('open')) === null) await card.locator('> summary').click();
      const left = box(page, 'left', 'gap', 1);
      await left.fill('9x');
      await page.locator('#box-left-gap-1-problem').waitFor();
      await expect
        .poll(() => card.locator('.verdict').first().textContent())
        .toMatch(/^\s*The last good reading, 0\.39 mm, stands\.\s/);
      await left.fill('');
      await expect.poll(() => left.inputValue()).toBe('');
      await left.blur();
      await expect.poll(() => left.inputValue()).toBe('0.39');
    });
  });
});

it('the text in hand is never rewritten: inches in a box of thou, key by key', async () => {
  await visit({ path }, async (page) => {
    await ready(page);
    await keepEngines(page, setEntry(twin(), 'plug', 'found', 1, 0.6));
    await page.locator('.lengths input[value="in"]').check();
    const card = page.locator('#step-plug');
    if ((await card.getAttribute('open')) === null) await card.locator('> summary').click();
    for (const typed of ['0.0245', '.020', '0.6mm']) {
      const listed = box(page, 'left', 'plug', 2);
      await listed.fill('');
      await listed.pressSequentially(typed);
      await expect.poll(() => listed.inputValue()).toBe(typed);
    }
    await goTo(page, 'read-plug-1');
    for (const typed of ['0.0245', '.020', '0.6mm']) {
      await oneBox(page).fill('');
      await oneBox(page).pressSequentially(typed);
      await expect.poll(() => oneBox(page).inputValue()).toBe(typed);
    }
  });
});

it('Enter on a reading that is out stays with its verdict; on one that passes it goes on', async () => {
  await visit({ path }, async (page) => {
    await reading(page, twin(), 'read-gap-1');
    await oneBox(page).pressSequentially('0.31');
    await oneBox(page).press('Enter');
    const focused = () => page.evaluate(() => document.activeElement?.className);
    await expect.poll(focused).toContain('one-verdict');
    await expect.poll(() => new URL(page.url()).hash).toBe('#read-gap-1');
    await oneBox(page).fill('0.4');
    await oneBox(page).press('Enter');
    await expect.poll(() => new URL(page.url()).hash).toBe('#read-gap-2');
  });
});

it('what was read before the plate was turned is said to count for nothing', async () => {
  await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
    const found = [1.6, 2.6].reduce((so, mm, i) => setEntry(so, 'timing', 'found', i, mm), twin());
    await reading(page, found, 'read-timing-2');
    // The plate comes before the set, whatever the set itself is out by.
    await expect
      .poll(() => verdict(page).textContent())
      .toMatch(/^✕ To correct: First turn the plate/);
    const said = await page.locator('.one p:not(.spoken), .one li').allTextContents();
    expect(said.filter((one) => /\bturn the plate .* by [\d.]+° of crank/i.test(one))).toHaveLength(
      1,
    );
    const turned = setEntry(found, 'timing', 'left', 0, 2.2, { kind: 'change' });
    await keepEngines(page, turned);
    await goTo(page, 'read-timing-2');
    await expect
      .poll(() => verdict(page).textContent())
      .toMatch(/^not judged: 2\.6 mm was read before/);
    expect(await page.getByLabel('After a change').isChecked()).toBe(true);
    await oneBox(page).fill('2.2');
    await expect.poll(() => verdict(page).textContent()).toMatch(/^✓ Pass/);
    await expectAccessible(page);
  });
});

describe('an engine whose timing is out', () => {
  const early = (): Engine => setEntry(single(), 'timing', 'found', 0, 3.4);

  it('is not to be fired: the step says why, and leads there before anything else', async () => {
    await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
      await reading(page, early(), 'read-start');
      const said = page.locator('.one .again').first();
      await expect
        .poll(() => said.textContent())
        .toMatch(/^Do not fire it yet✕ Set the timing.*early/);
      await expectAccessible(page);
      await button(page, 'Tick it all the same').click();
      await expect.poll(() => new URL(page.url()).hash).toBe('#read-timing-1');
      await goTo(page, 'read-start');
      await expect
        .poll(() => page.locator('.one-held').textContent())
        .toContain('Ticked, not done');
      expect(await page.locator('.one a.one-next').getAttribute('href')).toBe('#read-timing-1');
    });
  });

  it('nor one whose wiring nobody has proved: the step leads there', async () => {
    await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
      await reading(page, setEntry(single(), 'timing', 'found', 0, 2.2), 'read-start');
      const said = page.locator('.one .again').first();
      await expect
        .poll(() => said.textContent())
        .toMatch(
          /^Do not fire it yet✕ .*✕ Prove the wiring: Not proved yet\. Wires that nobody has measured.*✕ Mix the fuel: Not proved yet/,
        );
      await said.getByRole('link', { name: 'Prove the wiring' }).click();
      await expect.poll(() => new URL(page.url()).hash).toBe('#read-wiring-1');
    });
  });

  it('nor by the list of the first start, whose line stays untrue while it is ticked', async () => {
    await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
      await ready(page);
      await keepEngines(page, early());
      await page.goto(page.url().replace(/sheet\/.*$/, 'first-start/'));
      const said = page.locator('[data-list-against]');
      await expect.poll(() => said.textContent()).toMatch(/^Do not fire .*Set the timing.*early/);
      expect(await said.locator('a').first().getAttribute('href')).toMatch(
        /sheet\/#read-timing-1$/,
      );
      await page.locator('input[data-order]').check();
      const day = page.locator('.check:has([data-order]) [data-day]');
      await expect.poll(() => day.textContent()).toContain('ticked, but not done');
      await expectAccessible(page);
    });
  });
});

it('a tick to be given again is one press, beside the tick', async () => {
  await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
    let engine = setDone(single(), 'measure', true);
    engine = setEntry(engine, 'rod-play', 'found', 0, 0.3);
    engine = setEntry(engine, 'rod-play', 'left', 0, 0.32, { kind: 'change' });
    await reading(page, engine, 'read-measure');
    const again = button(page, 'Checked again, still right');
    expect(await again.count()).toBe(1);
    await again.click();
    await expect.poll(() => new URL(page.url()).hash).not.toBe('#read-measure');
    await goTo(page, 'read-measure');
    await expect.poll(() => page.locator('.one-held').textContent()).toContain('✓ Done');
  });
});

it('the number of cylinders is asked for before the first box that there is one of for each', async () => {
  await visit({ path }, async (page) => {
    const unknown = setFigure(single(), 'cylinders', undefined);
    await reading(page, unknown, 'read-measure');
    await page.locator('#figure-cylinders').fill('2');
    await goTo(page, 'read-top-2');
    await expect.poll(() => page.locator('.one-place').textContent()).toBe('Cylinder 2 of 2');
  });
});

it('a step that an answer takes away says so, and does not go on asking', async () => {
  await visit({ path }, async (page) => {
    await reading(page, setFigure(single(), 'cylinders', undefined), 'read-plate-1');
    await page.locator('#figure-cylinders').fill('1');
    await expect.poll(() => verdict(page).textContent()).toContain(steps.plate.fallsAway!.why);
    await expect
      .poll(() => page.locator('.one-bar').textContent())
      .toContain('a step that it has not');
    expect(await oneBox(page).count()).toBe(0);
    expect(await page.locator('.one a.one-next').getAttribute('href')).toMatch(/^#read-insulation/);
  });
});

it('an entry taken out of the log by mistake is put back', async () => {
  await visit({ path }, async (page) => {
    await ready(page);
    await keepEngines(page, setEntry(twin(), 'gap', 'found', 0, 0.31));
    await page.getByText('The whole log, runs and notes').click();
    await page.getByRole('button', { name: /^Take out .*0\.31/ }).click();
    await expectKept(page, '"log":[]');
    await button(page, 'Put back').click();
    await expectKept(page, '"value":0.31');
    expect(await kept(page)).toContain('"found":[0.31]');
    expect(await button(page, 'Put back').count()).toBe(0);
  });
});

it('readings under the wrong number are exchanged with one press, and put back', async () => {
  await visit({ path }, async (page) => {
    await ready(page);
    const one = setEntry(twin(), 'squish', 'found', 0, 1.9);
    await keepEngines(page, setEntry(one, 'squish', 'found', 1, 1.4));
    const card = page.locator('#step-squish');
    if ((await card.getAttribute('open')) === null) await card.locator('> summary').click();
    await card.getByText('Written under the wrong number?').click();
    await button(page, 'Exchange cylinder 1 and cylinder 2 in this step').click();
    await expectKept(page, '"found":[1.4,1.9]');
    await expectKept(page, 'Exchanged, since they were written one under the other');
    await expect.poll(() => box(page, 'found', 'squish', 2).inputValue()).toBe('1.9');
    await expectAccessible(page);
    await button(page, 'Put back').click();
    await expectKept(page, '"found":[1.9,1.4]');
    expect(await kept(page)).not.toContain('Exchanged');
  });
});

it('a set that was moved by itself leaves the others as they were read, once that is said', async () => {
  await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
    const found = setEntry(twin(), 'timing', 'found', 0, 2.9);
    const both = setEntry(found, 'timing', 'found', 1, 2.2);
    const moved = setEntry(both, 'timing', 'left', 0, 2.21, { kind: 'change' });
    await reading(page, moved, 'read-timing-2');
    await expect.poll(() => verdict(page).textContent()).toMatch(/^not judged: 2\.2 mm/);
    expect(await page.locator('.moved a').getAttribute('href')).toBe('#read-timing-2');
    await expectAccessible(page);
    await button(page, 'Only set 1: the rest stays as read').click();
    await expect.poll(() => verdict(page).textContent()).toMatch(/^✓ Pass/);
    await expectKept(page, 'Only set 1 moved');
    expect(await page.locator('.moved').count()).toBe(0);
  });
});
