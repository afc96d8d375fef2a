import { mkdtemp, rm, stat, writeFile, mkdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible } from './axe.ts';
import { CLIPBOARD, copied } from './clipboard.ts';
import { visit } from './page.ts';
import { serve, type Served } from './serve.ts';

const page = (body: string): string => `<!doctype html><html lang="en"><head><title>t</title>
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; img-src data:">
<link rel="icon" href="data:,"></head><body><main><h1>t</h1>${body}</main></body></html>`;

const faulty: Record<string, [body: string, complaint: RegExp]> = {
  'an inline style': ['<p style="color: red">x</p>', /style/i],
  'an inline script': ['<script>window.ran = true</script>', /script/i],
  'a script that throws': ['<script src="throws.js"></script>', /uncaught.*broken/],
  'a dialog': ['<script src="asks.js"></script>', /dialog: really/],
  'a word on the console': ['<script src="says.js"></script>', /console warning: odd/],
  'a missing file': ['<script src="nowhere.js"></script>', /404/],
  'another host': ['<img alt="" src="http://127.0.0.2:9/x.png">', /other host|image/i],
};

let folder: string;
let served: Served;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'gudgeon-harness-'));
  await mkdir(join(folder, 'inside'));
  const files: Record<string, string> = {
    'index.html': page('<p>sound</p>'),
    '404.html': page('<p>no such page</p>'),
    'inside/index.html': page('<p>inside</p>'),
    'throws.js': 'throw new Error("broken")',
    'asks.js': 'alert("really")',
    'says.js': 'console.warn("odd")',
    'unlabelled.html': page('<input type="text">'),
  };
  Object.values(faulty).forEach(([body], i) => {
    files[`faulty-${i}.html`] = page(body);
  });
  for (const [name, text] of Object.entries(files)) await writeFile(join(folder, name), text);
  served = await serve(folder, { base: '/some/where/', compress: true });
});

afterAll(async () => {
  await served.close();
  await rm(folder, { recursive: true });
});

describe('the static server', () => {
  it('gives each file its type, compressed', async () => {
    const script = await fetch(new URL('says.js', served.url), {
      headers: { 'accept-encoding': 'br' },
    });
    expect(script.headers.get('content-type')).toMatch(/^text\/javascript/);
    expect(script.headers.get('content-encoding')).toBe('br');
    expect(await script.text()).toBe('console.warn("odd")');
  });

  it('keeps what it sends compressed, and makes nobody wait for it', async () => {
    const { size } = await stat(join(folder, 'says.js.br'));
    const script = await fetch(new URL('says.js', served.url), {
      headers: { 'accept-encoding': 'br' },
    });
    expect(script.headers.get('content-length')).toBe(String(size));
  });

  it('sends a folder to its slash, keeping the query', async () => {
    const answer = await fetch(new URL('inside?a=1', served.url), { redirect: 'manual' });
    expect(answer.status).toBe(301);
    expect(answer.headers.get('location')).toBe('/some/where/inside/?a=1');
    expect(await (await fetch(new URL('inside/', served.url))).text()).toContain('inside');
  });

  it.each(['nowhere/', '/', '/some/', '../index.html'])(
    'gives its own page for %s',
    async (path) => {
      const answer = await fetch(new URL(path, served.url));
      expect(answer.status).toBe(404);
      expect(await answer.text()).toContain('no such page');
    },
  );

  it('says when there is nothing to serve', async () => {
    await expect(serve(join(folder, 'inside', 'none'))).rejects.toThrow('npm run build');
  });
});

describe('a visit', () => {
  const site = (): string => served.url;

  it('passes a sound page', async () => {
    await visit({ site: site() }, async (open) => {
      expect(await open.textContent('p')).toBe('sound');
      await expectAccessible(open);
    });
  });

  it.each(Object.entries(faulty).map(([what, [, complaint]], i) => [what, i, complaint] as const))(
    'complains of %s',
    async (_, i, complaint) => {
      const path = `faulty-${i}.html`;
      const seen = visit({ site: site(), path }, async (open) => {
        await open.waitForLoadState('networkidle');
      });
      await expect(seen).rejects.toThrow('complaints of the page');
      await expect(seen).rejects.toMatchObject({
        actual: expect.arrayContaining([expect.stringMatching(complaint)]),
      });
    },
  );

  it('wants a complaint it was told to expect', async () => {
    await expect(visit({ site: site(), expected: [/never/] }, async () => {})).rejects.toThrow(
      'a complaint the test expects',
    );
  });

  it('finds a field without a name', async () => {
    await visit({ site: site(), path: 'unlabelled.html' }, async (open) => {
      await expect(expectAccessible(open)).rejects.toThrow('accessibility of');
    });
  });
});

describe('what a page copied', () => {
  it('is told from what another copied meanwhile, though they share one clipboard', async () => {
    const copying = { site: served.url, permissions: CLIPBOARD };
    const copy = (page: Page, text: string): Promise<void> =>
      page.evaluate((words) => navigator.clipboard.writeText(words), text);
    await visit(copying, async (one) => {
      await visit(copying, async (other) => {
        await copy(one, 'one');
        await copy(other, 'other');
        expect([await copied(one), await copied(other)]).toEqual(['one', 'other']);
      });
    });
  });
});
