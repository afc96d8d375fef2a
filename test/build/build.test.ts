import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { retryImports } from '../../site/build/import-again.ts';
import { noticeOf } from '../../site/build/notices.ts';
import { unmet } from '../../site/build/plan-met.ts';
import { plan } from '../../site/build/script-files.ts';
import { unusedScripts } from '../../site/build/unused.ts';

describe('a package of which something is shipped', () => {
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'gudgeon-package-'));
  });
  afterEach(() => rm(folder, { recursive: true }));
  const put = (name: string, text: string): Promise<void> => writeFile(join(folder, name), text);
  const about = { name: 'thing', version: '1.2.3', license: 'Apache-2.0' };

  it('is told with its licence, and the notice that some licences ask for', async () => {
    await put('package.json', JSON.stringify(about));
    await put('LICENSE.md', 'You may.');
    await put('NOTICE', 'Thing by somebody.');
    await put('licence.js', 'not a text');
    expect(await noticeOf(folder)).toEqual({
      name: 'thing',
      version: '1.2.3',
      licence: 'Apache-2.0',
      texts: ['You may.', 'Thing by somebody.'],
    });
  });

  it('stops the build where it brings no licence text, or names no licence', async () => {
    await put('package.json', JSON.stringify(about));
    await put('NOTICE', 'Thing by somebody.');
    await expect(noticeOf(folder)).rejects.toThrow('thing 1.2.3 goes to browsers');
    await put('LICENSE', 'You may.');
    await put('package.json', JSON.stringify({ ...about, license: undefined }));
    await expect(noticeOf(folder)).rejects.toThrow('no licence text');
  });
});

it('a script is unused that no page names, nor any script on the way from a page', () => {
  const scripts = new Map([
    ['first.1.js', 'import "./second.2.js"'],
    ['second.2.js', 'import "./first.1.js"'],
    ['alone.3.js', 'import "./other.4.js"'],
    ['other.4.js', ''],
  ]);
  expect(unusedScripts(['<script src="first.1.js">'], scripts)).toEqual([
    'alone.3.js',
    'other.4.js',
  ]);
  expect(unusedScripts([], scripts)).toHaveLength(4);
});

it('an import that fails is made once more, under another address', () => {
  const file = 'data:text/javascript,export const a=1';
  expect(retryImports('x(()=>import(`./a.b.js`),deps)')).toBe(
    'x(()=>import(`./a.b.js`).catch(()=>import(new URL(`./a.b.js`+"?"+Date.now(),import.meta.url).href)),deps)',
  );
  expect(retryImports(`import(${JSON.stringify(file)});import{a}from"./b.js"`)).not.toContain(
    'catch',
  );
});

it('a place in the plan of script files that holds no module is named', () => {
  const all = plan.flatMap(({ from }) => from).map((place) => `/x/${place}y.ts`);
  expect(unmet(all)).toEqual([]);
  expect(unmet(all.slice(1))).toEqual([plan[0]!.from[0]]);
});
