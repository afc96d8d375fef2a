import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { dist, documentOf } from './support/built.ts';
import { expectResult, settled } from './support/calculator.ts';
import { phone, visit, visitEarly } from './support/page.ts';
import { serve, type Served } from './support/serve.ts';

const PATH = 'calculators/piston-position/';
/** By the law of cosines, of a stroke of 80 and a rod of 160: not the worked example's. */
const LINK = `${PATH}?from=travel&travel=3mm&stroke=80mm&rod=160mm&offset=0mm`;
const OF_LINK = (() => {
  const [crank, rod, between] = [40, 160, 197];
  const cosine = (between ** 2 + crank ** 2 - rod ** 2) / (2 * between * crank);
  return (Math.acos(cosine) * 180) / Math.PI;
})();
/** A host that lacks some files for a while. */
const served = async (lacks: (path: string) => boolean): Promise<Served & AsyncDisposable> => {
  const host = await serve(dist, { lacks });
  return { ...host, [Symbol.asyncDispose]: host.close };
};
const CUT = { expected: [/ERR_FAILED/], tolerated: [/Failed to fetch/] };

/**
 * The scripts that the page asks for by itself until it answers, the first and those that they ask
 * for. No fold is opened: what is in it is fetched when somebody asks.
 */
async function scriptsOf(path: string): Promise<string[]> {
  const names = new Set<string>();
  await visit({ path, viewport: phone }, async (page) => {
    page.on('request', (request) => names.add(new URL(request.url()).pathname));
    await page.reload({ waitUntil: 'networkidle' });
    await expectResult(page, 'angle', OF_LINK);
  });
  return [...names].filter((name) => name.endsWith('.js'));
}

/** Figures that can be seen: what a reader could take for the answer. */
const seen = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main data, main td, .calc-form input')]
      .filter((part) => part.checkVisibility({ visibilityProperty: true }))
      .map((part) => part.textContent || (part as HTMLInputElement).value),
  );
const again = (page: Page) => page.getByRole('button', { name: 'Try again' });

describe('scripts that neither come nor fail', () => {
  it.each([PATH, 'sheet/', 'search/?q=kick', 'first-start/'])(
    'are told of at %s, until they come',
    async (path) => {
      await visitEarly(path, async (page, letScriptsCome) => {
        await page
          .getByText('A part of this page has not come yet, so it does not answer.')
          .waitFor();
        expect(await again(page).isVisible()).toBe(true);
        // As large as a thumb, in the page's own colours, and off what stands below.
        const look = await again(page).evaluate((button) => {
          const { marginBottom } = getComputedStyle(button.closest('.waiting')!);
          const { height } = button.getBoundingClientRect();
          return { height, apart: Number.parseFloat(marginBottom) };
        });
        expect(look.height).toBeGreaterThanOrEqual(44);
        expect(look.apart).toBeGreaterThan(4);
        letScriptsCome();
        await expect.poll(() => again(page).isVisible()).toBe(false);
      });
    },
  );
});

it('keeps the page, and what was typed, while there is no line to try again on', async () => {
  const expected = [/ERR_FAILED/, /ERR_INTERNET_DISCONNECTED/];
  await visit({ ...CUT, expected, viewport: phone }, async (page) => {
    await page.route('**/*.js', (route) => route.abort());
    await page.goto(new URL(PATH, inject('siteUrl')).href);
    await again(page).waitFor();
    const box = page.locator('#travel');
    await box.fill('3.1');
    await page.context().setOffline(true);
    await again(page).click();
    await page.getByRole('button', { name: 'Still no connection. Try again' }).waitFor();
    expect(await box.inputValue()).toBe('3.1');
    await page.context().setOffline(false);
    await page.unroute('**/*.js');
    const loaded = page.waitForEvent('load');
    await again(page).click();
    await loaded;
    await settled(page);
    expect(await box.inputValue()).toBe('3.1');
    await expect.poll(() => page.url()).toContain('travel=3.1');
  });
});

it('keeps what was typed over two failures, and nothing of another page', async () => {
  await visit({ ...CUT, viewport: phone }, async (page) => {
    const tryAgain = async (): Promise<void> => {
      const loaded = page.waitForEvent('load');
      await again(page).click();
      await loaded;
    };
    await page.route('**/*.js', (route) => route.abort());
    await page.goto(new URL(PATH, inject('siteUrl')).href);
    await again(page).waitFor();
    await page.evaluate(() =>
      sessionStorage.setItem(
        'gudgeon.typed',
        JSON.stringify({ page: '/another/', texts: [{ rod: '77' }] }),
      ),
    );
    await page.locator('#travel').fill('3.1');
    // The page comes now, and its calculator not yet.
    await page.unroute('**/*.js');
    const calculator = /\/wake\./;
    await page.route(calculator, (route) => route.abort());
    await tryAgain();
    await again(page).waitFor();
    await page.unroute(calculator);
    await tryAgain();
    await settled(page);
    await expect.poll(() => page.url()).toContain('travel=3.1');
    expect(await page.locator('#rod').inputValue()).toBe('104');
  });
});

describe('an address with figures', () => {
  it('shows none of the worked example while its scripts are on their way, and then its own', async () => {
    await visit({}, async (page) => {
      const { promise: held, resolve } = Promise.withResolvers<undefined>();
      await page.route('**/*.js', async (route) => {
        await held;
        await route.continue();
      });
      await page.goto(new URL(LINK, inject('siteUrl')).href, { waitUntil: 'commit' });
      await page.getByText('Reading the figures in the address').waitFor();
      await page.locator('footer').waitFor();
      expect(await seen(page)).toEqual([]);
      // What stands on the page at the very moment when it is let be seen.
      await page.evaluate(() => {
        const { documentElement } = document;
        new MutationObserver(() => {
          if (documentElement.dataset.asked === undefined) {
            const drawn = [...document.querySelectorAll('output data')].map((data) =>
              data.getAttribute('value'),
            );
            documentElement.dataset.seen ??= JSON.stringify([
              ...drawn,
              document.querySelector('.calc-picture svg')?.textContent,
            ]);
          }
        }).observe(documentElement, { attributes: true });
      });
      resolve(undefined);
      await settled(page);
      await expectResult(page, 'angle', OF_LINK);
      await expect.poll(() => seen(page).then(({ length }) => length)).toBeGreaterThan(5);
      const first = await page.evaluate(() => document.documentElement.dataset.seen);
      const last = await page.evaluate(() =>
        JSON.stringify([
          ...[...document.querySelectorAll('output data')].map((data) =>
            data.getAttribute('value'),
          ),
          document.querySelector('.calc-picture svg')?.textContent,
        ]),
      );
      expect(first).toBe(last);
    });
  });

  it('says so when any one of its scripts is gone, and reads it once that is back', async () => {
    const scripts = await scriptsOf(LINK);
    expect(scripts.length).toBeGreaterThan(4);
    const offline = /Page\.astro/;
    for (const script of scripts.filter((name) => !offline.test(name))) {
      await visit({ ...CUT, viewport: phone }, async (page) => {
        await page.route(`**${script}*`, (route) => route.abort());
        await page.goto(new URL(LINK, inject('siteUrl')).href);
        await again(page).waitFor();
        expect(await seen(page), script).toEqual([]);
        await page.getByText('have not been read').waitFor();
        await page.unroute(`**${script}*`);
        await again(page).click();
        await expectResult(page, 'angle', OF_LINK);
        await expect.poll(() => seen(page).then(({ length }) => length)).toBeGreaterThan(5);
        expect(await again(page).isVisible()).toBe(false);
      });
    }
  });

  it('holds back the worked example with the style sheets gone too', async () => {
    await visit(CUT, async (page) => {
      await page.route(/\/_astro\//, (route) => route.abort());
      await page.goto(new URL(LINK, inject('siteUrl')).href);
      await again(page).waitFor();
      expect(await seen(page)).toEqual([]);
    });
  });
});

it('an old page that the browser kept, whose scripts the host no longer has, gets the new one', async () => {
  const old = readFileSync(join(dist, PATH, 'index.html'), 'utf8').replaceAll(
    /(_astro\/[\w.-]+)\.(js|css)"/g,
    '$1old.$2"',
  );
  await visit({ expected: [/404/], tolerated: [/Refused to apply style/] }, async (page) => {
    let kept = true;
    await page.route(/piston-position\/\?/, (route) => {
      const first = kept;
      kept = false;
      return first ? route.fulfill({ contentType: 'text/html', body: old }) : route.continue();
    });
    await page.goto(new URL(LINK, inject('siteUrl')).href);
    await again(page).waitFor();
    expect(await seen(page)).toEqual([]);
    await again(page).click();
    await expectResult(page, 'angle', OF_LINK);
  });
});

it('a page without figures in its address says that it does not answer, and that it is an example', async () => {
  await visit(CUT, async (page) => {
    await page.route('**/*.js', (route) => route.abort());
    await page.goto(new URL(PATH, inject('siteUrl')).href);
    await page.getByText('What stands here is the worked example').waitFor();
    expect(await seen(page)).not.toEqual([]);
    expect(
      documentOf(`${PATH}index.html`).querySelector('output[name="angle"] data'),
    ).not.toBeNull();
  });
});

it('a fault of the site is not laid to the connection', async () => {
  const options = { expected: [/planted/], viewport: phone };
  await visit(options, async (page) => {
    await page.route(/\/_astro\/wake\./, (route) =>
      route.fulfill({ contentType: 'text/javascript', body: 'throw new Error("planted")' }),
    );
    await page.goto(new URL(PATH, inject('siteUrl')).href);
    await page.locator('.calc-answer').click();
    await page.getByText('The fault is the site’s').waitFor();
    expect(await page.getByText('Check the connection').isVisible()).toBe(false);
  });
});

it('a part of the site that did not come is asked for again at the next need', async () => {
  let lacking = true;
  const lacks = (path: string): boolean => lacking && /SendForm|picture-file/.test(path);
  await using host = await served(lacks);
  const options = { site: host.url, path: PATH, expected: [/404/] };
  await visit(options, async (page) => {
    await settled(page);
    const missing = page.getByText('A part of the site that this needs did not come');
    const send = page.getByRole('button', { name: 'Send figures to the sheet' });
    const save = page.getByRole('button', { name: 'Picture, SVG' });
    await send.click();
    await missing.first().waitFor();
    await save.click();
    await expect.poll(() => missing.count()).toBe(2);
    expect(await page.getByText('dynamically imported').count()).toBe(0);
    lacking = false;
    await send.click();
    await page.getByRole('button', { name: 'Send to a new sheet' }).waitFor();
    await save.click();
    await page.getByText('Saved: piston-position').waitFor();
  });
});
