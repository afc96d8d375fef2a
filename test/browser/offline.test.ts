import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { angleBefore } from '../../calculators/maths/slider-crank.ts';
import { dist, documentOf, pageFiles, pathOf } from './support/built.ts';
import { expectResult, field, settled } from './support/calculator.ts';
import { visit } from './support/page.ts';
import { serve, type Served } from './support/serve.ts';

vi.setConfig({ testTimeout: 300_000 });

const demo = { stroke: 51, rodLength: 104, pinOffset: 0 };
const FOLDER = '/some/where/';

let copy: string;
let host: Served;

beforeEach(async () => {
  copy = await mkdtemp(join(tmpdir(), 'gudgeon-offline-'));
  await cp(dist, copy, { recursive: true });
  host = await serve(copy, { base: FOLDER });
});

afterEach(async () => {
  await host.close().catch(() => undefined);
  await rm(copy, { recursive: true });
});

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

describe('after one visit', () => {
  it('every page opens offline, from a folder of a host', async () => {
    await visit({ site: host.url, workers: true }, async (page) => {
      await kept(page);
      await cutOff(page);
      for (const file of pageFiles.filter((name) => name !== '404.html')) {
        await page.goto(new URL(pathOf(file), host.url).href);
        expect(await page.title()).toBe(documentOf(file).title);
        await settled(page);
      }
      await tellOffline(page);
      await page.getByText('work from the copy kept on this device').waitFor();
    });
  });

  it('a shared calculation works offline, unit converter, search and all', async () => {
    await visit({ site: host.url, workers: true }, async (page) => {
      await kept(page);
      await cutOff(page);
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
  });
});

describe('a newer copy', () => {
  it('is offered, waits for the reader, and keeps what is typed', async () => {
    const path = 'articles/where-the-piston-is/';
    await visit({ site: host.url, workers: true, path }, async (page) => {
      await kept(page);
      await page.reload();
      await settled(page);
      const box = page.locator('.calc-form input[type="text"]').first();
      await box.fill('54.25');

      const file = join(copy, path, 'index.html');
      await writeFile(
        file,
        (await readFile(file, 'utf8')).replace('</main>', '<p>renewed</p></main>'),
      );
      const worker = join(copy, 'sw.js');
      const text = await readFile(worker, 'utf8');
      const [entry] = /\{url:`\.\/articles\/where-the-piston-is\/`,revision:`\w+`\}/.exec(text)!;
      await writeFile(
        worker,
        text.replace(entry, entry.replace(/revision:`\w+`/, 'revision:`newer`')),
      );
      await page.evaluate(() => navigator.serviceWorker.getRegistration().then((r) => r!.update()));

      await page.getByText('A newer copy of the site is ready').waitFor();
      expect(await page.getByText('renewed').count()).toBe(0);
      expect(await box.inputValue()).toBe('54.25');
      await page.getByRole('button', { name: 'Use it now' }).click();
      await page.getByText('renewed').waitFor();
      await settled(page);
      await expect.poll(() => box.inputValue()).toBe('54.25');
    });
  });
});

describe('where nothing can be kept', () => {
  it('says so when the connection goes, and takes it back when it comes', async () => {
    // Some browsers ask for the icon again once they are cut off.
    const tolerated = [/ERR_INTERNET_DISCONNECTED.*mark\.svg/];
    const path = 'calculators/piston-position/';
    await visit({ site: host.url, path, tolerated }, async (page) => {
      await settled(page);
      await page.context().setOffline(true);
      await page.getByText('this device keeps no copy of the site yet').waitFor();
      await field(page, 'travel').fill('2.8');
      await expectResult(page, 'travel', 2.8);
      await page.context().setOffline(false);
      await expect.poll(() => page.locator('.notice').count()).toBe(0);
    });
  });
});

it('hosts are told to guard the pages, and to keep only what never changes', async () => {
  const page = await fetch(host.url);
  expect(page.headers.get('content-security-policy')).toBe("frame-ancestors 'none'");
  expect(page.headers.get('x-content-type-options')).toBe('nosniff');
  expect(page.headers.get('cache-control')).not.toContain('immutable');
  const [sheet] = /_astro\/[^"]+\.css/.exec(await page.text())!;
  const answer = await fetch(new URL(sheet, host.url));
  expect(answer.headers.get('cache-control')).toContain('immutable');
  const worker = await fetch(new URL('sw.js', host.url));
  expect(worker.headers.get('cache-control')).toBe('no-cache');
});
