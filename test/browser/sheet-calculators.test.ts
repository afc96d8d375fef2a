import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { expectAccessible } from './support/axe.ts';
import { field, result, settled } from './support/calculator.ts';
import { visit } from './support/page.ts';
import { button, expectKept, keepEngines, kept, ready } from './support/sheet.ts';

const mine = setFigure({ ...demoSheet(), id: 'e-1', name: 'Mine', invented: false }, 'stroke', 60);

const withSheet = (
  path: string,
  body: (page: Page) => Promise<void>,
  engine = mine,
): Promise<void> =>
  visit({ path: 'sheet/' }, async (page) => {
    await ready(page);
    await keepEngines(page, engine);
    await page.goto(new URL(path, inject('siteUrl')).href);
    await settled(page);
    await body(page);
  });

/** What says beside a field that its figure is the sheet's. */
const marks = (page: Page) => page.locator('[id$="-mark"].whose-sheet');

describe('a calculator and the engine sheet', () => {
  it('opened without figures it takes the sheet’s, says so, and lets them be typed over', async () => {
    await withSheet('calculators/piston-position/', async (page) => {
      await expect.poll(() => field(page, 'stroke').inputValue()).toBe('60');
      await expect.poll(() => new URL(page.url()).search).toBe('');
      await page.getByText(/\d figures are from your sheet: Mine\./).waitFor();
      expect(await marks(page).count()).toBeGreaterThanOrEqual(3);
      await expect.poll(() => page.locator('#stroke-mark').innerText()).toBe('sheet');
      await expectAccessible(page);
      await field(page, 'stroke').fill('58');
      await expect.poll(() => new URL(page.url()).searchParams.get('stroke')).toBe('58mm');
      await expect.poll(() => page.locator('#stroke-mark').innerText()).toBe('yours');
      expect(await kept(page)).toContain('"stroke":60');
    });
  });

  it('shows no figure of the example before the sheet’s have come', async () => {
    await withSheet('calculators/piston-position/', async (page) => {
      await page.addInitScript(() => {
        const seen = new Set<string>();
        Object.assign(window, { seen });
        const look = (): void => {
          const answer = document.querySelector('.lead output');
          if (answer?.checkVisibility({ visibilityProperty: true })) seen.add(answer.textContent);
          requestAnimationFrame(look);
        };
        look();
      });
      await page.reload();
      await settled(page);
      await page.getByText(/\d figures are from your sheet: Mine\./).waitFor();
      const answer = await page.locator('.lead output').first().textContent();
      await expect
        .poll(() => page.evaluate(() => [...(window as unknown as { seen: Set<string> }).seen]))
        .toEqual([answer]);
    });
  });

  it('knows after a reload whose figures it holds, and a link knows only its own', async () => {
    await withSheet('calculators/piston-position/', async (page) => {
      await expect.poll(() => field(page, 'stroke').inputValue()).toBe('60');
      await field(page, 'rod').fill('111');
      await expect.poll(() => new URL(page.url()).searchParams.get('rod')).toBe('111mm');
      await page.reload();
      await settled(page);
      await expect.poll(() => page.locator('#rod-mark').innerText()).toBe('yours');
      await expect.poll(() => page.locator('#stroke-mark').innerText()).toBe('sheet');
      const link = page.url();
      await page.goto('about:blank');
      await page.goto(link);
      await settled(page);
      await expect.poll(() => page.locator('#rod-mark').innerText()).toBe('link');
    });
  });

  it('does not call a link’s example the sheet’s', async () => {
    const link = 'calculators/piston-position/?stroke=56mm&rod=105mm&rotor=95mm&example=rotor';
    await withSheet(link, async (page) => {
      await button(page, 'Put my engine in').waitFor();
      expect(await page.getByText('invented engine of your sheet').count()).toBe(0);
    });
  });

  it('says so where the sheet has nothing for it', async () => {
    await withSheet('calculators/hole-pattern/', async (page) => {
      await button(page, 'Put my engine in').click();
      await page.getByText('Your sheet holds no figure that this page asks for.').waitFor();
    });
  });

  it('counts a single figure as one', async () => {
    const bare = setFigure(newEngine('e-1', 'Mine'), 'deck', 0.1);
    await withSheet(
      'calculators/compression/',
      async (page) => {
        await page.getByText('One figure is from your sheet: Mine.').waitFor();
      },
      bare,
    );
  });

  it('and can go back to the defaults', async () => {
    await withSheet('calculators/piston-position/', async (page) => {
      await expect.poll(() => field(page, 'stroke').inputValue()).toBe('60');
      await button(page, 'Use the defaults').click();
      await expect.poll(() => field(page, 'stroke').inputValue()).toBe('51');
      expect(await marks(page).count()).toBe(0);
      expect(await page.getByText('from your sheet').count()).toBe(0);
    });
  });

  it('a link keeps its own meaning: what it leaves out takes the default', async () => {
    await withSheet('calculators/piston-position/?travel=3mm', async (page) => {
      await expect.poll(() => result(page, 'travel')).toBe(3);
      await expect.poll(() => field(page, 'stroke').inputValue()).toBe('51');
      expect(await marks(page).count()).toBe(0);
      expect(await page.getByText('from your sheet').count()).toBe(0);
    });
  });

  it('a link that only chooses what is shown, as the home page’s, still takes the sheet’s engine', async () => {
    await withSheet('calculators/piston-position/?given=other', async (page) => {
      await expect.poll(() => field(page, 'stroke').inputValue()).toBe('60');
      await page.getByText(/\d figures are from your sheet: Mine\./).waitFor();
      expect(await field(page, 'given-stroke').isVisible()).toBe(true);
    });
  });

  it('fills a figure for each cylinder where it has the readings', async () => {
    await withSheet('calculators/plate-setting/', async (page) => {
      const { left, found } = mine.readings.timing!;
      await expect
        .poll(() => field(page, 'fired-2').inputValue())
        .toBe(String(left[1] ?? found[1]));
    });
  });

  it('a result is sent to the sheet, into its field and into its list', async () => {
    await withSheet('calculators/piston-position/?travel=3mm&stroke=57mm', async (page) => {
      await button(page, 'Send figures to the sheet').click();
      await page.getByLabel('Stroke: 57 mm').check();
      await page.getByLabel(/^Crank angle: /).check();
      await expectAccessible(page);
      await button(page, 'Send to Mine').click();
      await page.getByText('Sent to Mine').waitFor();
      await expectKept(page, '"stroke":57');
      await page.getByRole('link', { name: 'Open the sheet' }).click();
      await ready(page);
      const link = page.getByRole('link', { name: /^Crank angle: / });
      expect(await link.getAttribute('href')).toContain('stroke=57mm');
      await link.click();
      await settled(page);
      await expect.poll(() => result(page, 'travel')).toBe(3);
    });
  });

  it('of the invented engine every figure stays an example', async () => {
    await withSheet(
      'calculators/piston-position/',
      async (page) => {
        await expect.poll(() => field(page, 'stroke').inputValue()).toBe('60');
        await expect
          .poll(() => page.locator('.calc').innerText())
          .toContain('invented engine of your sheet');
        expect(await page.getByText('from your sheet').count()).toBe(0);
        expect(await marks(page).count()).toBe(0);
        await expect.poll(() => page.locator('#stroke-mark').innerText()).toBe('example');
      },
      { ...mine, invented: true },
    );
  });

  it('orders nothing from figures that neither reader nor sheet gave', async () => {
    await withSheet('calculators/float-level/', async (page) => {
      await expect.poll(() => page.locator('.remarks').innerText()).toContain('Not judged yet');
      const said = await page.locator('.remarks').innerText();
      expect(said).not.toMatch(/: bend the tang \d/);
      await expect.poll(() => page.locator('.whose').innerText()).toMatch(/still the example’s\.$/);
      await expect.poll(() => page.locator('.to-give').innerText()).toMatch(/^Give your own: \w/);
    });
  });

  it.each(['air-and-jet', 'breaker-cam'])(
    'of an engine whose sheet has no figure for it, %s names the example’s and orders nothing',
    async (slug) => {
      const bare = setFigure(newEngine('e-1', 'Mine'), 'deck', 0.1);
      await withSheet(
        `calculators/${slug}/`,
        async (page) => {
          await expect.poll(() => page.locator('.calc').innerText()).toContain('Not judged yet: ');
          expect(await page.locator('.calc').innerText()).not.toContain('In this example');
          await expect
            .poll(() => page.locator('.whose').innerText())
            .toMatch(/still the example’s\.$/);
          await expect
            .poll(() => page.locator('.to-give').innerText())
            .toMatch(/^Give your own: \w/);
        },
        bare,
      );
    },
  );

  it('without a sheet it shows the defaults, and sending makes a new one', async () => {
    await visit({ path: 'calculators/find-tdc/' }, async (page) => {
      await settled(page);
      const fetched = await page.evaluate(() =>
        performance.getEntriesByType('resource').map(({ name }) => name),
      );
      expect(fetched.filter((name) => name.includes('for-calculator'))).toEqual([]);
      await button(page, 'Send figures to the sheet').click();
      await button(page, 'Send to a new sheet').click();
      await page.getByText('Nothing is ticked. Tick what the sheet is to have.').waitFor();
      await page.locator('.send input[type="checkbox"]').last().check();
      await button(page, 'Send to a new sheet').click();
      await page.getByText('Sent to My engine').waitFor();
      await expectKept(page, 'My engine');
    });
  });
});
