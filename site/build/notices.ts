import { existsSync } from 'node:fs';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import type { Shipped } from './shipped.ts';

export interface Notice {
  readonly name: string;
  readonly version: string;
  /** By its SPDX name, as the package gives it. */
  readonly licence: string;
  readonly texts: readonly string[];
}

const LICENCE = /^(?:licen[cs]e|copying|copyright)/i;
const NOTICE = /^notice/i;

/** What a package asks to be told with it. A package without a licence text is an error. */
export async function noticeOf(folder: string): Promise<Notice> {
  const { name, version, license } = JSON.parse(
    await readFile(join(folder, 'package.json'), 'utf8'),
  ) as { name: string; version: string; license?: string };
  const files = (await readdir(folder)).filter((file) => !file.endsWith('.js')).sort();
  const licences = files.filter((file) => LICENCE.test(file));
  if (licences.length === 0 || license === undefined) {
    throw new Error(`${name} ${version} goes to browsers, and has no licence text in its package.`);
  }
  const notices = files.filter((file) => NOTICE.test(file));
  const texts = [...licences, ...notices].map((file) => readFile(join(folder, file), 'utf8'));
  return { name, version, licence: license, texts: await Promise.all(texts) };
}

const escape = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const asHtml = ({ name, version, licence, texts }: Notice): string =>
  [
    `<details class="check-topic"><summary><h2>${escape(name)}</h2><span>${escape(version)}, ${escape(licence)}</span></summary>`,
    ...texts.map((text) => `<pre class="notice-text">${escape(text.trim())}</pre>`),
    '</details>',
  ].join('');

const PLACE = /(<div id="packages">)(<\/div>)/;

/** Fills the page of notices from what is in the site's scripts. */
export function notices(shipped: Shipped): AstroIntegration {
  return {
    name: 'notices',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const folders = shipped.packages((script) => existsSync(join(root, script)));
        const all = (await Promise.all(folders.map(noticeOf))).sort((a, b) =>
          a.name.localeCompare(b.name, 'en'),
        );
        const page = join(root, 'notices', 'index.html');
        const html = await readFile(page, 'utf8');
        if (!PLACE.test(html)) throw new Error('The page of notices has no place for them.');
        const list = all.map(asHtml).join('');
        await writeFile(
          page,
          html.replace(PLACE, (_, open: string, end: string) => open + list + end),
        );
      },
    },
  };
}
