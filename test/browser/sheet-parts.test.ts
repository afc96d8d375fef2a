import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { visit } from './support/page.ts';
import { box, button, expectKept, keepEngines, kept, ready } from './support/sheet.ts';

const path = 'sheet/';
const demo: Engine = { ...demoSheet(), id: 'e-1' };
const other: Engine = { ...demoSheet(), id: 'e-2', name: 'The other one' };

const engines = async (page: Page): Promise<readonly Engine[]> =>
  (JSON.parse(await kept(page)) as { sheet: { engines: readonly Engine[] } }).sheet.engines;
const named = (page: Page) => page.getByLabel('Name', { exact: true });
const step = (page: Page, id: string) => page.locator(`#step-${id}`);

async function opened(page: Page, id: string, fold: string) {
  const card = step(page, id);
  if (!(await card.evaluate((details) => (details as HTMLDetailsElement).open)))
    await card.locator('> summary').click();
  await card.getByText(fold).click();
  return card;
}

describe('a reading box in the list', () => {
  it('that is emptied says what becomes of the reading, and has it back once it is left', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const card = step(page, 'gap');
      await card.locator('> summary').click();
      const last = box(page, 'left', 'gap', 1);
      const stood = await last.inputValue();
      expect(stood).not.toBe('');
      const note = card.getByText('What was read stays, and comes back here.');
      await expect.poll(() => note.count()).toBe(0);
      await last.fill('');
      await expect.poll(() => note.count()).toBe(1);
      await expect.poll(() => last.inputValue()).toBe('');
      await last.blur();
      await expect.poll(() => last.inputValue()).toBe(stood);
      await expect.poll(() => note.count()).toBe(0);
    });
  });
});

it('a reading of the one box is written as it was read, though that is said after it was typed', async () => {
  await visit({ path }, async (page) => {
    await ready(page);
    await keepEngines(page, demo);
    await page.evaluate(() => {
      location.hash = 'read-gap-2';
    });
    await button(page, 'Read it again').click();
    await page.locator('#one-box').fill('0.35');
    const last = async () => (await engines(page))[0]!.log.at(-1);
    for (const [words, kind] of [
      ['After a change', 'change'],
      ['Only a check', 'check'],
      ['After a change', 'change'],
    ] as const) {
      await page.getByText(words, { exact: true }).click();
      await expect.poll(last).toMatchObject({ step: 'gap', cylinder: 2, value: 0.35, kind });
    }
  });
});

describe('what was done in a step and can be put back', () => {
  const back = (card: ReturnType<typeof step>) =>
    card.getByRole('button', { name: 'Put back', exact: true });

  it('an exchange, until something else is written', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const card = await opened(page, 'gap', 'Written under the wrong number?');
      await card.getByRole('button', { name: /^Exchange set 1 and set 2 in this step$/ }).click();
      await expect.poll(() => back(card).count()).toBe(1);
      await box(page, 'left', 'gap', 3).fill('0.41');
      await expect.poll(() => back(card).count()).toBe(0);
      await expectKept(page, 'Exchanged, since they were written one under the other');
    });
  });

  it('an exchange of two numbers in every step that counts alike', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const before = (await engines(page))[0]!.log.length;
      const card = await opened(page, 'gap', 'Written under the wrong number?');
      await card.locator('select').last().selectOption('2');
      await card.getByRole('button', { name: 'In every step by set' }).click();
      await expect
        .poll(() => card.locator('.exchange [role="status"]').innerText())
        .toContain('The readings of set 1 and set 3 are exchanged');
      const { log } = (await engines(page))[0]!;
      expect(log).toHaveLength(before + 1);
      expect(log.at(-1)).toMatchObject({ kind: 'note' });
      expect((log.at(-1) as { text: string }).text.match(/“/g)!.length).toBeGreaterThan(1);
    });
  });

  it('a reading taken out of the log, until something else is written', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const card = await opened(page, 'gap', 'All readings of this step');
      await card.getByRole('button', { name: 'Take out Set 1: 0.34 mm' }).click();
      await expect.poll(() => back(card).count()).toBe(1);
      await back(card).click();
      await expect.poll(() => box(page, 'left', 'gap', 1).inputValue()).toBe('0.34');
      await card.getByRole('button', { name: 'Take out Set 1: 0.34 mm' }).click();
      await expect.poll(() => back(card).count()).toBe(1);
      await box(page, 'left', 'gap', 3).fill('0.41');
      await expect.poll(() => back(card).count()).toBe(0);
    });
  });
});

it('a figure that is refused is seen, though its heading was shut when the page was loaded again', async () => {
  await visit({ path }, async (page) => {
    await ready(page);
    await keepEngines(page, { ...demo, unread: { 'figure:gap': '0.4x' } });
    await expect
      .poll(() => page.locator('#figure-gap-problem').innerText())
      .toContain('“x” is not a unit');
    const points = page.locator('.sheet-group', { has: page.locator('#figure-gap') });
    await points.locator('> summary').click();
    await expect.poll(() => page.locator('#figure-gap').isVisible()).toBe(false);
    await points.locator('> summary').click();
    await page.locator('#figure-gap').fill('0.4');
    await expect.poll(() => page.locator('#figure-gap').isVisible()).toBe(true);
  });
});

it('a sum stands as what it comes to, though its reader had not come when it was typed', async () => {
  await visit({ path }, async (page) => {
    await ready(page);
    await keepEngines(page, demo);
    await page.locator('#figure-stroke').fill('50.5 + 0.25');
    await expectKept(page, '"stroke":50.75');
    await page.locator('#figure-rod').focus();
    await expect.poll(() => page.locator('#figure-stroke').inputValue()).toBe('50.75');
  });
});

describe('the engines', () => {
  it('are switched between, each with its own name and place', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo, other);
      await expect.poll(() => named(page).inputValue()).toBe(demo.name);
      await page.evaluate(() => {
        location.hash = 'step-gap';
      });
      await page.getByLabel('Engine in use').selectOption('e-2');
      await expect.poll(() => named(page).inputValue()).toBe('The other one');
      await expect.poll(() => new URL(page.url()).hash).toBe('');
      await named(page).fill('Named anew');
      await expect
        .poll(async () => (await engines(page)).map(({ name }) => name))
        .toEqual([demo.name, 'Named anew']);
      await page.getByLabel('Engine in use').selectOption('e-1');
      await expect.poll(() => named(page).inputValue()).toBe(demo.name);
    });
  });

  it('one that was taken out is said to be so, leaves the other in use, and is put back once', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo, other);
      await button(page, 'Take out of the list').click();
      await expect.poll(() => named(page).inputValue()).toBe('The other one');
      const said = page.locator('.engine-bar .share-state');
      await expect.poll(() => said.innerText()).toBe(`${demo.name} was taken out of the list.`);
      expect(await engines(page)).toHaveLength(1);
      await button(page, `Put ${demo.name} back`).click();
      await expect.poll(() => said.innerText()).toBe(`${demo.name} is back.`);
      await expect.poll(() => button(page, `Put ${demo.name} back`).count()).toBe(0);
      expect((await engines(page)).map(({ name }) => name).sort()).toEqual(
        [demo.name, 'The other one'].sort(),
      );
      await expect.poll(() => named(page).inputValue()).toBe(demo.name);
    });
  });
});

it('a sheet whose script did not come says so, and offers to try again', async () => {
  await visit({ path, expected: [/ERR_FAILED/], tolerated: [/Failed to fetch/] }, async (page) => {
    await page.route(/mount\.[^/]*\.js/, (route) => route.abort());
    await page.reload();
    await page.mouse.wheel(0, 200);
    await page.getByRole('button', { name: 'Try again' }).waitFor();
    await expect.poll(() => page.locator('[data-sheet]').getAttribute('aria-busy')).toBeNull();
  });
});
