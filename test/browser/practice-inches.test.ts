import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { isCrankTask, taskNames, type TaskName } from '../../calculators/practice/tasks.ts';
import { millimetresLeft } from '../calculators/metric-left.ts';
import { phone, visit } from './support/page.ts';

const KEY = 'gudgeon.lengths';
const MM_PER_INCH = 25.4;

const open = (task: TaskName, done: string, body: (page: Page) => Promise<void>): Promise<void> =>
  visit({ path: `practice/?engine=7&task=${task}&done=${done}`, viewport: phone }, async (page) => {
    await page.evaluate((key) => localStorage.setItem(key, 'in'), KEY);
    await page.reload();
    await page.locator('[data-practice][data-ready]').waitFor();
    await body(page);
  });

const bench = (page: Page): Promise<string> =>
  page.locator('[data-practice]').evaluate((place) => place.outerHTML);
const cutTables = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      [...document.querySelectorAll('.table-wrap')].filter(
        (frame) => frame.scrollWidth > frame.clientWidth,
      ).length,
  );

/** Units of the first table and of what its lengths have cost; how near figures come to their names, px. */
const reckoned = (page: Page) =>
  page.evaluate(() => {
    const table = document.querySelector('.reckoned')!;
    const edge = (cell: Element, side: 'left' | 'right'): number => {
      const words = document.createRange();
      words.selectNodeContents(cell);
      return words.getBoundingClientRect()[side];
    };
    return {
      over: [...table.querySelectorAll('.over')].map(({ textContent }) => textContent),
      costs: [...document.querySelectorAll('.costs b')].map(
        ({ textContent }) => /(mm|in|thou)\.$/.exec(textContent)?.[1] ?? 'degrees',
      ),
      names: [...table.querySelectorAll('thead th:not(:first-child)')].map(
        (name) => (name as HTMLElement).innerText,
      ),
      apart: [...table.querySelectorAll('tbody tr')].map(
        (row) =>
          edge((row as HTMLTableRowElement).cells[1]!, 'left') -
          edge((row as HTMLTableRowElement).cells[0]!, 'right'),
      ),
    };
  });

describe.each(taskNames)('practice of %s, in inches', (task) => {
  it('has no length in millimetres, neither at work nor in the reckoning', async () => {
    const done = isCrankTask(task) ? 'put:indicator,turn:60,note' : '';
    await open(task, done, async (page) => {
      await expect.poll(async () => millimetresLeft(await bench(page))).toEqual([]);
      if (task === 'reading') await page.locator('.answers input').first().check();
      await page.getByRole('button', { name: 'Show the truth' }).click();
      await page.locator('[data-part="reckoning"]').waitFor();
      await expect.poll(async () => millimetresLeft(await bench(page))).toEqual([]);
      await expect.poll(() => cutTables(page)).toBe(0);
      const { over, costs, names, apart } = await reckoned(page);
      expect(over).toHaveLength(3);
      if (['reading', 'slides', 'float'].includes(task))
        expect(new Set([...over, ...costs])).toHaveLength(1);
      expect(names.map((name) => name.split('\n').length)).toEqual([2, 2, 2]);
      expect(Math.min(...apart)).toBeGreaterThan(6);
    });
  });
});

it('the indicator shows the same travel in inches, and its hand goes round once for a tenth', async () => {
  await visit(
    { path: 'practice/?engine=7&task=figure&done=put:indicator,turn:60', viewport: phone },
    async (page) => {
      await page.locator('[data-practice][data-ready]').waitFor();
      const words = (): Promise<string> => page.locator('.readout dd').first().innerText();
      const hand = async (): Promise<number> =>
        Number(
          /rotate\(([-\d.]+)\)/.exec(
            (await page.locator('.dial-hand').getAttribute('transform'))!,
          )![1],
        );
      await expect.poll(words).toMatch(/^−?[\d.]+ mm$/);
      const inMm = Number((await words()).replace('−', '-').replace(' mm', ''));
      await page.evaluate((key) => localStorage.setItem(key, 'in'), KEY);
      await page.reload();
      await expect.poll(words).toMatch(/^−?[\d.]+ in$/);
      const inInches = Number((await words()).replace('−', '-').replace(' in', ''));
      expect(Math.abs(inInches - inMm / MM_PER_INCH)).toBeLessThan(0.0001);
      const turns = (((await hand()) / 360) % 1) + 1;
      expect(Math.abs((turns % 1) - ((((inInches / 0.1) % 1) + 1) % 1))).toBeLessThan(0.01);
    },
  );
});

it('the choice of lengths on the bench is the reader’s everywhere, and a ± in inches is one', async () => {
  await visit({ path: 'practice/?engine=7&task=float' }, async (page) => {
    await page.locator('[data-practice][data-ready]').waitFor();
    await page.locator('.chosen > summary').click();
    const box = page.locator('input[name="spread"]');
    await box.fill('0.5');
    await page.locator('select[name="lengths"]').selectOption('in');
    await expect.poll(() => box.inputValue()).toBe('0.01969');
    await expect.poll(() => page.evaluate((key) => localStorage.getItem(key), KEY)).toBe('in');
    const spread = page.getByRole('textbox', { name: /How sure are you\?.*inches/ });
    await spread.fill('20');
    await page.getByRole('button', { name: 'Show the truth' }).click();
    await expect
      .poll(() => page.locator('#finish-problem').innerText())
      .toMatch(/in inches from 0 to 0\.8, without its unit, such as 0\.02/);
    await spread.fill('0.5');
    await page.getByRole('button', { name: 'Show the truth' }).click();
    await expect
      .poll(() => page.locator('[data-part="reckoning"]').innerText())
      .toMatch(/Your ±0\.5000 in holds the truth/);
  });
});
