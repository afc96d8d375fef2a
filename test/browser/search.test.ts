import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { COLOURS, expectAccessible } from './support/axe.ts';
import { slugs } from './support/built.ts';
import { phone, visit } from './support/page.ts';

const links = (page: Page): Promise<(string | null)[]> =>
  page.locator('#search-list a').evaluateAll((all) => all.map((link) => link.getAttribute('href')));

describe('the search page', () => {
  it('finds as one types, by any name of the trade, and keeps the question in the address', async () => {
    await visit({ path: 'search/', viewport: phone }, async (page) => {
      await page.getByLabel('What are you looking for?').click();
      await page.keyboard.type('wrist pin');
      await page.getByRole('status').filter({ hasText: 'found' }).waitFor();
      expect((await links(page))[0]).toMatch(/glossary\/#gudgeon-pin$/);
      await expectAccessible(page);
      await page.emulateMedia({ colorScheme: 'dark' });
      await expectAccessible(page, COLOURS);
      await expect.poll(() => new URL(page.url()).searchParams.get('q')).toBe('wrist pin');
      await page.reload();
      await page.locator('#search-list a').first().click();
      await page.waitForURL(/glossary\/#gudgeon-pin$/);
    });
  });

  it('offers what is often looked for until something is asked, and each of it finds something', async () => {
    await visit({ path: 'search/', viewport: phone }, async (page) => {
      const often = page.getByRole('navigation', { name: 'Often looked for' }).getByRole('link');
      const words = await often.allTextContents();
      expect(words.length).toBeGreaterThan(8);
      await often.first().click();
      for (const asked of words) {
        await page.getByLabel('What are you looking for?').fill(asked);
        await page.getByRole('status').filter({ hasText: 'found' }).waitFor();
        expect(await links(page), asked).not.toEqual([]);
      }
      expect(await often.count()).toBe(0);
    });
  });

  it('tells a figure in other units off the box, and larger than what is said below it', async () => {
    await visit({ path: 'search/?q=0.015+in+in+mm', viewport: phone }, async (page) => {
      const told = page.locator('#search-conversion');
      await expect.poll(() => told.textContent()).toContain('0.381 mm');
      const look = await told.evaluate((line) => {
        const size = (element: Element) => Number.parseFloat(getComputedStyle(element).fontSize);
        const box = document.querySelector('#search-box')!.getBoundingClientRect();
        return {
          apart: line.getBoundingClientRect().top - box.bottom,
          larger: size(line) / size(document.querySelector('#search-state')!),
        };
      });
      expect(look.apart).toBeGreaterThan(8);
      expect(look.larger).toBeGreaterThan(1.1);
    });
  });

  it('is a box in the head of every other page where there is room, and a link where there is none', async () => {
    await visit(
      { path: 'articles/clearances/', viewport: { width: 1280, height: 900 } },
      async (page) => {
        const head = page.getByRole('banner');
        expect(await head.getByRole('link', { name: 'Search' }).count()).toBe(0);
        await head.getByRole('searchbox').fill('no spark');
        await page.keyboard.press('Enter');
        await page.getByRole('status').filter({ hasText: 'found' }).waitFor();
        expect((await links(page))[0]).toMatch(/faults\/#no-spark$/);
        await page.getByRole('searchbox').waitFor();
        await page.setViewportSize(phone);
        await page.goBack();
        await head.getByRole('link', { name: 'Search' }).waitFor();
        await head.getByRole('searchbox').waitFor({ state: 'hidden' });
      },
    );
  });

  it.each(slugs)('finds the calculator %s by its title', async (slug) => {
    await visit({ path: `calculators/${slug}/` }, async (page) => {
      const title = (await page.locator('h1').textContent())!;
      await page.goto(new URL(`../../search/?q=${encodeURIComponent(title)}`, page.url()).href);
      await expect
        .poll(() => links(page))
        .toContainEqual(expect.stringContaining(`calculators/${slug}/`));
      const found = await links(page);
      expect(found.findIndex((link) => link!.includes(`calculators/${slug}/`))).toBeLessThan(3);
    });
  });

  it.each([
    ['no spark', 'faults/#no-spark'],
    ['weak spark', 'faults/#poor-spark'],
    ['kicks back', 'faults/#kicks-back'],
    ['boxer', 'calculators/firing-order/'],
    ['flat twin', 'calculators/firing-order/'],
    ['will not idle', 'faults/#will-not-idle'],
    ['runs on two', 'faults/#one-dead'],
    ['floods', 'faults/#floods'],
    ['plug black', 'faults/#plugs'],
    ['first start', 'first-start/'],
    ['runs on', 'faults/#runs-on'],
    ['set the points gap', 'sheet/#step-gap'],
    ['advance in mm', 'calculators/piston-position/'],
    ['0.094 in before top', 'calculators/piston-position/'],
    ['ignition too early', 'faults/#kicks-back'],
  ])('“%s” finds %s among the first three of everything', async (question, url) => {
    await visit({ path: `search/?q=${encodeURIComponent(question)}` }, async (page) => {
      await page.locator('#search-list a').first().waitFor();
      const first = (await links(page)).slice(0, 3).join(' ');
      expect(first).toMatch(new RegExp(`/${url}( |$)`));
    });
  });

  it('says when there is nothing, and runs nothing from the question', async () => {
    const question = '"><img src=x onerror=window.hit=1>zzzqqq';
    await visit({ path: `search/?q=${encodeURIComponent(question)}` }, async (page) => {
      // Some of its words may be found: what matters is that it is a question and nothing else.
      await page.getByText(/found/).first().waitFor();
      await expect.poll(() => page.locator('input[name="q"]').inputValue()).toBe(question);
      expect(await page.locator('main img').count()).toBe(0);
      expect(await page.evaluate(() => 'hit' in window)).toBe(false);
      await page.locator('input[name="q"]').fill('qqqzzzqqq');
      await page.getByText('Nothing found').waitFor();
    });
  });

  it('says when its list cannot be had, and works once it can', async () => {
    const expected = [/search-index|ERR_FAILED/];
    await visit({ path: 'search/', expected }, async (page) => {
      await page.route('**/search-index.json', (route) => route.abort());
      await page.locator('input[name="q"]').fill('stroke');
      await page.getByText('could not be fetched').waitFor();
      await page.unroute('**/search-index.json');
      await page.locator('input[name="q"]').fill('stroke ');
      await page.locator('#search-list a').first().waitFor();
    });
  });

  it('says that its script did not come, and finds what was asked once it comes', async () => {
    const options = { expected: [/ERR_FAILED/], tolerated: [/Failed to fetch/] };
    await visit({ path: 'search/', ...options }, async (page) => {
      await page.route(/\/_astro\/.*\.js$/, (route) => route.abort());
      await page.goto(new URL('search/?q=points+gap', inject('siteUrl')).href);
      await page.getByText('does not answer').waitFor();
      await page.unroute(/\/_astro\/.*\.js$/);
      await page.getByRole('button', { name: 'Try again' }).click();
      await page.locator('#search-list a').first().waitFor();
      expect(await page.locator('#search-box').inputValue()).toBe('points gap');
    });
  });

  it('offers nothing that does nothing without JavaScript, and says where the lists are', async () => {
    await visit({ path: 'search/', javaScriptEnabled: false }, async (page) => {
      await page.locator('.noscript').waitFor();
      for (const dead of ['#search-form', '#search-often']) {
        expect(await page.locator(dead).isVisible()).toBe(false);
      }
    });
  });
});
