import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { order } from '../../calculators/sheet/steps.ts';
import { figureGroups, type FigureKey } from '../../calculators/sheet/figures.ts';
import { expectAccessible } from './support/axe.ts';
import { keyboard, touch, type Hands } from './support/hands.ts';
import { phone, visit } from './support/page.ts';
import { readPdf } from './support/pdf.ts';
import { box, button, figure, ready, state } from './support/sheet.ts';
import { figures, readings } from './support/twin.ts';

async function enterFigures(page: Page, { press, type }: Hands): Promise<void> {
  for (const { heading, keys } of figureGroups) {
    const group = page.locator('details.sheet-group').filter({
      has: page.getByText(heading, { exact: true }),
    });
    if ((await group.getAttribute('open')) === null) await press(group.locator('> summary'));
    for (const key of keys) {
      const text = figures[key];
      if (text !== undefined) await type(figure(page, key), text);
    }
    if (heading === 'The engine') await type(page.locator('#figure-firing-order'), '1 2');
  }
}

/** Types figures into a group of the sheet, opening it first. */
async function enter(
  page: Page,
  heading: string,
  texts: Partial<Record<FigureKey, string>>,
): Promise<void> {
  const group = page
    .locator('details.sheet-group')
    .filter({ has: page.getByText(heading, { exact: true }) });
  if ((await group.getAttribute('open')) === null) await group.locator('> summary').click();
  for (const [key, text] of Object.entries(texts)) await figure(page, key).fill(text);
}

/** The steps that this engine has, as its figures say: the piston opens its inlets. */
const job = order.filter((id) => id !== 'reeds');

async function workDown(page: Page, { press, type }: Hands): Promise<void> {
  for (const id of job) {
    const card = page.locator(`#step-${id}`);
    if ((await card.getAttribute('open')) === null) await press(card.locator('> summary'));
    const pair = readings[id];
    if (pair) {
      await type(box(page, 'found', id, 1), pair[0]);
      if (pair[1] !== undefined) await type(box(page, 'found', id, 2), pair[1]);
    } else await press(card.locator('input[type="checkbox"]'));
    await expect.poll(() => state(page, id).textContent(), { message: id }).toContain('Done');
  }
}

/** From an empty browser to the printed sheet. */
async function wholeJob(page: Page, hands: Hands): Promise<void> {
  await ready(page);
  await hands.press(button(page, 'New engine'));
  await hands.type(page.getByLabel('Name', { exact: true }), 'Bench twin');
  await enterFigures(page, hands);
  await workDown(page, hands);
  const said = page.locator('.order-state');
  await expect
    .poll(() => said.textContent())
    .toContain(`${String(job.length)} of ${String(job.length)}`);
  expect(await page.locator('.left-out li').allTextContents()).toEqual([
    expect.stringContaining('Try the reeds: no reeds are entered.'),
  ]);
  await expect.poll(() => said.textContent()).toContain('The sheet is complete.');
  await expectAccessible(page);

  // The browser's own print dialogue cannot be seen here; that it is asked for can.
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-printed', 'yes');
  });
  await hands.press(button(page, 'Print the sheet'));
  await expect.poll(() => page.getAttribute('body', 'data-printed')).toBe('yes');

  await page.reload();
  await ready(page);
  await expect.poll(() => page.getByLabel('Name', { exact: true }).inputValue()).toBe('Bench twin');
  expect(await page.locator('.task-pass').count()).toBe(job.length);
}

/** The finished job on paper. */
async function onPaper(page: Page): Promise<void> {
  const paper = await readPdf(await page.pdf({ format: 'A4' }));
  expect(paper.pages).toBe(2);
  for (const text of ['Bench twin', 'Firing order: 1-2', '0.41', '0.38', '179.6', '25 : 1']) {
    expect(paper.text).toContain(text);
  }
  expect(paper.text.match(/ Done /g)?.length).toBeGreaterThanOrEqual(job.length - 1);
}

describe('the whole job, from an empty browser to the printed sheet', () => {
  it('by keyboard alone', { timeout: 600_000 }, async () => {
    await visit({ path: 'sheet/' }, async (page) => {
      await wholeJob(page, keyboard(page));
      // Paper has one width: it does not hang on the hands or the screen.
      await onPaper(page);
    });
  });

  it('by touch on a phone', { timeout: 600_000 }, async () => {
    await visit(
      { path: 'sheet/', viewport: phone, hasTouch: true, isMobile: true },
      async (page) => {
        await wholeJob(page, touch(page));
        // The field that holds a list has room for its name beside its box.
        const name = page.locator('.sheet-fields .field-list .field-name');
        expect((await name.boundingBox())!.width).toBeGreaterThan(80);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide).toBeLessThanOrEqual(phone.width);
      },
    );
  });

  it('a gap changed afterwards sends the timing, and the start, to be checked again', async () => {
    await visit({ path: 'sheet/' }, async (page) => {
      await ready(page);
      await button(page, 'Try the demo').click();
      await page.locator('#step-timing > summary').waitFor();
      await expect.poll(() => state(page, 'timing').textContent()).toContain('Check again');
      const timing = page.locator('#step-timing');
      if ((await timing.getAttribute('open')) === null) await timing.locator('> summary').click();
      await expect
        .poll(() => timing.locator('.again').textContent())
        .toContain('Set the points gap');
      await button(page, 'Checked again, still right').click();
      await expect.poll(() => state(page, 'timing').textContent()).toContain('Done');
      await page.locator('#step-gap > summary').click();
      await box(page, 'left', 'gap', 2).fill('0.42');
      await expect.poll(() => state(page, 'timing').textContent()).toContain('Check again');
    });
  });

  it('what was out asks for nothing to be cut once a figure that it rests on has changed', async () => {
    await visit({ path: 'sheet/' }, async (page) => {
      await ready(page);
      await button(page, 'Try the demo').click();
      const squish = page.locator('#step-squish');
      await squish.locator('> summary').click();
      const said = (): Promise<string | null> => squish.locator('.boxes').textContent();
      for (const i of [1, 2, 3]) await box(page, 'left', 'squish', i).fill('2');
      await expect.poll(said).toContain('faced off');
      await figure(page, 'stroke').fill('52');
      await expect.poll(() => squish.textContent()).toContain('To be checked again');
      await expect
        .poll(said)
        .toContain('Out when read. Read it again before anything is corrected');
      expect(await squish.textContent()).not.toContain('faced off by');
      expect(await said()).not.toContain('faced off');
    });
  });

  it('a barrel that was lowered sends the squish to be measured anew, and says what is left', async () => {
    await visit({ path: 'sheet/' }, async (page) => {
      await ready(page);
      await button(page, 'Try the demo').click();
      await enter(page, 'Head, squish and ports', {
        'exhaust-opens': '97',
        'exhaust-tolerance': '1',
      });
      const exhaust = page.locator('#step-exhaust');
      await exhaust.locator('> summary').click();
      await box(page, 'found', 'exhaust', 1).fill('93');
      await expect.poll(() => exhaust.textContent()).toContain('the piston strikes the head');
      await expect.poll(() => exhaust.textContent()).toContain('lower the barrel by 1.73 mm');
      await box(page, 'left', 'exhaust', 1).fill('97');
      await expect.poll(() => state(page, 'squish').textContent()).toContain('Check again');
      await expect.poll(() => exhaust.textContent()).toContain('What it asked for, as found');
      const squish = page.locator('#step-squish');
      if ((await squish.getAttribute('open')) === null) await squish.locator('> summary').click();
      const said = (): Promise<string | null> => squish.textContent();
      await expect.poll(said).toContain('Passed when read');
      await expect.poll(said).toMatch(/the squish is now about −?0\.\d+ mm/);
      const again = squish.locator('.again').getByRole('button');
      await expect.poll(() => again.count()).toBe(0);
      for (const i of [1, 2, 3]) await box(page, 'left', 'squish', i).fill('1.4');
      await expect.poll(() => state(page, 'squish').textContent()).toContain('Done');
      // Measured once more after the next move, it may read what it read before.
      await box(page, 'left', 'exhaust', 1).fill('96.5');
      await expect.poll(() => again.textContent()).toContain('reads the same');
      await again.click();
      await expect.poll(() => state(page, 'squish').textContent()).toContain('Done');
    });
  });

  it('sets are judged where they belong: asked for, or said to stand evenly', async () => {
    await visit({ path: 'sheet/' }, async (page) => {
      await ready(page);
      await button(page, 'New engine').click();
      await enter(page, 'The engine', { cylinders: '2' });
      await enter(page, 'Breaker plate and timing', { 'plate-tolerance': '0.8' });
      await expect.poll(() => figure(page, 'set-3').count()).toBe(0);
      const plate = page.locator('#step-plate');
      await plate.locator('> summary').click();
      await box(page, 'found', 'plate', 1).fill('270.2');
      await box(page, 'found', 'plate', 2).fill('89.8');
      await expect.poll(() => plate.textContent()).not.toContain('Pass');
      await button(page, 'Evenly, in turn: enter these').click();
      await expect.poll(() => plate.textContent()).toContain('To correct');
      await enter(page, 'Breaker plate and timing', { 'set-2': '90' });
      await expect.poll(() => state(page, 'plate').textContent()).toContain('Done');
      await expect.poll(() => plate.textContent()).toContain('Judged by best-fit places');
    });
  });
});
