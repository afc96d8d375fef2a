import { createHash } from 'node:crypto';
import { globSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { coldBuild } from '../bench/cold-build.ts';
import { dist } from './support/built.ts';

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

it('another build, from nothing, gives the same bytes', { timeout: 600_000 }, async () => {
  await using stack = new AsyncDisposableStack();
  const again = await coldBuild();
  stack.defer(again.remove);
  const first = fingerprints(dist);
  expect(Object.keys(first).length).toBeGreaterThan(10);
  expect(fingerprints(again.dist)).toEqual(first);
});
