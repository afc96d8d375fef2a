import { text as textOf } from 'node:stream/consumers';
import { buffer } from 'node:stream/consumers';
import type { Page } from 'playwright-core';
import { loadImage } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { LIMITS, type Engine } from '../../calculators/sheet/model.ts';
import { expectAccessible } from './support/axe.ts';
import { CLIPBOARD, copied } from './support/clipboard.ts';
import { phone, visit } from './support/page.ts';
import { readPdf } from './support/pdf.ts';
import { box, button, expectKept, keepEngines, kept, ready } from './support/sheet.ts';

const path = 'sheet/';
const demo = { ...demoSheet(), id: 'e-1' };

const open = async (page: Page, name: string | RegExp): Promise<void> =>
  page.locator('details.act > summary').filter({ hasText: name }).first().click();

const download = async (page: Page, name: string | RegExp) => {
  const [got] = await Promise.all([page.waitForEvent('download'), button(page, name).click()]);
  return got;
};

describe('the log', () => {
  it('of a step: each reading with its day and kind, and a plot of them by cylinder', async () => {
    await visit({ path, viewport: phone }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const gap = page.locator('#step-gap');
      await gap.locator('> summary').click();
      await gap.getByText('All readings of this step').click();
      const entries = gap.locator('.log-entries li');
      await expect.poll(() => entries.count()).toBe(6);
      await expect
        .poll(() => entries.first().innerText())
        .toMatch(/Set 3: 0\.36 mm.*28 Feb 2026, check/s);
      await expect
        .poll(() => entries.last().innerText())
        .toMatch(/Set 1: 0\.39 mm.*21 Feb 2026, as found/s);
      expect(await gap.locator('svg.plot').getAttribute('aria-label')).toContain(
        'Set 1: 0.39, 0.34',
      );
      await expectAccessible(page);
      await gap.getByRole('button', { name: 'Take out Set 1: 0.34 mm' }).click();
      await expect.poll(() => box(page, 'left', 'gap', 1).inputValue()).toBe('');
      await expect.poll(() => entries.count()).toBe(5);
    });
  });

  it('takes runs and notes with their day; a draft outlives a reload; saved as CSV', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await open(page, 'The whole log');
      await page.getByLabel('Ran for').fill('20 min');
      await button(page, 'Enter the run').click();
      await expect
        .poll(() => page.locator('output[name="hours-run"]').innerText())
        .toContain('0.33 h');
      await page.getByLabel('Note for the log').fill('It runs, and drips at');
      await page.reload();
      await ready(page);
      await open(page, 'The whole log');
      await expect
        .poll(() => page.getByLabel('Note for the log').inputValue())
        .toBe('It runs, and drips at');
      await button(page, 'Enter the note').click();
      await expectKept(page, '"text":"It runs, and drips at"');
      const csv = await download(page, 'Save the log as CSV');
      expect(csv.suggestedFilename()).toMatch(/^engine-log-demo-club-triple-\d{4}-\d\d-\d\d\.csv$/);
      const lines = (await textOf(await csv.createReadStream())).trim().split('\r\n');
      expect(lines).toHaveLength(demo.log.length + 3);
      expect(lines.at(-1)).toContain('drips');
    });
  });

  it('takes hours as a sum, and refuses what is none', async () => {
    await visit({ path, viewport: phone, hasTouch: true, isMobile: true }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const runs = () => page.locator('output[name="hours-run"]').innerText();
      await open(page, 'The whole log');
      const hours = page.getByLabel('Ran for');
      await hours.tap();
      await page.getByRole('toolbar', { name: 'More keys' }).waitFor();
      await hours.fill('1.5 h + 20 min + 10 min');
      await expect.poll(() => page.locator('#log-hours-problem').count()).toBe(0);
      await button(page, 'Enter the run').click();
      await expect.poll(runs).toContain('2 h in all');
      await expect.poll(() => hours.inputValue()).toBe('');
      await hours.fill('2+x');
      await page.locator('#log-hours-problem').waitFor();
      await button(page, 'Enter the run').click();
      await expect.poll(() => hours.inputValue()).toBe('2+x');
      await expect.poll(runs).toContain('2 h in all');
    });
  });

  it('stands in the order of the work, though the clock of the phone was set back', async () => {
    await visit({ path }, async (page) => {
      await page.clock.setFixedTime('2026-03-10T12:00:00');
      await page.reload();
      await ready(page);
      await keepEngines(page, { ...demo, log: [], readings: {} });
      await page.locator('#step-gap > summary').click();
      await box(page, 'found', 'gap', 1).fill('0.31');
      await page.clock.setFixedTime('2026-03-01T12:00:00');
      await page.reload();
      await ready(page);
      const gap = page.locator('#step-gap');
      if ((await gap.getAttribute('open')) === null) await gap.locator('> summary').click();
      await box(page, 'left', 'gap', 1).fill('0.36');
      await expectKept(page, '"left":[0.36]');
      const { log, clock } = (JSON.parse(await kept(page)) as { sheet: { engines: Engine[] } })
        .sheet.engines[0]!;
      expect(log).toMatchObject([
        { kind: 'found', value: 0.31, on: '2026-03-10' },
        { kind: 'change', value: 0.36, on: '2026-03-01' },
      ]);
      expect(log[1]!.clock).toBeGreaterThan(log[0]!.clock);
      expect(clock).toBeGreaterThanOrEqual(log[1]!.clock);
    });
  });

  it('is printed after the sheet, where that is asked for', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const { pages } = await readPdf(await page.pdf({ format: 'A4' }));
      await page.getByLabel('Print the log after it').check();
      const paper = await readPdf(await page.pdf({ format: 'A4' }));
      expect(paper.pages).toBeGreaterThan(pages);
      expect(paper.text).toContain('Log of Demo: club triple');
      expect(paper.text).toContain('28 Feb 2026');
    });
  });

  it('keeps the ticks of the first start with their day', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await page.goto(page.url().replace('sheet/', 'first-start/'));
      const first = page.locator('.check input').first();
      await expect
        .poll(() => page.locator('[data-list-state]').innerText())
        .toContain('club triple');
      await first.check();
      await expectKept(page, '"kind":"ticked"');
      await page.reload();
      await expect.poll(() => first.isChecked()).toBe(true);
      await button(page, 'Begin the list anew').click();
      await expect.poll(() => first.isChecked()).toBe(false);
      await expectKept(page, '"kind":"anew"');
    });
  });

  it('tells whose figures stand beside the first start, how much is open, and what another tab ticks', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await page.goto(page.url().replace('sheet/', 'first-start/'));
      const beside = page.locator('[data-list-figures]');
      await expect.poll(() => beside.textContent()).toContain(`“${demo.name}” (invented):`);
      await expect
        .poll(() => page.locator('[data-list-against]').textContent())
        .toMatch(/In all \d+ steps of the sheet are not done before the first fire\.$/);
      const other = await page.context().newPage();
      await other.goto(page.url());
      await other.locator('.check input').nth(1).check();
      await expectKept(other, '"kind":"ticked"');
      await expect.poll(() => page.locator('.check input').nth(1).isChecked()).toBe(true);
      await other.close();
    });
  });
});

it('a log that is nearly full says what will go, and that a file keeps it', async () => {
  const note = { kind: 'note', text: 'x', on: '2026-03-01' } as const;
  const notes = Array.from({ length: LIMITS.log - demo.log.length - 5 }, (_, i) => ({
    ...note,
    clock: demo.clock + i,
  }));
  await visit({ path, viewport: phone }, async (page) => {
    await ready(page);
    await keepEngines(page, { ...demo, log: [...demo.log, ...notes] });
    const care = page.locator('.safe .care');
    await expect.poll(() => care.innerText()).toContain('has room for 5 more');
    await expect.poll(() => care.innerText()).toContain('Save it to a file');
    await download(page, 'Save to a file');
    await expect.poll(() => care.innerText()).toMatch(/The file of .* holds those that go next/);
  });
});

describe('files and engines', () => {
  it('a file is named by engine and day; it reminds of saving, and is still', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, { ...demo, invented: false, name: 'Béla’s twin' });
      const safe = page.locator('.safe');
      await expect.poll(() => safe.innerText()).toContain('Not saved to a file yet');
      await page.locator('.engine-bar > .act').evaluate((fold: HTMLDetailsElement) => {
        fold.open = true;
      });
      const under = async (part: ReturnType<typeof page.locator>): Promise<number> => {
        const { y, height } = (await part.boundingBox())!;
        return y + height;
      };
      const buttons = page.locator('.engine-bar > .act .bar-buttons');
      expect((await safe.boundingBox())!.y - (await under(buttons))).toBeGreaterThan(6);
      const file = await download(page, 'Time to save');
      expect(file.suggestedFilename()).toMatch(/^engine-sheet-béla-s-twin-\d{4}-\d\d-\d\d\.json$/);
      await expect.poll(() => safe.innerText()).toContain('Last saved to a file on');
      expect(await button(page, 'Time to save').count()).toBe(0);
    });
  });

  it('a duplicate, the archive and back', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await button(page, 'Duplicate').click();
      await expect
        .poll(() => page.getByLabel('Name', { exact: true }).inputValue())
        .toBe('Demo: club triple (2)');
      await button(page, 'Put into the archive').click();
      await expect
        .poll(() => page.getByLabel('Name', { exact: true }).inputValue())
        .toBe('Demo: club triple');
      await expectKept(page, '"archived":true');
      await open(page, 'Archive (1)');
      await button(page, /^Take .* out of the archive$/).click();
      await expect
        .poll(() => page.getByLabel('Name', { exact: true }).inputValue())
        .toBe('Demo: club triple (2)');
      expect(await kept(page)).not.toContain('"archived":true');
    });
  });

  it('says whether the browser promised to keep it', async () => {
    await visit({ path }, async (page) => {
      await page.addInitScript(() => {
        StorageManager.prototype.persisted = () => Promise.resolve(false);
        StorageManager.prototype.persist = () => Promise.resolve(true);
      });
      await page.reload();
      await ready(page);
      await keepEngines(page, demo);
      await button(page, 'Ask the browser to keep it').click();
      await expect.poll(() => page.locator('.safe').innerText()).toContain('until you remove it');
    });
  });

  it('a picture of the summary, and the texts for a forum', async () => {
    await visit({ path, permissions: CLIPBOARD }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const file = await download(page, 'Save as a picture');
      expect(file.suggestedFilename()).toMatch(/^engine-sheet-demo-club-triple-.*\.png$/);
      const picture = await loadImage(await buffer(await file.createReadStream()));
      expect(picture.width).toBeGreaterThan(700);
      expect(picture.height).toBeGreaterThan(300);
      for (const [form, words] of [
        ['Markdown', '| Set the points gap (each set) | 0.35 mm ± 0.03 mm | 0.39 mm → 0.34 mm |'],
        ['BBCode', '[code]'],
      ] as const) {
        await button(page, `Copy as ${form}`).click();
        await expect.poll(() => copied(page)).toContain(words);
      }
    });
  });
});
