import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { describe, expect, it, vi } from 'vitest';
import { fromQuery } from '../../calculators/frame/address.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { addresses } from '../hostile/addresses.ts';
import { unsound } from '../hostile/unsound.ts';
import { settled } from './support/calculator.ts';
import { visit } from './support/page.ts';

vi.setConfig({ testTimeout: 300_000 });

const modules = import.meta.glob<{ default: AnyCalculator }>(
  '../../calculators/*/*/calculator.tsx',
  {
    eager: true,
  },
);
const calculators = Object.values(modules).map((module) => module.default);

/** For each calculator: opened anew, and gone to within the page. Seeds are fixed. */
const OPENED = 4;
const GONE_TO = 20;
const sample = (calculator: AnyCalculator, count: number, seed: number): string[] =>
  fc.sample(addresses(calculator), { numRuns: count, seed });

/** Goes to a state as the back button does, and waits until it is drawn. */
const goTo = (page: Page, query: string): Promise<void> =>
  page.evaluate(async (search) => {
    history.pushState(null, '', `${location.pathname}?${search}`);
    dispatchEvent(new PopStateEvent('popstate'));
    await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
  }, query);

async function expectSound(page: Page, query: string): Promise<void> {
  const { html, ran, typed } = await page.evaluate(() => ({
    html: document.querySelector('.calc')!.outerHTML,
    ran: 'hit' in window,
    typed: [...document.querySelectorAll<HTMLInputElement>('.calc-form input[type="text"]')].map(
      ({ name, value }) => [name, value] as const,
    ),
  }));
  expect(ran, `${query} runs nothing`).toBe(false);
  expect(unsound(html), query).toEqual([]);
  const texts = fromQuery(query);
  for (const [name, value] of typed) {
    const given = texts[name];
    if (given === undefined || given === '') continue;
    // The unit of the field itself is printed beside it, and a text field holds no line breaks.
    const kept = given.replaceAll(/[\r\n]/g, '').trim();
    expect(kept, `${query} keeps ${name}`).toContain(value.trim().split(' ')[0]);
  }
}

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s',
  (slug, calculator) => {
    const path = `calculators/${slug}/`;

    it('opens at any address', async () => {
      for (const query of sample(calculator, OPENED, 2_200)) {
        await visit({ path: `${path}?${query.replaceAll('#', '%23')}` }, async (page) => {
          await settled(page);
          await expectSound(page, query.replaceAll('#', '%23'));
        });
      }
    });

    it('goes to any address', async () => {
      await visit({ path }, async (page) => {
        await settled(page);
        for (const query of sample(calculator, GONE_TO, 104)) {
          const search = query.replaceAll('#', '%23');
          await goTo(page, search);
          await expectSound(page, search);
        }
      });
    });
  },
);
