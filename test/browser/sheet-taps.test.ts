import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { order, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { phone, visit } from './support/page.ts';
import { readPdf } from './support/pdf.ts';
import { button, figure, ready } from './support/sheet.ts';
import { figures, readings } from './support/twin.ts';

/** What one part of the job took: taps or presses of keys that lead on, and keys typed. */
interface Cost {
  readonly part: string;
  /** Figures that the sheet asked for, and readings or ticks. */
  readonly figures: number;
  readonly readings: number;
  moves: number;
  keys: number;
}

/** Hands that count what they do. */
interface Hands {
  readonly press: (target: Locator) => Promise<number>;
  readonly type: (target: Locator, text: string) => Promise<number>;
  /** Goes on from a figure that was typed. */
  readonly ends: () => Promise<number>;
  /** Goes on from a reading that was typed. */
  readonly onwards: () => Promise<number>;
}

const isFocused = (target: Locator): Promise<boolean> =>
  target.evaluate((element) => element === document.activeElement);

const next = (page: Page): Locator => page.locator('.one a.one-next');

function thumb(page: Page): Hands {
  const press = async (target: Locator): Promise<number> => {
    await target.tap();
    return 1;
  };
  return {
    press,
    type: async (target, text) => {
      const taps = (await isFocused(target)) ? 0 : await press(target);
      await target.selectText();
      await page.keyboard.insertText(text);
      return taps;
    },
    ends: () => Promise.resolve(0),
    onwards: () => press(next(page)),
  };
}

const MOST_TABS = 200;

function keys(page: Page): Hands {
  const reach = async (target: Locator): Promise<number> => {
    await target.waitFor();
    for (let tabs = 0; tabs < MOST_TABS; tabs += 1) {
      if (await isFocused(target)) return tabs;
      await page.keyboard.press('Tab');
    }
    return expect.fail(`the tab key does not reach ${target.toString()}`);
  };
  /** The key that ends a figure or a reading leads to the next. */
  const enter = async (): Promise<number> => {
    await page.keyboard.press('Enter');
    return 1;
  };
  return {
    press: async (target) => {
      const tabs = await reach(target);
      await page.keyboard.press('Enter');
      return tabs + 1;
    },
    type: async (target, text) => {
      const tabs = await reach(target);
      await page.keyboard.press('ControlOrMeta+A');
      await page.keyboard.type(text);
      return tabs;
    },
    ends: enter,
    onwards: enter,
  };
}

/** The step on the screen. */
async function stepNow(page: Page): Promise<StepId | undefined> {
  const spot = await page.locator('.one').getAttribute('data-spot', { timeout: 2000 });
  return order.find((id) => spot === `read-${id}` || new RegExp(`^read-${id}-\\d+$`).test(spot!));
}

/** From a new engine to the printed sheet, one reading a screen; what each part of it took. */
async function wholeJob(page: Page, hands: Hands): Promise<Cost[]> {
  const costs: Cost[] = [];
  const begin = (part: string, asked = 0, read = 0): Cost => {
    const cost = { part, figures: asked, readings: read, moves: 0, keys: 0 };
    costs.push(cost);
    return cost;
  };
  const type = async (cost: Cost, target: Locator, text: string): Promise<void> => {
    cost.moves += await hands.type(target, text);
    cost.keys += text.length;
  };
  await ready(page);
  const start = begin('a new engine', 2);
  start.moves += await hands.press(button(page, 'New engine'));
  await type(start, figure(page, 'cylinders'), figures.cylinders!);
  await type(start, page.locator('#figure-firing-order'), '1-2');
  start.moves += await hands.press(page.locator('.order a.one-next'));

  const done = new Set<StepId>();
  for (let id = await stepNow(page); id !== undefined && !done.has(id); id = await stepNow(page)) {
    done.add(id);
    const of = (part: StepId) => page.locator(`.one[data-spot^="read-${part}"]`);
    await of(id).waitFor();
    const asked = await page
      .locator('.one input[id^="figure-"]')
      .evaluateAll((all) =>
        all.flatMap((input) => ((input as HTMLInputElement).value === '' ? [input.id] : [])),
      );
    const own = asked.flatMap((box) =>
      figures[box.slice('figure-'.length) as keyof typeof figures] === undefined ? [] : [box],
    );
    const pair = readings[id];
    const cost = begin(id, own.length, steps[id].reading ? pair!.length : 1);
    for (const box of own) {
      await type(
        cost,
        page.locator(`#${box}`),
        figures[box.slice('figure-'.length) as keyof typeof figures]!,
      );
      cost.moves += await hands.ends();
    }
    if (!steps[id].reading) {
      cost.moves += await hands.press(
        page.locator('.one').getByRole('button', { name: 'Done', exact: true }),
      );
    }
    for (const [i, text] of (pair ?? []).entries()) {
      if (text === undefined) continue;
      await page.locator(`.one[data-spot="read-${id}-${String(i + 1)}"]`).waitFor();
      // Within a step the box is what the hand goes on with.
      if (i > 0) await page.waitForFunction(() => document.activeElement?.id === 'one-box');
      await type(cost, page.locator('#one-box'), text);
      cost.moves += await hands.onwards();
    }
    await page.waitForFunction(
      (spot) => !document.querySelector(`.one[data-spot^="${spot}"]`),
      `read-${id}`,
    );
    if ((await page.locator('.one').count()) === 0) break;
  }
  await expect.poll(() => page.locator('.order-state').textContent()).toContain('complete');
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-printed', 'yes');
  });
  const print = begin('print', 0, 0);
  print.moves += await hands.press(page.locator('.order a.one-next'));
  print.moves += await hands.press(button(page, 'Print the sheet'));
  await expect.poll(() => page.getAttribute('body', 'data-printed')).toBe('yes');
  const paper = await readPdf(await page.pdf({ format: 'A4' }));
  for (const text of ['Firing order: 1-2', '0.41', '179.6', '25 : 1']) {
    expect(paper.text).toContain(text);
  }
  return costs;
}

/** By keyboard the way to a place counts too, where it does not come by itself. */
const MOST_PRESSES: Readonly<Record<string, number>> = {
  'a new engine': 45,
  // The choice of the earthed pole stands before its tick.
  polarity: 4,
  print: 14,
};

/** The table of a run, and its sum. */
function table(name: string, costs: readonly Cost[]): string {
  const sum = (of: (cost: Cost) => number): number =>
    costs.reduce((all, cost) => all + of(cost), 0);
  const row = (cells: readonly (string | number)[]): string =>
    cells.map((cell, i) => (i === 0 ? String(cell).padEnd(16) : String(cell).padStart(9))).join('');
  return [
    row([name, 'figures', 'readings', 'moves', 'typed']),
    ...costs.map((cost) => row([cost.part, cost.figures, cost.readings, cost.moves, cost.keys])),
    row([
      'in all',
      sum((c) => c.figures),
      sum((c) => c.readings),
      sum((c) => c.moves),
      sum((c) => c.keys),
    ]),
  ].join('\n');
}

describe('what the whole job takes, from an empty log to the printed sheet', () => {
  it('by touch: a tap for each box and one to go on', { timeout: 600_000 }, async () => {
    await visit(
      { path: 'sheet/', viewport: phone, hasTouch: true, isMobile: true },
      async (page) => {
        const costs = await wholeJob(page, thumb(page));
        console.info(table('taps', costs));
        for (const { part, figures: asked, readings: read, moves } of costs) {
          // A tap for each box that is typed into, but for the boxes that come with the focus; and one to go on from each reading.
          const first = part in readings || part === 'a new engine' || part === 'print' ? 1 : 0;
          expect(moves, part).toBeLessThanOrEqual(asked + read + first + (read === 0 ? 1 : 0));
        }
      },
    );
  });

  it('by keyboard', { timeout: 600_000 }, async () => {
    await visit({ path: 'sheet/' }, async (page) => {
      const costs = await wholeJob(page, keys(page));
      console.info(table('keyboard', costs));
      for (const { part, figures: asked, readings: read, moves } of costs) {
        const most =
          MOST_PRESSES[part] ?? (part in readings ? 4 + 2 * asked + read : 2 + 5 * asked);
        expect(moves, part).toBeLessThanOrEqual(most);
      }
    });
  });
});
