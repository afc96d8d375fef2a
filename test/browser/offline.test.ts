import { createHash } from 'node:crypto';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { angleBefore } from '../../calculators/maths/crank/slider-crank.ts';
import { dist, documentOf, pageFiles, pathOf } from './support/built.ts';
import { expectResult, field, settled } from './support/calculator.ts';
import { painted } from './support/handles.ts';
import { visit } from './support/page.ts';
import { serve, type Served } from './support/serve.ts';

vi.setConfig({ testTimeout: 300_000 });

const demo = { stroke: 51, rodLength: 104, pinOffset: 0 };
const FOLDER = '/some/where/';

let copy: string;
let host: Served;

async function start(): Promise<void> {
  copy = await mkdtemp(join(tmpdir(), 'gudgeon-offline-'));
  await cp(dist, copy, { recursive: true });
  host = await serve(copy, { base: FOLDER });
}

async function stop(): Promise<void> {
  await host.close().catch(() => undefined);
  await rm(copy, { recursive: true });
}

/** For tests that change what the host holds, or take it away from one another. */
function eachWithAHost(): void {
  beforeEach(start);
  afterEach(stop);
}

const kept = (page: Page): Promise<unknown> =>
  page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));

/** Tells the browser that the network is gone. A page opened since the last time need not know. */
async function tellOffline(page: Page): Promise<void> {
  await page.context().setOffline(false);
  await page.context().setOffline(true);
}

/** Takes the network away: the browser is told, and the host is gone. */
async function cutOff(page: Page): Promise<void> {
  await host.close();
  await tellOffline(page);
}

const PATH = 'articles/where-the-piston-is/';

describe('after one visit', () => {
  // One visit for all: to keep the whole site takes longer than any of them.
  let page: Page;
  const over = Promise.withResolvers<undefined>();
  let visited: Promise<void>;
  beforeAll(async () => {
    await start();
    const came = Promise.withResolvers<undefined>();
    visited = visit(
      { site: host.url, workers: true, expected: [/404.*no-such-thing/] },
      async (opened) => {
        page = opened;
        await kept(page);
        await cutOff(page);
        came.resolve(undefined);
        await over.promise;
      },
    );
    await Promise.race([came.promise, visited]);
  });
  afterAll(async () => {
    over.resolve(undefined);
    await visited;
    await stop();
  });

  it('an address that is not there gets the page that says so, with links that lead on', async () => {
    await page.goto(new URL('calculators/no-such-thing/at-all', host.url).href);
    await page.getByRole('heading', { name: 'There is no page at this address' }).waitFor();
    await page.getByRole('main').getByRole('link', { name: 'articles' }).click();
    await page.waitForURL(`${host.url}articles/`);
  });

  it('every page opens offline, from a folder of a host', async () => {
    for (const file of pageFiles.filter((name) => name !== '404.html')) {
      await page.goto(new URL(pathOf(file), host.url).href);
      expect(await page.title()).toBe(documentOf(file).title);
      await settled(page);
    }
    await tellOffline(page);
    await page.getByText('Offline: every page still works.').waitFor();
  });

  it('every drawing that a page offers is there offline', async () => {
    const offered = new Set(
      pageFiles.flatMap((file) =>
        [...documentOf(file).querySelectorAll('a[download][href]')].map(
          (link) => new URL(link.getAttribute('href')!, new URL(pathOf(file), host.url)).href,
        ),
      ),
    );
    expect(offered.size).toBeGreaterThan(4);
    for (const href of offered) {
      const came = page.evaluate((file) => fetch(file).then(({ ok }) => ok), href);
      expect(await came, href).toBe(true);
    }
  });

  it('a shared calculation works offline, units, search and all', async () => {
    const link = 'calculators/piston-position/?stroke=51mm&rod=104mm&travel=87thou';
    await page.goto(new URL(link, host.url).href);
    await settled(page);
    await expectResult(page, 'angle', angleBefore(demo, 0.087 * 25.4));
    await page.reload();
    await settled(page);
    await expectResult(page, 'travel', 0.087 * 25.4);
    await page.goto(new URL('search/?q=con+rod', host.url).href);
    await page.locator('#search-list a').first().waitFor();
  });

  it('addresses without the last slash, or with the file’s name, work offline', async () => {
    for (const file of pageFiles.filter((name) => name !== '404.html' && name !== 'index.html')) {
      const path = pathOf(file);
      await page.goto(`${host.url}${path.slice(0, -1)}?a=b#c`);
      await expect.poll(() => page.url()).toBe(`${host.url}${path}?a=b#c`);
      expect(await page.title()).toBe(documentOf(file).title);
    }
    await page.goto(`${host.url}${PATH}index.html`);
    await expect.poll(() => page.url()).toBe(`${host.url}${PATH}`);
  });

  // The last of them: closed it stays closed for those that look for it, too.
  it('the line that says so is one line, and closed it stays closed', async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto(new URL('calculators/fuel-and-oil/', host.url).href);
    await settled(page);
    await tellOffline(page);
    const line = page.locator('.notice');
    await line.waitFor();
    expect((await line.boundingBox())!.height).toBeLessThan(56);
    await line.getByRole('button', { name: 'Close' }).click();
    await page.goto(new URL('calculators/find-tdc/', host.url).href);
    await settled(page);
    const told = page.locator('html[data-told]');
    await page.evaluate(() => {
      addEventListener('offline', () => document.documentElement.setAttribute('data-told', ''));
    });
    await tellOffline(page);
    await told.waitFor();
    await painted(page);
    expect(await line.count()).toBe(0);
  });
});

/** Puts a newer build on the host: the page of `PATH` says a word more, and the worker knows it. */
async function deploy(word: string, { page = true, worker = true } = {}): Promise<void> {
  const file = join(copy, PATH, 'index.html');
  const newer = (await readFile(file, 'utf8')).replace('</main>', `<p>${word}</p></main>`);
  const list = join(copy, 'sw.js');
  const text = await readFile(list, 'utf8');
  const entry = new RegExp(`\\{"url":"\\./${PATH}","revision":"[^"]+","integrity":"[^"]+"\\}`);
  const integrity = `sha256-${createHash('sha256').update(newer).digest('base64')}`;
  const told = JSON.stringify({ url: `./${PATH}`, revision: word, integrity });
  expect(text).toMatch(entry);
  if (page) await writeFile(file, newer);
  if (worker) await writeFile(list, text.replace(entry, told));
}

const update = (page: Page): Promise<unknown> =>
  page.evaluate(() => navigator.serviceWorker.getRegistration().then((r) => r!.update()));
const offered = (page: Page): Promise<void> =>
  page.getByText('A newer copy of the site is ready').waitFor();
const use = (page: Page): Promise<void> => page.getByRole('button', { name: 'Use it now' }).click();
const box = (page: Page) => page.locator('.calc-form input[type="text"]').first();

describe.each([
  ['that sends the site’s headers', true],
  ['that sends none of them', false],
])('a newer copy on a host %s', (_, headers) => {
  eachWithAHost();
  beforeEach(async () => {
    if (headers) return;
    await host.close();
    host = await serve(copy, { base: FOLDER, headers });
  });

  it('is offered, waits for the reader, and keeps what is typed', async () => {
    await visit({ site: host.url, workers: true, path: PATH }, async (page) => {
      await kept(page);
      await page.reload();
      await settled(page);
      await box(page).fill('54.25');
      await deploy('renewed');
      await update(page);
      await offered(page);
      expect(await page.getByText('renewed').count()).toBe(0);
      await expect.poll(() => box(page).inputValue()).toBe('54.25');
      await use(page);
      await page.getByText('renewed').waitFor();
      await settled(page);
      await expect.poll(() => box(page).inputValue()).toBe('54.25');
    });
  });

  it('is taken in every tab, each in its own time', async () => {
    await visit({ site: host.url, workers: true, path: PATH }, async (page) => {
      await kept(page);
      const other = await page.context().newPage();
      await other.goto(new URL(PATH, host.url).href);
      await settled(other);
      await box(other).fill('57.5');
      await deploy('renewed');
      await update(page);
      await offered(page);
      await offered(other);
      await use(page);
      await page.getByText('renewed').waitFor();
      expect(await other.getByText('renewed').count()).toBe(0);
      await expect.poll(() => box(other).inputValue()).toBe('57.5');
      await use(other);
      await other.getByText('renewed').waitFor();
      await settled(other);
      await expect.poll(() => box(other).inputValue()).toBe('57.5');
    });
  });

  it('is not kept from a folder that is half copied, and is once it is whole', async () => {
    await visit({ site: host.url, workers: true, path: PATH }, async (page) => {
      await kept(page);
      await page.reload();
      // The worker's list has come, and the page has not.
      await deploy('renewed', { page: false });
      await update(page).catch(() => undefined);
      await expect
        .poll(() =>
          page.evaluate(async () => {
            const registration = (await navigator.serviceWorker.getRegistration())!;
            return [registration.installing, registration.waiting].every((part) => part === null);
          }),
        )
        .toBe(true);
      expect(await page.getByText('A newer copy').count()).toBe(0);
      // The copy that is there is whole still, and goes on being used.
      const state = page.locator('#kept-copy');
      await expect.poll(() => state.textContent()).toContain('The whole site is kept');
      await deploy('renewed', { worker: false });
      await update(page);
      await offered(page);
      await use(page);
      await page.getByText('renewed').waitFor();
    });
  });

  it('an old page whose scripts are gone from the host goes on by the copy it has', async () => {
    const path = 'calculators/piston-position/';
    await visit({ site: host.url, workers: true, path }, async (page) => {
      await kept(page);
      await page.getByText('The whole site is kept on this device').waitFor();
      await rm(join(copy, '_astro'), { recursive: true });
      await page.getByRole('button', { name: 'Send figures to the sheet' }).click();
      await page.getByRole('button', { name: 'Send to a new sheet' }).waitFor();
      await page.reload();
      await settled(page);
      await field(page, 'travel').fill('2.8');
      await expectResult(page, 'travel', 2.8);
    });
  });
});

describe('the first visit', () => {
  eachWithAHost();

  it('says when the copy is whole, and goes on with it when the network goes', async () => {
    await visit({ site: host.url, workers: true, path: PATH }, async (page) => {
      await page.getByText('The whole site is kept on this device').waitFor();
      await cutOff(page);
      await page.getByText('Offline: every page still works.').waitFor();
      await settled(page);
      await page.locator('a[href$="calculators/"]').first().click();
      await page.waitForURL(/calculators\/$/);
    });
  });

  it('says when the copy did not come whole', async () => {
    await rm(join(copy, 'glossary', 'index.html'));
    const options = {
      site: host.url,
      workers: true,
      path: PATH,
      tolerated: [/404/, /bad-precaching/],
    };
    await visit(options, async (page) => {
      await page.getByText('did not come whole').waitFor();
    });
  });
});

describe('where nothing can be kept', () => {
  eachWithAHost();

  it('says so when the connection goes, and takes it back when it comes', async () => {
    // Some browsers ask for the icon again once they are cut off.
    const tolerated = [/ERR_INTERNET_DISCONNECTED.*icons\/48\.png/];
    const path = 'calculators/piston-position/';
    await visit({ site: host.url, path, tolerated }, async (page) => {
      await settled(page);
      // What the unfolded groups fetch has come.
      await page.waitForLoadState('networkidle');
      await page.context().setOffline(true);
      await page.getByText('Offline: no other page will open.').waitFor();
      await field(page, 'travel').fill('2.8');
      await expectResult(page, 'travel', 2.8);
      await page.context().setOffline(false);
      await expect.poll(() => page.locator('.notice').count()).toBe(0);
    });
  });
});

describe('a host', () => {
  eachWithAHost();

  it('is told to guard the pages, and what to keep and for how long', async () => {
    const page = await fetch(host.url);
    expect(page.headers.get('content-security-policy')).toBe("frame-ancestors 'none'");
    expect(page.headers.get('x-content-type-options')).toBe('nosniff');
    const [sheet] = /_astro\/[^"]+\.css/.exec(await page.text())!;
    const answer = await fetch(new URL(sheet, host.url));
    expect(answer.headers.get('cache-control')).toContain('immutable');
    const forms = pageFiles.flatMap((file) => [
      file,
      pathOf(file),
      pathOf(file).replace(/\/$/, ''),
    ]);
    for (const form of ['sw.js', ...forms]) {
      const { headers } = await fetch(new URL(form, host.url), { redirect: 'manual' });
      expect(headers.get('cache-control'), form).toBe('no-cache');
    }
  });
});
