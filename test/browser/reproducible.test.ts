import { createHash } from 'node:crypto';
import { globSync, readFileSync, statSync } from 'node:fs';
import { cp, mkdtemp, readdir, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { coldBuild } from '../bench/cold-build.ts';
import { dist } from './support/built.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** A fingerprint of every file of a built site. */
const fingerprints = (folder: string): Record<string, string> =>
  Object.fromEntries(
    globSync('**/*', { cwd: folder })
      .filter((file) => statSync(join(folder, file)).isFile())
      .sort()
      .map((file) => [
        file,
        createHash('sha256')
          .update(readFileSync(join(folder, file)))
          .digest('hex'),
      ]),
  );

const NOT_SOURCES = new Set(['.astro', '.cache', '.git', 'dist', 'node_modules']);

/** A copy of the sources in another folder, with the same packages. */
async function copyElsewhere(): Promise<string> {
  const home = await mkdtemp(join(tmpdir(), 'sources-'));
  const entries = (await readdir(root)).filter((name) => !NOT_SOURCES.has(name));
  for (const name of entries) await cp(join(root, name), join(home, name), { recursive: true });
  await symlink(join(root, 'node_modules'), join(home, 'node_modules'));
  return home;
}

it('a build elsewhere, from nothing, gives the same bytes', { timeout: 600_000 }, async () => {
  await using stack = new AsyncDisposableStack();
  const home = await copyElsewhere();
  stack.defer(() => rm(home, { recursive: true }));
  const again = await coldBuild(home);
  stack.defer(again.remove);
  const first = fingerprints(dist);
  expect(Object.keys(first).length).toBeGreaterThan(10);
  expect(fingerprints(again.dist)).toEqual(first);
});
