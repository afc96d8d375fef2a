import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pageHeaders } from '../../site/build/headers.ts';
import { headerRules } from '../browser/support/headers.ts';

const FILES = [
  'index.html',
  '404.html',
  'sheet/index.html',
  'calculators/index.html',
  'calculators/piston-position/index.html',
  'calculators/plate-layout/plate-layout.pdf',
  '_astro/page.abc.js',
  'sw.js',
];

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'gudgeon-headers-'));
  const always = await readFile(new URL('../../site/public/_headers', import.meta.url), 'utf8');
  await writeFile(join(folder, '_headers'), always + pageHeaders(FILES));
});
afterAll(() => rm(folder, { recursive: true }));

/** What a host is told of how long an address may be kept. */
const keeping = (address: string): string[] =>
  headerRules(folder)
    .filter(({ path }) => path.test(address))
    .flatMap(({ headers }) => headers)
    .flatMap(([name, value]) => (name === 'Cache-Control' ? [value] : []));

/** Every address at which hosts give a page. */
const forms = (file: string): string[] => {
  const folderOf = `/${file.replace(/index\.html$/, '')}`;
  if (folderOf.endsWith('.html')) return [folderOf, folderOf.replace('.html', '')];
  return [...new Set([folderOf, folderOf.slice(0, -1) || '/', `${folderOf}index.html`])];
};

describe('what hosts are told', () => {
  it.each(FILES.filter((file) => file.endsWith('.html')).flatMap(forms))(
    'the page at %s is asked for anew each time',
    (address) => expect(keeping(address)).toEqual(['no-cache']),
  );

  it('a script named by its content is kept, and only that is told of it', () => {
    expect(keeping('/_astro/page.abc.js')).toEqual(['public, max-age=31536000, immutable']);
  });

  it('the worker is asked for anew each time', () =>
    expect(keeping('/sw.js')).toEqual(['no-cache']));

  it('all fits what hosts read', () => expect(headerRules(folder).length).toBeLessThan(100));
});
