import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const run = promisify(execFile);
const root = fileURLToPath(new URL('../../', import.meta.url));

export interface ColdBuild {
  readonly dist: string;
  readonly seconds: number;
  readonly remove: () => Promise<void>;
}

/**
 * Builds the site into a folder of its own, with nothing kept from an earlier build.
 *
 * @param sources Where the sources are, with their packages.
 */
export async function coldBuild(sources = root): Promise<ColdBuild> {
  await mkdir(join(root, '.cache'), { recursive: true });
  const dist = await mkdtemp(join(root, '.cache', 'built-'));
  const start = performance.now();
  await run(
    process.execPath,
    ['node_modules/astro/bin/astro.mjs', 'build', '--force', '--outDir', dist],
    {
      cwd: sources,
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' },
    },
  );
  return {
    dist,
    seconds: (performance.now() - start) / 1000,
    remove: () => rm(dist, { recursive: true }),
  };
}
